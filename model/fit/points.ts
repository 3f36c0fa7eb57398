import { exactTerm } from "./exact-sum.ts";

/** Weighted points (x, y): rows of nearly the same air and mixture put together at their mean. */
export interface Points {
  x: Float64Array;
  y: Float64Array;
  weight: Float64Array;
}

/** 1 % of density and 1 % of mixture: an eighth of the spread between heaters. */
const BIN = 0.01;
/** Values beyond e^±8 are no tunes; they share the outermost bins. */
const EDGE = 8 / BIN;

/**
 * Rows gathered into bins of 1 % by 1 %, so that the search for a robust start costs the same for a thousand
 * rows and for a million. Points come in the order of their bins and their means are exact sums: the order of
 * rows leaves no trace.
 */
export function gather(x: Float64Array, y: Float64Array, weight: Float64Array): Points {
  const bins = new Map<number, number>();
  const w: number[] = [];
  const wx: number[] = [];
  const wy: number[] = [];
  for (let i = 0; i < x.length; i++) {
    const [xi, yi, wi] = [x[i] as number, y[i] as number, weight[i] as number];
    const key = bin(xi) * (2 * EDGE + 1) + bin(yi);
    let at = bins.get(key);
    if (at === undefined) {
      at = w.length;
      bins.set(key, at);
      w.push(0);
      wx.push(0);
      wy.push(0);
    }
    w[at] = (w[at] as number) + wi;
    wx[at] = (wx[at] as number) + exactTerm(wi * xi);
    wy[at] = (wy[at] as number) + exactTerm(wi * yi);
  }
  const order = [...bins].sort(([a], [b]) => a - b).map(([, at]) => at);
  const mean = (sums: number[]) =>
    Float64Array.from(order, (at) => (sums[at] as number) / (w[at] as number));
  return { x: mean(wx), y: mean(wy), weight: Float64Array.from(order, (at) => w[at] as number) };
}

function bin(value: number): number {
  return Math.min(EDGE, Math.max(-EDGE, Math.round(value / BIN))) + EDGE;
}
