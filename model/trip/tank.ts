import { requirePositive } from "../finite.ts";

/** Sums of litres that meet in theory differ in their last digits. */
const ROUNDING = 1e-9;

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
}

/** A tank along the nights of a trip. */
export interface TankPlan {
  /** Whole nights that a full tank lasts, by stop: 0 where one night takes more than it holds. */
  lasts: number[];
  /** As late as can be, hence as few as can be; none when some night takes more than a tank. */
  refills: Refill[];
}

/**
 * Whether a tank, full at the first stop, lasts all nights, and where to fill it again when not. Nothing else is
 * taken to draw from it.
 * @throws RangeError naming the number that cannot be used
 */
export function tankPlan(tank_L: number, stops: readonly NightsAtStop[]): TankPlan {
  requirePositive({ tank_L });
  const nightsOn = (litres: number, fuel_L: number) => Math.floor(litres / fuel_L + ROUNDING);
  const lasts = stops.map(({ fuel_L }) => nightsOn(tank_L, fuel_L));
  if (lasts.includes(0)) return { lasts, refills: [] };
  const refills: Refill[] = [];
  let left_L = tank_L;
  for (const [stop, { nights, fuel_L }] of stops.entries()) {
    const before = nightsOn(left_L, fuel_L);
    if (before >= nights) {
      left_L -= nights * fuel_L;
      continue;
    }
    const every = lasts[stop] as number;
    const after = nights - before;
    refills.push({ stop, night: before + 1, every: after > every ? every : null });
    left_L = tank_L - (((after - 1) % every) + 1) * fuel_L;
  }
  return { lasts, refills };
}
