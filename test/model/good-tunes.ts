import fc from "fast-check";
import { airAt, standardPressure, stationPressureFromQnh } from "../../model/air.ts";
import { ENDS, type End } from "../../model/end.ts";
import { SETTINGS } from "../../model/fit/settings.ts";
import type { ScreenContext } from "../../model/screen.ts";
import type { Tune } from "../../model/tune.ts";

/**
 * Good tunes over the whole realistic range, whatever may be known or unknown about them:
 * the raw material of the screening tests.
 */

/** Mixture of a well-tuned heater in standard sea-level air by the physics prior, Hz per 1,000 rpm. */
export const PRIOR_MIXTURE: Record<End, number> = {
  low: Math.exp(SETTINGS.level_low),
  high: Math.exp(SETTINGS.level_high),
};

export interface GoodTune {
  tune: Tune;
  context: ScreenContext;
}

const spread = fc.double({ min: 0.65, max: 1.35, noNaN: true });
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
const round = (value: number, step: number) => Number((Math.round(value / step) * step).toFixed(6));

/** What is drawn; {@link build} makes a tune of it. */
const drawn = fc.record({
  elevation_m: fc.integer({ min: -400, max: 5500 }),
  temperature_C: fc.integer({ min: -40, max: 40 }),
  weather: between(0.96, 1.04),
  humidity_pct: fc.integer({ min: 0, max: 100 }),
  heat_kW: fc.integer({ min: 4, max: 16 }).map((half) => half / 2),
  dose_uL: maybe(fc.oneof(fc.integer({ min: 16, max: 30 }), fc.integer({ min: 50, max: 65 }))),
  supply_V: maybe(fc.constantFrom(12, 24)),
  low_fan: fc.integer({ min: 120, max: 240 }),
  high_fan: fc.integer({ min: 350, max: 500 }),
  raise_fan: fc.boolean(),
  low_spread: spread,
  high_spread: spread,
  /** 0 for a crew that never re-tunes, 0.5–1.2 for the others. */
  slope: fc.oneof(
    { weight: 1, arbitrary: fc.constant(0) },
    { weight: 4, arbitrary: between(0.5, 1.2) },
  ),
  tells: fc.record({
    temperature: fc.boolean(),
    humidity: fc.boolean(),
    pressure: fc.constantFrom("none", "station", "qnh"),
    place: fc.boolean(),
    meter: fc.boolean(),
    month: fc.boolean(),
  }),
  terrain: fc.record({ off: between(-1, 1), uncertainty_95_m: fc.integer({ min: 40, max: 650 }) }),
  co: fc.record({
    low: maybe(fc.integer({ min: 0, max: 300 })),
    high: maybe(fc.integer({ min: 0, max: 300 })),
  }),
});

type Drawn = typeof drawn extends fc.Arbitrary<infer T> ? T : never;

/** Every good tune has its low end well below its high end in fan speed, and below in pump rate: that is what the ends are. */
export const goodTunes: fc.Arbitrary<GoodTune> = drawn
  .map(build)
  .filter(({ tune: { low, high } }) => low.pump_Hz < high.pump_Hz && low.fan_rpm < high.fan_rpm);

function build(d: Drawn): GoodTune {
  const qnh_hPa = 1013.25 * d.weather;
  const pressure_hPa =
    d.tells.pressure === "qnh"
      ? stationPressureFromQnh(qnh_hPa, d.elevation_m)
      : standardPressure(d.elevation_m) * d.weather;
  const { temperature_C, humidity_pct } = d;
  const { density_ratio } = airAt(d.elevation_m, { temperature_C, pressure_hPa, humidity_pct });
  const raise = d.raise_fan ? Math.max(1, 1 / density_ratio) : 1;
  const fan = {
    low: round(d.low_fan * 10 * raise, 10),
    high: round(Math.min(5000, d.high_fan * 10 * raise), 10),
  };
  const end = (name: End) => {
    const mixture = PRIOR_MIXTURE[name] * d[`${name}_spread`] * density_ratio ** d.slope;
    const co = d.co[name];
    return {
      pump_Hz: round((mixture * fan[name]) / 1000, 0.1),
      fan_rpm: fan[name],
      ...(co === undefined ? { co_below_ppm: 30 } : { co_ppm: co }),
    };
  };
  const [low, high] = ENDS.map(end) as [Tune["low"], Tune["high"]];
  const air = {
    ...(d.tells.temperature ? { temperature_C } : {}),
    ...(d.tells.humidity ? { humidity_pct } : {}),
    ...(d.tells.pressure === "station" ? { pressure_hPa: round(pressure_hPa, 0.1) } : {}),
    ...(d.tells.pressure === "qnh" ? { qnh_hPa: round(qnh_hPa, 1) } : {}),
  };
  const { uncertainty_95_m, off } = d.terrain;
  return {
    tune: {
      heater: {
        heat_kW: d.heat_kW,
        ...(d.dose_uL === undefined ? {} : { dose_uL: d.dose_uL }),
        ...(d.supply_V === undefined ? {} : { supply_V: d.supply_V }),
      },
      site: { elevation_m: d.elevation_m, ...(d.tells.place ? { lat: 41.2, lon: 74.9 } : {}) },
      ...(Object.keys(air).length > 0 ? { air } : {}),
      low,
      high,
      ...(d.tells.meter ? { meter: { kind: "room alarm", distance_m: 0.3 } } : {}),
      ...(d.tells.month ? { tuned_on: "2026-10" } : {}),
      contributor: "an-invented-key-of-a-crew",
    },
    context: {
      month: "2026-11",
      terrain: d.tells.place
        ? {
            elevation_m: d.elevation_m + off * uncertainty_95_m,
            uncertainty_95_m,
            sd_m: uncertainty_95_m / 2,
          }
        : null,
    },
  };
}

/** A fixed sample, the same at every run. */
export function sampleOfGoodTunes(count: number): GoodTune[] {
  return fc.sample(goodTunes, { seed: 20261125, numRuns: count });
}
