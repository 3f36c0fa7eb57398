/**
 * How far an estimated elevation may be off, m: half-widths of the 68 % and 95 % intervals by relief of the grid
 * about the point and by distance to the nearest known point. Quantiles of the errors of 60,000 known places, each
 * left out in turn and estimated from the rest; a test asks that they cover what they claim.
 */
const RELIEF_FROM_m = [0, 100, 200, 400, 800, 1500] as const;
const DISTANCE_FROM_km = [0, 1, 3, 6, 12, 25] as const;
/** Rows by relief, columns by distance: [68 %, 95 %]. */
const HALF_WIDTHS_m: readonly (readonly (readonly [number, number])[])[] = [
  [
    [8, 27],
    [9, 28],
    [11, 37],
    [13, 38],
    [16, 40],
    [23, 45],
  ],
  [
    [8, 34],
    [15, 56],
    [23, 63],
    [28, 82],
    [30, 84],
    [32, 95],
  ],
  [
    [11, 52],
    [24, 68],
    [40, 110],
    [56, 145],
    [63, 164],
    [73, 170],
  ],
  [
    [11, 49],
    [27, 105],
    [67, 203],
    [108, 245],
    [158, 408],
    [160, 410],
  ],
  [
    [19, 114],
    [54, 203],
    [104, 342],
    [187, 502],
    [269, 665],
    [285, 1003],
  ],
  [
    [27, 200],
    [64, 251],
    [143, 478],
    [229, 654],
    [412, 680],
    [420, 1010],
  ],
];

/**
 * Where the known points pull the estimate far from the grid, the position may be on a ridge that the grid sees and
 * the towns in the valley do not: the intervals then reach these shares of the way, at least.
 */
const REACH_OF_PULL = [0.3, 1.5] as const;

/**
 * Half-widths of the 68 % and 95 % intervals of an estimated elevation, m.
 * @param relief_m highest less lowest grid cell about the position
 * @param nearest_km distance to the nearest known point; infinite for none
 * @param pull_m estimate less grid, 0 at a known point
 */
export function uncertainty(
  relief_m: number,
  nearest_km: number,
  pull_m: number,
): readonly [number, number] {
  const row = HALF_WIDTHS_m[classOf(RELIEF_FROM_m, relief_m)];
  const [half_68, half_95] = row?.[classOf(DISTANCE_FROM_km, nearest_km)] ?? [420, 1010];
  const atLeast = REACH_OF_PULL.map((share) => Math.round(share * Math.abs(pull_m)));
  return [Math.max(half_68, atLeast[0] ?? 0), Math.max(half_95, atLeast[1] ?? 0)];
}

function classOf(from: readonly number[], value: number): number {
  return from.findLastIndex((least) => value >= least);
}
