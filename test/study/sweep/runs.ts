import type { End } from "../../../model/end.ts";
import { studentFactor } from "../../../model/numerics/student.ts";
import { onStep, stepsFrom } from "../../../model/rounding.ts";
import type { SweepSetup } from "../../../model/sweep/setup.ts";
import { type Seeded, seeded } from "../../../seed-demo/random.ts";
import { AtTheHeater } from "./at-the-heater.ts";
import { type ByHand, byHand } from "./by-hand.ts";
import { guided, type Sweeping } from "./guided.ts";
import { type Heater, heaterOf, logBetween } from "./heater.ts";
import { type Meter, meterOf } from "./meter.ts";

/** One heater, met by a guided person and by one who steps by hand. */
export interface Run {
  end: End;
  heater: Heater;
  meter: Meter;
  setup: SweepSetup;
  guided: Sweeping;
  hand: ByHand;
  /** Its minimum lies in the 99 % band, well above where the flame goes out, and within what the meter shows. */
  is_ordinary: boolean;
}

const CENTRE_Hz: Record<End, number> = { low: 1.1, high: 4.2 };
/** Spread in ln of the bands that the sweep is given: from an atlas full of tunes to an empty one. */
const LN_SDS = [0.06, 0.09, 0.12, 0.2, 0.35];
const STEPS_Hz = [0.1, 0.1, 0.1, 0.05, 0.2, 0.01];
const z = (level: number) => studentFactor(level, Number.POSITIVE_INFINITY);

export function runOf(seed: number, run: number): Run {
  const random = seeded(seed * 7919 + run * 104_729);
  const { uniform, normal } = random;
  const one = <T>(list: readonly T[]) => list[Math.floor(uniform() * list.length)] as T;
  const end: End = run % 2 === 0 ? "low" : "high";
  const step_Hz = one(STEPS_Hz);
  const onGrid = (rate: number) => onStep(stepsFrom(rate, step_Hz), step_Hz);
  const centre = CENTRE_Hz[end] * Math.exp(0.15 * (2 * uniform() - 1));
  const ln_sd = one(LN_SDS);
  const heater = heaterOf(random, minimumIn(random, centre, ln_sd), lowestIn(random));
  const meter = meterOf(random);
  const burns = 1.02 * heater.flame_out_Hz;
  const present = Math.max(burns, heater.minimum_Hz * presentOver(random));
  const setup: SweepSetup = {
    end,
    present_Hz: onGrid(present),
    suggested_Hz: onGrid(centre),
    bands_Hz: uniform() < 0.05 ? [] : [0.8, 0.95].map((level) => bandOf(centre, ln_sd, level)),
    step_Hz,
    meter: {
      resolution_ppm: meter.resolution_ppm,
      floor_ppm: meter.floor_ppm,
      ceiling_ppm: meter.ceiling_ppm,
      // How slow the meter is, its owner guesses, or does not say.
      lag_s: uniform() < 0.3 ? undefined : meter.lag_s * Math.exp(0.4 * normal()),
    },
  };
  const watches = uniform() < 0.5;
  const weather = Math.floor(2 ** 31 * uniform());
  const met = () => new AtTheHeater(seeded(weather), heater, meter);
  return {
    end,
    heater,
    meter,
    setup,
    guided: guided(setup, met(), watches),
    hand: byHand(setup.present_Hz, met(), meter.resolution_ppm),
    is_ordinary:
      Math.abs(Math.log(heater.minimum_Hz / centre)) < ln_sd * z(0.99) &&
      heater.flame_out_Hz < 0.8 * heater.minimum_Hz &&
      heater.lowest_ppm > 1.5 * Math.max(meter.floor_ppm, 4) &&
      heater.lowest_ppm < 0.5 * meter.ceiling_ppm,
  };
}

function bandOf(centre: number, ln_sd: number, level: number) {
  const reach = ln_sd * z(level);
  return { level, lower: centre * Math.exp(-reach), upper: centre * Math.exp(reach) };
}

/** A third as the bands expect it, a third anywhere in the 99 % band, a third outside of it. */
function minimumIn({ uniform, normal }: Seeded, centre: number, ln_sd: number): number {
  const edge = ln_sd * z(0.99);
  const kind = uniform();
  if (kind < 1 / 3) return centre * Math.exp(ln_sd * normal());
  if (kind < 2 / 3) return centre * Math.exp(edge * (2 * uniform() - 1));
  const off = Math.min(Math.LN2, edge * (1 + uniform()));
  return centre * Math.exp(uniform() < 0.5 ? -off : off);
}

/** Mostly as the meter near the exhaust usually shows it, now and then hardly anything, or soot. */
function lowestIn({ uniform }: Seeded): [number, number] {
  const kind = uniform();
  if (kind < 0.1) return [1, 6];
  return kind < 0.8 ? [6, 40] : [40, 250];
}

/** What is set now, over the best: mostly rich, sometimes as good as matched, now and then lean. */
function presentOver(random: Seeded): number {
  const kind = random.uniform();
  if (kind < 0.6) return logBetween(random, 1, 1.6);
  return kind < 0.85 ? logBetween(random, 0.92, 1.1) : logBetween(random, 0.8, 1);
}
