/** Tukey's bisquare: full voice near zero, none beyond c scales (Beaton & Tukey 1974). */
export function bisquareWeight(scaled: number, c: number): number {
  const u = (scaled / c) ** 2;
  return u < 1 ? (1 - u) ** 2 : 0;
}

/** Loss of the bisquare, ½r² near zero and flat at c²/6 beyond c scales. */
export function bisquareLoss(scaled: number, c: number): number {
  const u = (scaled / c) ** 2;
  return (c * c * (u < 1 ? 1 - (1 - u) ** 3 : 1)) / 6;
}

/** What an iteratively reweighted fit needs to know of its model. */
export interface Reweighting<Fit> {
  start: Fit;
  /** Residuals of a fit, one per observation. */
  residuals: (fit: Fit) => Float64Array;
  /** Robust scale of residuals, given the scale before (0 at first). */
  scale: (residuals: Float64Array, before: number) => number;
  /** Weight of a residual in scales. */
  weight: (scaled: number) => number;
  /** The fit under such weights and the present scale. */
  solve: (weights: Float64Array, scale: number) => Fit;
  most_steps?: number;
}

/** Residuals that moved less than this share of the scale have settled. */
const SETTLED = 1e-9;

/** Iteratively reweighted fitting (Holland & Welsch 1977): scale, weights, solve, until residuals settle. */
export function reweight<Fit>(model: Reweighting<Fit>): {
  fit: Fit;
  scale: number;
  weights: Float64Array;
} {
  let fit = model.start;
  let residuals = model.residuals(fit);
  let scale = 0;
  let weights = new Float64Array(residuals.length);
  for (let step = 0; step < (model.most_steps ?? 60); step++) {
    scale = model.scale(residuals, scale);
    weights = residuals.map((r) => model.weight(r / scale));
    fit = model.solve(weights, scale);
    const next = model.residuals(fit);
    let moved = 0;
    for (let i = 0; i < next.length; i++) {
      moved = Math.max(moved, Math.abs((next[i] as number) - (residuals[i] as number)));
    }
    residuals = next;
    if (moved < SETTLED * scale) break;
  }
  return { fit, scale, weights };
}
