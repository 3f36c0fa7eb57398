import { dot, type Matrix, times } from "../numerics/matrix.ts";

/** A function to maximise: answers its value and fills the gradient. */
export type Objective = (t: Float64Array, gradient: Float64Array) => number;

export interface Maximum {
  t: Float64Array;
  value: number;
  /** Approximate inverse of the negative Hessian. */
  inverse: Matrix;
  /** Whether another step would gain less than the tolerance. */
  converged: boolean;
}

/** Least share of the gain that the gradient promises (Armijo). */
const SUFFICIENT = 1e-4;
const SHORTEST = 1e-4;

/**
 * Maximum of a smooth function by BFGS with backtracking (Nocedal & Wright 2006, algorithm 6.1).
 * @param inverse a guess of the inverse of the negative Hessian, positive definite
 * @param rounds at most so many steps
 * @param tolerance ends when a step promises less gain than this
 */
export function maximise(
  objective: Objective,
  start: Float64Array,
  { inverse, rounds, tolerance }: { inverse: Matrix; rounds: number; tolerance: number },
): Maximum {
  let t = start;
  let gradient = new Float64Array(t.length);
  let value = objective(t, gradient);
  let h: Matrix = inverse.map((row) => row.slice());
  for (let round = 0; round < rounds; round++) {
    const step = times(h, gradient);
    const over = step.reduce((most, s) => Math.max(most, Math.abs(s)), 1);
    for (let p = 0; p < step.length; p++) step[p] = (step[p] as number) / over;
    const promised = dot(step, gradient);
    if (promised < tolerance) return { t, value, inverse: h, converged: promised >= 0 };
    const next = alongLine(objective, t, value, step, promised);
    if (!next) return { t, value, inverse: h, converged: false };
    h = updated(h, minus(next.t, t), minus(gradient, next.gradient));
    t = next.t;
    gradient = next.gradient;
    value = next.value;
  }
  return { t, value, inverse: h, converged: false };
}

function alongLine(
  objective: Objective,
  t: Float64Array,
  value: number,
  step: Float64Array,
  promised: number,
) {
  for (let length = 1; length > SHORTEST; length /= 3) {
    const next = t.map((v, p) => v + length * (step[p] as number));
    const gradient = new Float64Array(t.length);
    const reached = objective(next, gradient);
    if (reached >= value + SUFFICIENT * length * promised) {
      return { t: next, value: reached, gradient };
    }
  }
  return null;
}

/** The BFGS update of the inverse, for a step s along which the negative gradient rose by y. */
function updated(h: Matrix, s: Float64Array, y: Float64Array): Matrix {
  const sy = dot(s, y);
  if (!(sy > 1e-12)) return h;
  const hy = times(h, y);
  const factor = (1 + dot(y, hy) / sy) / sy;
  return h.map((row, i) =>
    row.map(
      (v, j) =>
        v +
        factor * (s[i] as number) * (s[j] as number) -
        ((hy[i] as number) * (s[j] as number) + (s[i] as number) * (hy[j] as number)) / sy,
    ),
  );
}

function minus(p: Float64Array, q: Float64Array): Float64Array {
  return p.map((v, i) => v - (q[i] as number));
}
