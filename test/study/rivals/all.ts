import type { FitRow } from "../../../model/fit/row.ts";
import { lnRatio } from "../airs.ts";
import { bisquareByVotes } from "./bisquare-by-votes.ts";
import type { Estimator, Point } from "./estimator.ts";
import { huberLine } from "./huber.ts";
import { hypsotune, hypsotuneAlone, isOf } from "./hypsotune.ts";
import { leastSquaresLine } from "./least-squares.ts";
import { madCutLine } from "./mad-cut.ts";
import { answers, type StraightLine } from "./straight-line.ts";
import { theilSenLine } from "./theil-sen.ts";

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

const madCut: Estimator = {
  name: "Least squares, 3·MAD cut",
  fit: (rows, target) => {
    const own = rows.filter(isOf(target));
    const cut = madCutLine(pointsOf(own));
    if (!cut) return null;
    const aside = own.filter((_, i) => !cut.kept[i]).map(({ row }) => row);
    return { at: answers(cut.line), setAside: new Set(aside) };
  },
};

/** The atlas's own fit and the usual ways to draw a line. */
export const ESTIMATORS: readonly Estimator[] = [
  hypsotune,
  plain("Least squares", leastSquaresLine),
  madCut,
  plain("Theil–Sen", theilSenLine),
  plain("Huber", huberLine),
  bisquareByVotes,
];

/** Of use where there are rows of other classes or ends. */
export const ALONE: Estimator = hypsotuneAlone;
