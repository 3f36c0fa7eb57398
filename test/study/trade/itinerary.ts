import { between, chance, type Seeded } from "./draws.ts";
import type { Lying } from "./lies.ts";
import { anyMonth, type Night, night } from "./nights.ts";
import type { Club } from "./roles.ts";
import type { Trade } from "./trade.ts";
import { homeElevation, tripElevation } from "./travel.ts";

/** Where and when one owner tunes: at home first, then at home or away; clubs meet; liars go where they lie. */

/** Most owners send one or two tunes, some a dozen (common practice, no source). */
export function tuneCount(random: Seeded): number {
  let count = 1;
  while (count < 12 && random.uniform() < 0.55) count++;
  return count;
}

export interface Stop {
  night: Night;
  cell: string;
  /** The factor of a lie told here. */
  lie?: number | undefined;
}

/** Cells are named by their elevation, so that one cell is one place; homes spread over more of them than passes do. */
const cellAt = (elevation_m: number, place: number): string =>
  `${Math.round(elevation_m / 150)}-${place}`;

export function itinerary(
  random: Seeded,
  trade: Trade,
  count: number,
  club?: Club,
  lying?: Lying,
): Stop[] {
  const { travel, climate, options } = trade;
  const home_m = homeElevation(random, travel);
  const homePlace = Math.floor(random.uniform() * Math.max(6, options.owners / 30));
  const lieFactor = lying?.drawFactor(random);
  return Array.from({ length: count }, (_, t): Stop => {
    if (club && t === 0) return club;
    const isHome = t === 0 ? chance(random, 0.75) : !chance(random, travel.away);
    const usual_m = isHome ? home_m : tripElevation(random, travel);
    const elevation_m = lying ? lying.elevation(random, t, usual_m) : usual_m;
    const at = elevation_m + between(random, [-15, 15]);
    const place = elevation_m === home_m ? homePlace : Math.floor(random.uniform() * 6);
    const isHumid = chance(random, options.humidNights);
    return {
      night: night(random, climate, Math.max(0, at), anyMonth(random), isHumid),
      cell: cellAt(elevation_m, place),
      lie: lying?.isFalse(t) ? lieFactor : undefined,
    };
  });
}
