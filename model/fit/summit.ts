/** Where a function of one variable is highest, how high, and the standard deviation of the normal curve that fits it there. */
export interface Summit {
  at: number;
  height: number;
  sd: number;
}

/** The first step; then steps grow finer until the curve is seen in its own width. */
const FIRST_STEP = 0.12;
const FINER = 4;
const FINE_ENOUGH = 1.5;
const MOST_STEPS = 30;

/** Climbs from a point to the summit of a logarithm of a density with one summit. */
export function summitOf(log: (x: number) => number, from: number): Summit {
  let step = FIRST_STEP;
  let summit = climbed(log, from, step);
  while (step > FINE_ENOUGH * summit.sd) {
    step = Math.max(step / FINER, summit.sd);
    summit = climbed(log, summit.at, step);
  }
  return summit;
}

/** Steps uphill until both neighbours are lower; a parabola through the three gives the rest. */
function climbed(log: (x: number) => number, from: number, step: number): Summit {
  let at = from;
  let [left, here, right] = [log(at - step), log(at), log(at + step)];
  for (let k = 0; k < MOST_STEPS && (left > here || right > here); k++) {
    if (left > right) {
      at -= step;
      [left, here, right] = [log(at - step), left, here];
    } else {
      at += step;
      [left, here, right] = [here, right, log(at + step)];
    }
  }
  const bend = left - 2 * here + right;
  if (!(bend < 0)) return { at, height: here, sd: 2 * step };
  const off = (left - right) / (2 * bend);
  return {
    at: at + off * step,
    height: here - (left - right) ** 2 / (8 * bend),
    sd: step / Math.sqrt(-bend),
  };
}
