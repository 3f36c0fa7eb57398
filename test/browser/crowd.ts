import { airAt } from "../../model/air.ts";
import type { Tune } from "../../model/tune.ts";
import { seeded } from "../model/fit/simulated-crowd.ts";

/** Real places with their elevations in m (GeoNames, CC BY 4.0), so that the door finds the terrain in order. */
const PLACES: [name: string, lat: number, lon: number, elevation_m: number][] = [
  ["Leadville", 39.25, -106.29, 3097],
  ["Denver", 39.74, -104.98, 1609],
  ["Salt Lake City", 40.76, -111.89, 1288],
  ["Chamonix", 45.92, 6.87, 1035],
  ["Innsbruck", 47.26, 11.39, 574],
  ["Tromsø", 69.65, 18.96, 12],
  ["Rotterdam", 51.92, 4.48, 5],
  ["La Paz", -16.5, -68.15, 3782],
];

/** What the invented crowd follows: pump rate per fan speed at 1.225 kg/m³, and how it scales with density. */
const TRUE_PER_KRPM = { low: 0.68, high: 0.98 };
const TRUE_SLOPE = 0.88;
const BETWEEN_HEATERS = 0.07;
const WITHIN_HEATER = 0.03;

/** Invented tunes of the 5 kW class by invented contributors, two places each; the last few never thought of Hz. */
export function inventedTunes(contributors = 48): Tune[] {
  const { uniform, normal } = seeded(20261125);
  return Array.from({ length: contributors }, (_, who) => {
    const unit = BETWEEN_HEATERS * normal();
    const fans = { low: 1600 + 10 * Math.floor(20 * uniform()), high: 4200 + 100 * (who % 5) };
    return [0, 1].map((visit) => {
      const [, lat, lon, elevation_m] = PLACES[
        (who + 3 * visit) % PLACES.length
      ] as (typeof PLACES)[0];
      const temperature_C = Math.round(-4 - elevation_m / 400 + 6 * normal());
      const { density_ratio } = airAt(elevation_m, { temperature_C });
      const end = (which: "low" | "high") => ({
        pump_Hz: Number(
          (
            (fans[which] / 1000) *
            TRUE_PER_KRPM[which] *
            density_ratio ** TRUE_SLOPE *
            Math.exp(unit + WITHIN_HEATER * normal())
          ).toFixed(1),
        ),
        fan_rpm: fans[which],
        co_ppm: 8 + Math.floor(20 * uniform()),
      });
      return {
        heater: { heat_kW: 5, dose_uL: 22 },
        site: { elevation_m, lat, lon },
        air: { temperature_C },
        low: end("low"),
        high: end("high"),
        found: "bracketed" as const,
        tuned_on: "2026-10",
        contributor: `invented-crew-${String(who).padStart(4, "0")}`,
      };
    });
  }).flat();
}

/** What an invented contributor sends who reads pulses a minute: held at the door. */
export function tuneInPulsesAMinute(): Tune {
  const [tune] = inventedTunes(1) as [Tune];
  return {
    ...tune,
    contributor: "invented-crew-of-pulses",
    low: { ...tune.low, pump_Hz: Math.round(tune.low.pump_Hz * 60) },
    high: { ...tune.high, pump_Hz: Math.round(tune.high.pump_Hz * 60) },
  };
}

/** What an invented contributor sends whose good-looking figures stand alone: set aside by the fit. */
export function tuneFarOff(n: number): Tune {
  const tune = inventedTunes(n + 1).at(-1) as Tune;
  const off = ({ pump_Hz, ...end }: Tune["low"]) => ({
    ...end,
    pump_Hz: Number((pump_Hz * 1.6).toFixed(1)),
  });
  return {
    ...tune,
    // Without a place, so that no disc of its own lies beside the others'.
    site: { elevation_m: tune.site.elevation_m },
    contributor: `invented-crew-far-off-${n}`,
    low: off(tune.low),
    high: off(tune.high),
  };
}
