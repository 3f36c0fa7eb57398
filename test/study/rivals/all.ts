import type { FitRow } from "../../../model/fit/row.ts";
import { lnRatio } from "../airs.ts";
import { bisquareByVotes } from "./bisquare-by-votes.ts";
import type { Estimator, Point } from "./estimator.ts";
import { hierarchicalNormal } from "./hierarchical-normal.ts";
import { hypsotune, hypsotuneAlone, isOf } from "./hypsotune.ts";
import { leastSquaresLine } from "./least-squares.ts";
import { answers, type StraightLine } from "./straight-line.ts";

function pointsOf(rows: readonly FitRow[]): Point[] {
  return rows.map((r) => [lnRatio(r.density_kg_m3), Math.log((r.pump_Hz * 1000) / r.fan_rpm)]);
}

const plain = (name: string, lineOf: (points: Point[]) => StraightLine | null): Estimator => ({
  name,
  fit: (rows, target) => {
    const line = lineOf(pointsOf(rows.filter(isOf(target))));
    return line && { at: answers(line), setAside: null };
  },
});

/** The atlas's own fit and the usual ways to draw a line. */
export const ESTIMATORS: readonly Estimator[] = [
  hypsotune,
  plain("Least squares", leastSquaresLine),
  hierarchicalNormal,
  bisquareByVotes,
];

/** Of use where there are rows of other classes or ends. */
export const ALONE: Estimator = hypsotuneAlone;
