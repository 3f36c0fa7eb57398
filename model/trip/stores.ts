import { requirePositive } from "../numerics/finite.ts";
import { withoutDust } from "../rounding.ts";

/** What is taken along and runs out: fuel in a tank, L, or charge in a battery, Ah. */

/**
 * With less than this share left it is tight (our own working value, no source): 8 in 10 heaters burn up to about 12 % more
 * or less than an average one, the last of a tank may not be drawn, and a cold or old battery holds less than it says.
 */
export const TIGHT_share = 0.15;

/** Nights alike at one stop. */
export interface NightsAtStop {
  nights: number;
  /** What one night takes. */
  a_night: number;
}

/** Where it has to be filled again at the latest. */
export interface Refill {
  stop: number;
  /** Before this night there, counted from 1. */
  night: number;
  /** And again each so many nights there; null when once will do. */
  every: number | null;
  /** The least that is left before any of these fillings. */
  left: number;
  tight: boolean;
}

/** A tank or a battery along the nights of a trip. */
export interface StorePlan {
  /** Whole nights that a full one lasts, by stop: 0 where one night takes more than it holds. */
  lasts: number[];
  /** As late as can be, hence as few as can be; none when some night takes more than it holds. */
  refills: Refill[];
  /** What is left after the last night, filled as said; null when some night takes more than it holds. */
  left: number | null;
  /** Whether that is little. */
  tight: boolean;
}

/**
 * Whether what it holds, full at the first stop, lasts all nights, and where to fill it again when not. Nothing else is
 * taken to draw from it, nor anything to fill it on the way.
 * @throws RangeError when it holds nothing
 */
export function storePlan(holds: number, stops: readonly NightsAtStop[]): StorePlan {
  requirePositive({ holds });
  const isTight = (left: number) => left < withoutDust(TIGHT_share * holds);
  // Sums that meet in theory differ in their last digits.
  const nightsOn = (amount: number, a_night: number) => Math.floor(withoutDust(amount / a_night));
  const leftOf = (amount: number) => Math.max(0, withoutDust(amount));
  const lasts = stops.map(({ a_night }) => nightsOn(holds, a_night));
  if (lasts.includes(0)) return { lasts, refills: [], left: null, tight: false };
  const refills: Refill[] = [];
  let left = holds;
  for (const [stop, { nights, a_night }] of stops.entries()) {
    const before = nightsOn(left, a_night);
    if (before >= nights) {
      left -= nights * a_night;
      continue;
    }
    const most = lasts[stop] as number;
    const after = nights - before;
    const every = after > most ? most : null;
    const least = leftOf(
      Math.min(left - before * a_night, every === null ? holds : holds - every * a_night),
    );
    refills.push({ stop, night: before + 1, every, left: least, tight: isTight(least) });
    left = holds - (((after - 1) % most) + 1) * a_night;
  }
  return { lasts, refills, left: leftOf(left), tight: isTight(leftOf(left)) };
}
