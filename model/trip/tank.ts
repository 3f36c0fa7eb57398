import { requirePositive } from "../finite.ts";
import { withoutDust } from "../rounding.ts";

/**
 * With less than this share of the tank left it is tight (our own working value, no source): 8 in 10 heaters burn up to
 * about 12 % more or less than an average one, and the last of a tank may not be drawn.
 */
export const TIGHT_TANK_share = 0.15;

/** Nights alike at one stop. */
export interface NightsAtStop {
  nights: number;
  /** Of one night. */
  fuel_L: number;
}

/** Where the tank has to be filled again at the latest. */
export interface Refill {
  stop: number;
  /** Before this night there, counted from 1. */
  night: number;
  /** And again each so many nights there; null when once will do. */
  every: number | null;
  /** The least that is left in the tank before any of these fillings, L. */
  left_L: number;
  tight: boolean;
}

/** A tank along the nights of a trip. */
export interface TankPlan {
  /** Whole nights that a full tank lasts, by stop: 0 where one night takes more than it holds. */
  lasts: number[];
  /** As late as can be, hence as few as can be; none when some night takes more than a tank. */
  refills: Refill[];
  /** What is left after the last night, filled as said, L; null when some night takes more than a tank. */
  left_L: number | null;
  /** Whether that is little. */
  tight: boolean;
}

/**
 * Whether a tank, full at the first stop, lasts all nights, and where to fill it again when not. Nothing else is
 * taken to draw from it.
 * @throws RangeError naming the number that cannot be used
 */
export function tankPlan(tank_L: number, stops: readonly NightsAtStop[]): TankPlan {
  requirePositive({ tank_L });
  const isTight = (left_L: number) => left_L < withoutDust(TIGHT_TANK_share * tank_L);
  // Sums of litres that meet in theory differ in their last digits.
  const nightsOn = (litres: number, fuel_L: number) => Math.floor(withoutDust(litres / fuel_L));
  const left = (litres: number) => Math.max(0, withoutDust(litres));
  const lasts = stops.map(({ fuel_L }) => nightsOn(tank_L, fuel_L));
  if (lasts.includes(0)) return { lasts, refills: [], left_L: null, tight: false };
  const refills: Refill[] = [];
  let left_L = tank_L;
  for (const [stop, { nights, fuel_L }] of stops.entries()) {
    const before = nightsOn(left_L, fuel_L);
    if (before >= nights) {
      left_L -= nights * fuel_L;
      continue;
    }
    const most = lasts[stop] as number;
    const after = nights - before;
    const every = after > most ? most : null;
    const least_L = left(
      Math.min(left_L - before * fuel_L, every === null ? tank_L : tank_L - every * fuel_L),
    );
    refills.push({ stop, night: before + 1, every, left_L: least_L, tight: isTight(least_L) });
    left_L = tank_L - (((after - 1) % most) + 1) * fuel_L;
  }
  return { lasts, refills, left_L: left(left_L), tight: isTight(left(left_L)) };
}
