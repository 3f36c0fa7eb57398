import { moistAirDensity, standardPressure } from "../../../model/air.ts";
import type { Logged, LoggedTune } from "../../../model/drift/logged.ts";
import type { Seeded } from "../../../seed-demo/random.ts";

/**
 * Seasons of an invented heater's logbook. All figures are our own working values: readings at one mixture scatter by
 * 25 %, the best rate found by 3 %, its steps are 0.1 Hz, the meter's 1 ppm.
 */
export interface SeasonKind {
  entries: number;
  /** ln of CO and of mixture for 100 hours. */
  co_rise: number;
  mixture_change: number;
  /** Cleanings spread over the season, each undoing what rose. */
  cleanings: number;
  /** The meter shows nothing below, ppm. */
  floor_ppm: number;
  /** Tails of the scatter: normal, or Student t with 5 degrees of freedom. */
  tails: "normal" | "heavy";
  /** How much of a reading's deviation stays to the next. */
  carried: number;
  /** Places from sea level to 2,500 m, or one place. */
  travels: boolean;
}

export const QUIET: SeasonKind = {
  entries: 20,
  co_rise: 0,
  mixture_change: 0,
  cleanings: 0,
  floor_ppm: 0,
  tails: "normal",
  carried: 0,
  travels: true,
};

const SCATTER = { co: 0.25, mixture: 0.03 };
const USUAL = { co_ppm: 14, low: { rate: 1.0, fan_rpm: 1650 }, high: { rate: 1.0, fan_rpm: 4400 } };
const SLOPE = 0.9;

export function seasonOf(kind: SeasonKind, random: Seeded): Logged[] {
  const logged: Logged[] = [];
  const cleanEvery = Math.ceil(kind.entries / (kind.cleanings + 1));
  const deviation = { low: 0, high: 0 };
  let hours = 0;
  let since = 0;
  for (let i = 0; i < kind.entries; i++) {
    const ran = 4 + 20 * random.uniform();
    hours += ran;
    since += ran;
    const at = new Date(Date.UTC(2026, 9, 1 + i, 20)).toISOString();
    if (kind.cleanings > 0 && i > 0 && i % cleanEvery === 0) {
      since = 0;
      logged.push({ kind: "cleaning", id: `c${i}`, at: at.replace("T20", "T10"), hours });
    }
    const elevation_m = kind.travels ? 2500 * random.uniform() : 300;
    const density_kg_m3 = moistAirDensity(
      standardPressure(elevation_m),
      -10 + 15 * random.uniform(),
      60,
    );
    const end = (which: "low" | "high"): LoggedTune["low"] => {
      const fresh = scatter(kind, random);
      deviation[which] = kind.carried * deviation[which] + Math.sqrt(1 - kind.carried ** 2) * fresh;
      const { rate, fan_rpm } = USUAL[which];
      const best =
        rate *
        (density_kg_m3 / 1.225) ** SLOPE *
        Math.exp((kind.mixture_change * since) / 100 + SCATTER.mixture * scatter(kind, random));
      const pump_Hz = Math.round((best * fan_rpm) / 100) / 10;
      const exact =
        USUAL.co_ppm * Math.exp((kind.co_rise * since) / 100 + SCATTER.co * deviation[which]);
      const co_ppm = Math.max(1, Math.round(exact));
      return co_ppm < kind.floor_ppm
        ? { pump_Hz, fan_rpm, co_below_ppm: kind.floor_ppm }
        : { pump_Hz, fan_rpm, co_ppm };
    };
    logged.push({
      kind: "tune",
      id: `t${i}`,
      at,
      density_kg_m3,
      meter: "portable meter, 0.3 m",
      hours,
      low: end("low"),
      high: end("high"),
    });
  }
  return logged;
}

function scatter({ tails }: SeasonKind, random: Seeded): number {
  const normal = random.normal();
  if (tails === "normal") return normal;
  const chi2 = Array.from({ length: 5 }, () => random.normal() ** 2).reduce((a, b) => a + b, 0);
  // Student t with 5 degrees of freedom, brought to a variance of 1.
  return (normal / Math.sqrt(chi2 / 5)) * Math.sqrt(3 / 5);
}
