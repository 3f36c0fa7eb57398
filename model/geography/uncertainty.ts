/**
 * How far an estimated elevation may be off, m: half-widths of the 68 % and 95 % intervals by relief of the grid
 * about the point and by distance to the nearest known point. Quantiles of the errors of 60,000 known places, each
 * left out in turn and estimated from the rest; a test asks that they cover what they claim.
 */
const RELIEF_FROM_m = [0, 100, 200, 400, 800, 1500] as const;
const DISTANCE_FROM_km = [0, 1, 3, 6, 12, 25] as const;
const WIDEST_m = [420, 1010] as const;
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
 * The table comes from settlements, which lie in valleys; who asks away from them may be on the ridge above. So the
 * intervals reach at least these shares [68 %, 95 %] of the way the known points pull the estimate off the grid,
 * and, away from settlements, of the relief. With them the 95 % interval holds three in four of known passes and
 * summits instead of one in two, and a little more than it claims of settlements.
 */
const SHARE_OF_PULL = [0.3, 1.5] as const;
const SHARE_OF_RELIEF = [0.15, 1] as const;
const AWAY_FROM_km = 3;
/** Half-width of a normal distribution's 95 % interval, standard deviations. */
const NORMAL_95 = 1.96;

/** How far an estimated elevation may be off, m. */
export interface Uncertainty {
  half_68_m: number;
  half_95_m: number;
  /** Standard deviation of a normal distribution no narrower than either interval: for bands that carry it on. */
  sd_m: number;
}

/**
 * Uncertainty of an estimated elevation.
 * @param relief_m highest less lowest grid cell about the position
 * @param nearest_km distance to the nearest known point; infinite for none
 * @param pull_m estimate less grid, 0 at a known point
 */
export function uncertainty(relief_m: number, nearest_km: number, pull_m: number): Uncertainty {
  const row = HALF_WIDTHS_m[classOf(RELIEF_FROM_m, relief_m)];
  const table = row?.[classOf(DISTANCE_FROM_km, nearest_km)] ?? WIDEST_m;
  const ridge_m = nearest_km >= AWAY_FROM_km ? relief_m : 0;
  const half = (level: 0 | 1) =>
    Math.max(
      table[level],
      Math.round(SHARE_OF_PULL[level] * Math.abs(pull_m)),
      Math.round(SHARE_OF_RELIEF[level] * ridge_m),
    );
  const [half_68_m, half_95_m] = [half(0), half(1)];
  return { half_68_m, half_95_m, sd_m: Math.max(half_68_m, Math.round(half_95_m / NORMAL_95)) };
}

function classOf(from: readonly number[], value: number): number {
  return from.findLastIndex((least) => value >= least);
}
