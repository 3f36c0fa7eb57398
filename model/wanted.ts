import { type Air, airAt, standardTemperature } from "./air.ts";
import { averageAt, halfWidth, heaterVariance, withinVariance } from "./fit/bands.ts";
import type { GroupFit } from "./fit/group.ts";
import { xOf } from "./fit/row.ts";
import { exp } from "./numerics/ln-exp.ts";

/** The 95 % band of the average heater, ± % of the pump rate: as it is, and after one more tune in the same air. */
export interface OneMore {
  before: number;
  after: number;
}

/** An air that a tune is wanted in. */
export interface Wanted extends OneMore {
  elevation_m: number;
  temperature_C: number;
}

const LEVEL = 0.95;
/** Elevations looked at: one of each band is named. */
const STEP_m = 200;
const BAND_m = 1000;
const HIGHEST_m = 5000;
/** Nights in which people heat, °C, and how far they lie from the standard atmosphere, K; our own working values. */
const NIGHTS_C: readonly [number, number] = [-30, 15];
const COLDER_K = 40;
const WARMER_K = 20;
const NIGHT_STEP_C = 5;
/** Less than this nobody would see in the band's figures, percentage points. */
const LEAST_pct = 0.01;

/**
 * What one more tune would do to the band of the average in its own air, if somebody sends it who has sent none yet,
 * from a place and month without others, and does not state the fuel per pulse.
 *
 * Level and slope have the covariance C. The tune tells y = (1, x)·(level, slope) + e, where e has the variance V between
 * heaters, between tunes of one, and of the air; so C becomes C − C h hᵀ C/(V + hᵀ C h), h = (1, x) (Sherman and Morrison
 * 1950), and the average's variance at x, s = hᵀ C h, becomes s·V/(V + s). It counts as often as rows are good and owners
 * honest: V is divided by that share. The degrees of freedom are left as they are.
 */
export function oneMoreTune(group: GroupFit, { density_kg_m3, ln_density_sd }: Air): OneMore {
  const x = xOf(density_kg_m3);
  const now = averageAt(group, x);
  const { honest, feet, slips } = group.shares;
  const row =
    heaterVariance(group, x) +
    withinVariance(group, now.centre) +
    (group.slope * ln_density_sd) ** 2;
  const counted = row / (honest * (1 - feet - slips));
  const then = { ...now, variance: (now.variance * counted) / (counted + now.variance) };
  return { before: halfWidthIn(now), after: halfWidthIn(then) };
}

/** Half the width of a band, % of its middle. */
function halfWidthIn(student: Parameters<typeof halfWidth>[0]): number {
  const half = halfWidth(student, LEVEL);
  return 50 * (exp(half) - exp(-half));
}

/**
 * Where one more tune would narrow the band of the average most: the air of each 1,000 m in which it does so most, of the
 * nights that occur there; the most wanted first, and none that would make no difference.
 */
export function mostWanted(group: GroupFit): Wanted[] {
  const best: Wanted[] = [];
  for (let elevation_m = 0; elevation_m <= HIGHEST_m; elevation_m += STEP_m) {
    const band = Math.floor(Math.min(elevation_m, HIGHEST_m - 1) / BAND_m);
    for (const temperature_C of nightsAt(elevation_m)) {
      const found = {
        elevation_m,
        temperature_C,
        ...oneMoreTune(group, airAt(elevation_m, { temperature_C })),
      };
      if (gain(found) > (best[band] ? gain(best[band]) : LEAST_pct)) best[band] = found;
    }
  }
  return best.filter(Boolean).sort((a, b) => gain(b) - gain(a));
}

/** By how much the band narrows, percentage points. */
export function gain({ before, after }: OneMore): number {
  return before - after;
}

function nightsAt(elevation_m: number): number[] {
  const usual = standardTemperature(elevation_m);
  const first = Math.ceil(Math.max(NIGHTS_C[0], usual - COLDER_K) / NIGHT_STEP_C);
  const last = Math.floor(Math.min(NIGHTS_C[1], usual + WARMER_K) / NIGHT_STEP_C);
  return Array.from(
    { length: Math.max(0, last - first + 1) },
    (_, i) => (first + i) * NIGHT_STEP_C,
  );
}
