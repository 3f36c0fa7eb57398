import type { Database } from "../db/database.ts";
import { fitRows } from "../db/fit-rows.ts";
import { countOfClass, type PointRow, shownElevation, tunesOfClass } from "../db/shown-tunes.ts";
import type { End } from "../model/end.ts";
import type { GroupFit, PublishedFit } from "../model/fit/group.ts";
import type { FitRow } from "../model/fit/row.ts";
import { asideOf, asideSentence } from "../model/fit/standing.ts";
import { SAFETY } from "../model/safety.ts";
import { scalingCurve } from "../model/scaling-curve.ts";
import { groupOf } from "../model/start.ts";
import { farOff, HELD_AT_THE_DOOR } from "./aside-reason.ts";
import type { ScalingAnswer, ScalingPoint } from "./contract/scaling.ts";
import { type JsonText, jsonText } from "./json-text.ts";

/** Points a chart gets at most. */
const POINTS_MOST = 2000;

/** A heater size and one end of its power. */
export interface ScalingQuestion {
  heat_kW: number;
  end: End;
}

/** How the tunes of a size scale with the air, beside this fit. */
export async function scalingAnswer(
  db: Database,
  fit: PublishedFit,
  { heat_kW, end }: ScalingQuestion,
  demo: boolean,
): Promise<JsonText<ScalingAnswer>> {
  const rows = await tunesOfClass(db, heat_kW, POINTS_MOST);
  const group = groupOf(fit, heat_kW, end);
  return jsonText({
    heat_kW,
    end,
    fit: fit.version,
    prior_only: group.contributors === 0,
    demo,
    points: rows.map((row) => pointOf(row, end, group)),
    points_total: await countOfClass(db, heat_kW),
    curve: scalingCurve(group),
    safety: SAFETY,
  });
}

function pointOf(row: PointRow, end: End, group: GroupFit): ScalingPoint {
  const own = fitRows(row).find((r) => r.end === end) as FitRow;
  const { pump_Hz, fan_rpm } = own;
  const held = row.verdict === "held";
  const aside = group.contributors > 0 ? asideOf(group, own) : null;
  return {
    contributor: row.pseudonym,
    elevation_m: shownElevation(row.elevation_m),
    density_kg_m3: row.density_kg_m3,
    pump_Hz,
    fan_rpm,
    pump_Hz_per_krpm: (pump_Hz * 1000) / fan_rpm,
    status: held ? "held" : aside ? "rejected" : "kept",
    reason: held
      ? "Held at the door; its contributor knows why."
      : aside && asideSentence(aside, end),
    aside: held ? HELD_AT_THE_DOOR : aside && farOff(aside, own),
  };
}
