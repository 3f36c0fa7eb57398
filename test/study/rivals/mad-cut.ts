import { median } from "simple-statistics";
import type { Point } from "./estimator.ts";
import { leastSquaresLine } from "./least-squares.ts";
import type { StraightLine } from "./straight-line.ts";

/** Residuals farther from their median than so many median absolute deviations (made consistent with the normal) are cut. */
const CUT = 3;
export const MAD_TO_SD = 1.4826;
const ROUNDS = 50;

/** Least squares, cut, and again on what is left until nothing more is cut. */
export function madCutLine(points: Point[]): { line: StraightLine; kept: boolean[] } | null {
  let kept = points.map(() => true);
  let line = leastSquaresLine(points);
  for (let round = 0; line && round < ROUNDS; round++) {
    const { level, slope, x_mean } = line;
    const residual = points.map(([x, y]) => y - level - slope * (x - x_mean));
    const among = residual.filter((_, i) => kept[i]);
    const middle = median(among);
    const limit = CUT * MAD_TO_SD * median(among.map((r) => Math.abs(r - middle)));
    const next = residual.map((r, i) => Boolean(kept[i]) && Math.abs(r - middle) <= limit);
    const left = points.filter((_, i) => next[i]);
    if (left.length === among.length) break;
    const again = leastSquaresLine(left);
    if (!again) break;
    [line, kept] = [again, next];
  }
  return line && { line, kept };
}
