import type { End } from "../../../model/fit/group.ts";
import { studentFactor } from "../../../model/fit/student.ts";
import type { SweepSetup } from "../../../model/sweep/setup.ts";
import { type Seeded, seeded } from "../../../seed-demo/random.ts";
import { AtTheHeater } from "./at-the-heater.ts";
import { byHand } from "./by-hand.ts";
import { co_ppm, type Exhaust, exhaustOf, type Meter, meterOf } from "./exhaust.ts";
import { type Found, guided } from "./guided.ts";

/** One heater, met by a guided person and by one who steps by hand. */
export interface Run {
  end: End;
  exhaust: Exhaust;
  meter: Meter;
  setup: SweepSetup;
  /** The lean end of the 99 % new-heater band. */
  band_lean_Hz: number;
  /** The lowest CO at any rate the controller can be set to, no leaner than the band, ppm. */
  reachable_ppm: number;
  guided: Found;
  hand: Found;
}

/** Whether the meter shows the lowest CO at all. */
export type Sight = "seen" | "below floor";

const CENTRE_Hz: Record<End, number> = { low: 1.1, high: 4.2 };
const LN_SD = 0.11;
const z = (level: number) => studentFactor(level, Number.POSITIVE_INFINITY);
const STEP_Hz = 0.1;

export function runOf(seed: number, run: number, sight: Sight = "seen"): Run {
  const random = seeded(seed * 7919 + run * 104_729);
  const end: End = run % 2 === 0 ? "low" : "high";
  const centre = CENTRE_Hz[end] * Math.exp(0.15 * (2 * random.uniform() - 1));
  const bandAt = (level: number) => ({
    level,
    lower: centre * Math.exp(-LN_SD * z(level)),
    upper: centre * Math.exp(LN_SD * z(level)),
  });
  const widest = bandAt(0.99);
  const meter = sight === "seen" ? meterOf(random) : { ...meterOf(random), floor_ppm: 30 };
  const exhaust = exhaustOf(random, minimumIn(random, centre, widest), lowestOf(sight, meter));
  const setup: SweepSetup = {
    end,
    start_Hz: Number((Math.round(centre / STEP_Hz) * STEP_Hz).toFixed(6)),
    bands_Hz: [bandAt(0.8), bandAt(0.95), widest],
    // The lag is for the sweep to find out.
    meter: { ...meter, lag_s: undefined },
  };
  const weather = Math.floor(2 ** 31 * random.uniform());
  return {
    end,
    exhaust,
    meter,
    setup,
    band_lean_Hz: widest.lower,
    reachable_ppm: reachable(exhaust, widest.lower),
    guided: guided(setup, new AtTheHeater(seeded(weather), exhaust, meter)),
    hand: byHand(
      setup.start_Hz,
      new AtTheHeater(seeded(weather), exhaust, meter),
      meter.resolution_ppm,
    ),
  };
}

/** Half of the heaters as the bands expect them, half anywhere in the 99 % band alike. */
function minimumIn(
  { uniform, normal }: Seeded,
  centre: number,
  { lower, upper }: { lower: number; upper: number },
): number {
  if (uniform() < 0.5) return lower + (upper - lower) * uniform();
  for (;;) {
    const drawn = centre * Math.exp(LN_SD * normal());
    if (drawn >= lower && drawn <= upper) return drawn;
  }
}

/** Somebody with a room alarm holds it near enough for it to show something, or not. */
function lowestOf(sight: Sight, { floor_ppm }: Meter): [number, number] {
  if (sight === "below floor") return [7, 20];
  return [Math.max(7, 1.2 * floor_ppm), Math.max(60, 3 * floor_ppm)];
}

function reachable(exhaust: Exhaust, lean_Hz: number): number {
  const around = Math.round(exhaust.minimum_Hz / STEP_Hz);
  const rates = [-1, 0, 1].map((k) => (around + k) * STEP_Hz).filter((rate) => rate >= lean_Hz);
  return Math.min(...rates.map((rate) => co_ppm(exhaust, rate)));
}
