import type { GroupFit, PublishedFit } from "../../../model/fit/group.ts";
import type { Health } from "../../../server/contract.ts";
import { AtlasProblem, Unreachable } from "../../base/answers/api.ts";
import type { FromFitWorker } from "./fit-worker.ts";

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

/** Told how many of all fits of a size and end are made. */
export type Progress = (done: number, of: number) => void;

/**
 * Fetches the published fit and the open data, fits the data here and compares.
 * @throws Unreachable, AtlasProblem
 */
export async function fitAgain(progress: Progress): Promise<FitAgain> {
  const published = JSON.parse(await get("/api/fit")) as PublishedFit;
  const csv = await get("/api/tunes.csv");
  const { fit, fit_pending, frozen } = JSON.parse(await get("/api/health")) as Health;
  const made = await fitBeside(csv, progress);
  const groups = sideBySide(published.groups, made.groups);
  const outcome = () => {
    if (groups.length === 0) return "nothing";
    if (groups.every(({ same }) => same)) return "same";
    if (fit_pending || frozen || fit !== published.version) return "moving";
    return published.estimator === made.estimator ? "differs" : "other code";
  };
  return { version: published.version, rows: made.rows, groups, outcome: outcome() };
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

/** Fits in a worker; the page goes on meanwhile. */
function fitBeside(
  csv: string,
  progress: Progress,
): Promise<Extract<FromFitWorker, { is: "fitted" }>> {
  const worker = new Worker(new URL("./fit-worker.ts", import.meta.url), { type: "module" });
  return new Promise<Extract<FromFitWorker, { is: "fitted" }>>((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<FromFitWorker>) => {
      if (data.is === "fitting") progress(data.done, data.of);
      else if (data.is === "fitted") resolve(data);
      else reject(new Error("The open data cannot be read."));
    };
    worker.onerror = () => reject(new Error("The worker has failed."));
    worker.postMessage(csv);
  }).finally(() => worker.terminate());
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
