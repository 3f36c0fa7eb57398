import type { End } from "../../../model/end.ts";
import type { FitRow } from "../../../model/fit/row.ts";

/** An interval of ln(Hz per 1,000 rpm). */
export interface Interval {
  lower: number;
  upper: number;
}

/** What an estimator says at one density; intervals in the order of the levels. */
export interface Answer {
  centre: number;
  mean: Interval[];
  another: Interval[];
}

export interface Fitted {
  /** @param x ln(density/1.225) */
  at(x: number): Answer;
  /** Names of the rows set aside; null for an estimator that sets none aside. */
  setAside: ReadonlySet<FitRow["row"]> | null;
}

/** One way to fit a line with bands to rows of one heat class and end. */
export interface Estimator {
  name: string;
  /** Rows of other classes and ends may be among them. Null when the rows are too few for it. */
  fit(rows: readonly FitRow[], target: { heat_kW: number; end: End }): Fitted | null;
}

/** The rows' points: x = ln(density/1.225), y = ln(Hz per 1,000 rpm). */
export type Point = [x: number, y: number];
