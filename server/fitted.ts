import { alarmsOf } from "../model/alarms.ts";
import { type AtlasFit, fitAtlas } from "../model/fit/fit.ts";
import type { Alarm, PublishedFit } from "../model/fit/group.ts";
import type { FitRow } from "../model/fit/row.ts";

/** All that a new version needs the rows for. */
export interface Fitted extends AtlasFit {
  alarms: Alarm[];
}

/** @param before the versions before it, oldest first */
export type MakeFit = (
  rows: readonly FitRow[],
  before: readonly PublishedFit[],
) => Promise<Fitted> | Fitted;

export const fitted = (rows: readonly FitRow[], before: readonly PublishedFit[]): Fitted => {
  const fit = fitAtlas(rows);
  return { ...fit, alarms: alarmsOf(before, fit.groups, rows) };
};
