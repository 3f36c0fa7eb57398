import quantile from "@stdlib/stats-base-dists-t-quantile";

/** Bands are asked for at a handful of degrees of freedom again and again; the map of them is kept small. */
const remembered = new Map<number, Map<number, number>>();
const REMEMBERED_MOST = 8192;
/** Beyond this Student's t is the normal distribution to nine digits. */
const NORMAL_DF = 1e9;

/**
 * Half-width factor of a two-sided interval: the (1 + level)/2 quantile of Student's t.
 * @param level 0–1, e.g. 0.95
 * @param freedom degrees of freedom, > 0, infinite for the normal distribution
 */
export function studentFactor(level: number, freedom: number): number {
  const df = Math.min(freedom, NORMAL_DF);
  const byDf = remembered.get(level) ?? new Map<number, number>();
  remembered.set(level, byDf);
  const known = byDf.get(df);
  if (known !== undefined) return known;
  if (byDf.size >= REMEMBERED_MOST) byDf.clear();
  const factor = quantile((1 + level) / 2, df);
  byDf.set(df, factor);
  return factor;
}
