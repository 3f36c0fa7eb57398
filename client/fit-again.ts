import { parse } from "csv-parse/browser/esm/sync";
import { fingerprint } from "../model/fit/fingerprint.ts";
import { fitAtlas } from "../model/fit/fit.ts";
import type { GroupFit, PublishedFit } from "../model/fit/group.ts";
import type { FitRow } from "../model/fit/row.ts";
import { formOf, isRejected, type Line, rowsFromText } from "../model/row-from-text.ts";
import type { Health } from "../server/contract.ts";
import { AtlasProblem, Unreachable } from "./api.ts";

/** One class and end as published and as fitted here; one of the two is missing where only the other has it. */
export interface GroupAgain {
  heat_kW: number;
  end: GroupFit["end"];
  here: GroupFit | undefined;
  published: GroupFit | undefined;
  /** Every figure is the same to the last digit. */
  same: boolean;
  /** Every one beside those the page shows in full. */
  others_same: boolean;
}

/** What became of fitting the open data again in this browser. */
export interface FitAgain {
  version: string;
  /** Ends of tunes in the open data. */
  rows: number;
  groups: GroupAgain[];
  /** `moving`: the atlas is about to publish, or has just published, another version than the data are of, or holds it back. */
  outcome: "same" | "differs" | "moving" | "other code" | "nothing";
}

/**
 * Fetches the published fit and the open data, fits the data here and compares.
 * @throws Unreachable, AtlasProblem
 */
export async function fitAgain(): Promise<FitAgain> {
  const published = JSON.parse(await get("/api/fit")) as PublishedFit;
  const rows = rowsOf(await get("/api/tunes.csv"));
  const { fit, fit_pending, frozen } = JSON.parse(await get("/api/health")) as Health;
  const groups = sideBySide(published.groups, fitAtlas(rows).groups);
  const outcome = () => {
    if (groups.length === 0) return "nothing";
    if (groups.every(({ same }) => same)) return "same";
    if (fit_pending || frozen || fit !== published.version) return "moving";
    return published.estimator === fingerprint() ? "differs" : "other code";
  };
  return { version: published.version, rows: rows.length, groups, outcome: outcome() };
}

async function get(path: string): Promise<string> {
  let response: Response;
  let text: string;
  try {
    response = await fetch(path, { cache: "no-cache" });
    text = await response.text();
  } catch {
    throw new Unreachable();
  }
  if (response.ok) return text;
  throw new AtlasProblem({ type: "about:blank", title: "", status: response.status });
}

function rowsOf(csv: string): FitRow[] {
  const rows: FitRow[] = [];
  let row = 0;
  parse(csv, {
    columns: true,
    on_record: (line: Line) => {
      const form = formOf(Object.keys(line));
      row++;
      for (const one of form ? rowsFromText(line, row, form) : []) {
        if (!isRejected(one)) rows.push(one);
      }
      // Nothing is kept of the line itself: the export may be large.
      return null;
    },
  });
  return rows;
}

function sideBySide(published: readonly GroupFit[], here: readonly GroupFit[]): GroupAgain[] {
  const like = (a: GroupFit) => (b: GroupFit) => a.heat_kW === b.heat_kW && a.end === b.end;
  const only = here.filter((group) => !published.some(like(group)));
  return [
    ...published.map((group) => ({ published: group, here: here.find(like(group)) })),
    ...only.map((group) => ({ published: undefined, here: group })),
  ].map(({ published, here }) => {
    const { heat_kW, end } = (published ?? here) as GroupFit;
    const same = sameFigures(published, here);
    const others_same = sameFigures(withoutShown(published), withoutShown(here));
    return { heat_kW, end, here, published, same, others_same };
  });
}

function withoutShown(group: GroupFit | undefined) {
  return group && { ...group, intercept: 0, slope: 0, spread: 0 };
}

/** Whether two values are the same as JSON has them, whatever the order of names: what cannot be sent is null. */
function sameFigures(a: unknown, b: unknown): boolean {
  return canonical(a) === canonical(b);
}

function canonical(value: unknown): string {
  return JSON.stringify(value, (_, part) =>
    part && typeof part === "object" && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([p], [q]) => (p < q ? -1 : 1)))
      : part,
  );
}
