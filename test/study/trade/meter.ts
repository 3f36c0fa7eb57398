import { between, type Seeded } from "./draws.ts";

/**
 * Carbon monoxide over the pump rate, and what a meter beside the exhaust shows of it. The bowl is skewed: slow to
 * climb on the rich side, steep on the lean. Shapes and sizes: common practice, no source.
 */

export interface Bowl {
  /** Least CO in the exhaust itself, ppm. */
  least_ppm: number;
  /** Change of the pump rate, as a share, that doubles the least CO. */
  rich: number;
  lean: number;
}

export function drawBowl(random: Seeded): Bowl {
  const rich = between(random, [0.1, 0.18]);
  return {
    least_ppm: 40 * Math.exp(0.35 * random.normal()),
    rich,
    lean: rich * between(random, [0.45, 0.75]),
  };
}

/** CO in the exhaust, ppm, at a pump rate that is `off` (as a share) from the best: plus is rich. */
export function exhaustCO({ least_ppm, rich, lean }: Bowl, off: number): number {
  const steps = off > 0 ? off / rich : off / lean;
  const square = steps * steps;
  // The lean side ends in a flame that goes out, so it climbs with the fourth power as well.
  return least_ppm * (1 + square + (off < 0 ? 0.3 * square * square : 0));
}

export interface Meter {
  /** Shows nothing below this, ppm; 0 for meters that show everything. */
  floor_ppm: number;
  /** What is left of the exhaust's CO where the owner holds the meter. */
  dilution: number;
  /** Noise of one reading as a share of it; 1 ppm comes on top. */
  noise: number;
}

export const ROOM_ALARM_FLOOR_ppm = 30;
/** Meters end here. */
const MOST_ppm = 2000;

export function drawMeter(random: Seeded, isRoomAlarm: boolean): Meter {
  // Who sees nothing on a room alarm holds it closer.
  const closer = isRoomAlarm ? 1.6 : 1;
  return {
    floor_ppm: isRoomAlarm ? ROOM_ALARM_FLOOR_ppm : 0,
    dilution: Math.min(0.9, 0.28 * closer * Math.exp(0.45 * random.normal())),
    noise: between(random, [0.03, 0.08]),
  };
}

/** One reading: whole ppm, the floor where the meter shows nothing. */
export function reading(random: Seeded, meter: Meter, exhaust_ppm: number): number {
  // Two uniform numbers (standard deviation 1 when stretched so): near enough to a normal one for a meter, and cheap.
  const wobble = 2.45 * (random.uniform() + random.uniform() - 1);
  const shown = exhaust_ppm * meter.dilution * (1 + meter.noise * wobble) + wobble;
  return Math.max(meter.floor_ppm, Math.min(MOST_ppm, Math.round(shown)));
}
