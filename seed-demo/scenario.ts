import { airAt } from "../model/air.ts";
import type { End } from "../model/end.ts";
import { toStep } from "../model/rounding.ts";
import type { Tune } from "../model/tune.ts";
import { type Seeded, seeded } from "./random.ts";
import { SITES } from "./sites.ts";
import { BETWEEN, TRUTH, WITHIN } from "./truth.ts";

/** A tune of the demo, what kind it is, and, for a planted slip, the reason it must be held for. */
export interface Planted {
  key: string;
  kind: "good" | "slip" | "lazy" | "flood" | "coordinated";
  reason?: string;
  tune: Tune;
}

const SEED = 20_261_101;
const CREWS = 240;
const FANS = { low: 1650, high: 4400 };

interface Crew {
  key: string;
  heat_kW: 2 | 5 | 8;
  own: Record<End, number>;
}

/**
 * The Long Night Society: invented crews with telescopes and heated trailers at real places, from the sea to
 * the Altiplano. Invented tunes about known coefficients, and the mistakes people make among them.
 * Same bodies, same order, every time; another seed makes another society, for tests.
 */
export function scenario(seed = SEED): Planted[] {
  const random = seeded(seed);
  // Streams of their own: what is estimated, and how a tune was found, change nothing else of the society.
  const estimates = seeded(seed + 1);
  const ways = seeded(seed + 2);
  const planted: Planted[] = [];
  const add = (kind: Planted["kind"], tune: Tune, reason?: string) =>
    planted.push({
      key: `long-night-${planted.length}`,
      kind,
      tune,
      ...(reason ? { reason } : {}),
    });
  for (let c = 0; c < CREWS; c++) {
    const crew = crewOf(random, c);
    const tunes = 1 + Math.floor(random.uniform() * 3);
    for (let k = 0; k < tunes; k++) {
      const tune = perhapsOnTheMap(estimates, tuneOf(random, crew, siteOf(random)));
      add("good", { ...tune, found: foundIn(ways, tune) });
    }
  }
  for (let round = 0; round < 3; round++) {
    for (const [reason, slip] of SLIPS) {
      const crew = crewOf(random, 1000 + planted.length, 5);
      add("slip", slip(tuneOf(random, crew, 8, true)), reason);
    }
  }
  // One crew tuned at the sea once and never again.
  const lazy = crewOf(random, 2000, 5);
  const seaLevel = tuneOf(random, lazy, 0);
  for (const site of [1, 4, 6, 7, 9]) {
    const there = tuneOf(random, lazy, site);
    add("lazy", { ...there, low: seaLevel.low, high: seaLevel.high });
  }
  // One crew sends the same rich tune from 4,000 m again and again; a few friends agree on another. All say they swept.
  const flooding = richer(tuneOf(random, crewOf(random, 3000, 5), 12), 1.5);
  for (let k = 0; k < 40; k++) add("flood", flooding);
  for (let c = 0; c < 8; c++) {
    add("coordinated", richer(tuneOf(random, crewOf(random, 4000 + c, 5), 9), 1.6));
  }
  return planted;
}

function crewOf({ uniform, normal }: Seeded, number: number, kW?: 5): Crew {
  const share = uniform();
  const heat_kW = kW ?? (share < 0.7 ? 5 : share < 0.9 ? 2 : 8);
  return {
    key: `invented-crew-${String(number).padStart(5, "0")}`,
    heat_kW,
    own: { low: BETWEEN * normal(), high: BETWEEN * normal() },
  };
}

/** Half of the nights are spent low down: that is where most people are. */
function siteOf({ uniform }: Seeded): number {
  return uniform() < 0.5
    ? Math.floor(uniform() * 4)
    : 4 + Math.floor(uniform() * (SITES.length - 4));
}

function tuneOf({ uniform, normal }: Seeded, crew: Crew, at: number, everything = false): Tune {
  const site = SITES[at] ?? (SITES[0] as (typeof SITES)[number]);
  const elevation_m = Math.max(0, site.elevation_m + 10 * Math.round(2 * normal()));
  // Nights about the standard atmosphere's temperature, so that tunes without one are noisier but not biased.
  const temperature_C = Math.round(15 - 0.0065 * elevation_m + 6 * normal());
  const humidity_pct = Math.round(40 + 40 * uniform());
  const { density_kg_m3, pressure_hPa } = airAt(elevation_m, { temperature_C, humidity_pct });
  const weather = pressure_hPa * (1 + 0.006 * normal());
  const known = everything || uniform() < 0.67;
  const end = (name: End): Tune["low"] => {
    const { intercept, slope } = TRUTH[crew.heat_kW][name];
    const fan_rpm = toStep(FANS[name] * (1 + 0.04 * normal()), 10);
    const mean = intercept + slope * Math.log(density_kg_m3 / 1.225);
    const perKrpm = Math.exp(mean + crew.own[name] + WITHIN * normal());
    const silent = uniform() < 0.15;
    const co = silent ? { co_below_ppm: 30 } : { co_ppm: Math.round(8 + 12 * uniform()) };
    return { pump_Hz: toStep((perKrpm * fan_rpm) / 1000, 0.01), fan_rpm, ...co };
  };
  const low = end("low");
  const high = end("high");
  return {
    heater: { heat_kW: crew.heat_kW, ...(everything || uniform() < 0.4 ? { dose_uL: 22 } : {}) },
    site: { elevation_m, lat: site.lat, lon: site.lon },
    ...(known
      ? {
          air: {
            temperature_C,
            humidity_pct,
            ...(everything ? { pressure_hPa: toStep(weather, 0.1) } : {}),
          },
        }
      : {}),
    low,
    high,
    meter: { kind: "portable meter", distance_m: 0.3 },
    tuned_on: "2026-10",
    contributor: crew.key,
  };
}

/** One tune in five is of a place found on the map: its elevation is an estimate, and says how good it is. */
function perhapsOnTheMap({ uniform, normal }: Seeded, tune: Tune): Tune {
  const [found, off] = [uniform() < 0.2, normal()];
  if (!found) return tune;
  const { elevation_m } = tune.site;
  // Ground is flat by the sea and steep in the mountains.
  const elevation_sd_m = 10 + 10 * Math.min(4, Math.floor(elevation_m / 1000));
  const estimate_m = Math.max(0, toStep(elevation_m + elevation_sd_m * off, 10));
  return { ...tune, site: { ...tune.site, elevation_m: estimate_m, elevation_sd_m } };
}

/** Most sweep past the lowest reading on both sides; a meter that shows nothing there cannot tell, and some do not say. */
function foundIn({ uniform }: Seeded, { low, high }: Tune): Tune["found"] {
  const says = uniform() < 0.9;
  if (!says) return undefined;
  const isSilent = low.co_below_ppm !== undefined || high.co_below_ppm !== undefined;
  return isSilent ? "stopped early" : "bracketed";
}

/** Each named slip: the reason it must be held for, and how it is made of a good tune. */
const SLIPS: readonly [reason: string, slip: (tune: Tune) => Tune][] = [
  [
    "elevation_in_feet",
    (t) => ({ ...t, site: { ...t.site, elevation_m: toStep(t.site.elevation_m / 0.3048, 1) } }),
  ],
  [
    "elevation_metres_as_feet",
    (t) => ({ ...t, site: { ...t.site, elevation_m: toStep(t.site.elevation_m * 0.3048, 1) } }),
  ],
  ["temperature_in_fahrenheit", (t) => ({ ...t, air: { ...t.air, temperature_C: 59 } })],
  [
    "pump_decimal_slip",
    (t) => ({ ...t, high: { ...t.high, pump_Hz: toStep(t.high.pump_Hz * 10, 0.01) } }),
  ],
  [
    "pump_pulses_per_minute",
    (t) => ({
      ...t,
      low: { ...t.low, pump_Hz: toStep(t.low.pump_Hz * 60, 0.01) },
      high: { ...t.high, pump_Hz: toStep(t.high.pump_Hz * 60, 0.01) },
    }),
  ],
  [
    "fan_rpm_doubled",
    (t) => ({
      ...t,
      low: { ...t.low, fan_rpm: t.low.fan_rpm * 2 },
      high: { ...t.high, fan_rpm: t.high.fan_rpm * 2 },
    }),
  ],
  [
    "fan_rpm_halved",
    (t) => ({
      ...t,
      low: { ...t.low, fan_rpm: t.low.fan_rpm / 2 },
      high: { ...t.high, fan_rpm: t.high.fan_rpm / 2 },
    }),
  ],
  [
    "fan_rpm_in_tens",
    (t) => ({
      ...t,
      low: { ...t.low, fan_rpm: t.low.fan_rpm / 10 },
      high: { ...t.high, fan_rpm: t.high.fan_rpm / 10 },
    }),
  ],
  [
    "fan_rpm_in_hundreds",
    (t) => ({
      ...t,
      low: { ...t.low, fan_rpm: t.low.fan_rpm / 100 },
      high: { ...t.high, fan_rpm: t.high.fan_rpm / 100 },
    }),
  ],
  ["dose_in_mL", (t) => ({ ...t, heater: { ...t.heater, dose_uL: 0.022 } })],
  ["ends_swapped", (t) => ({ ...t, low: t.high, high: t.low })],
  ["qnh_as_station_pressure", (t) => ({ ...t, air: { ...t.air, pressure_hPa: 1018 } })],
];

function richer(tune: Tune, times: number): Tune {
  const rich = (end: Tune["low"]) => ({ ...end, pump_Hz: toStep(end.pump_Hz * times, 0.01) });
  return { ...tune, low: rich(tune.low), high: rich(tune.high), found: "bracketed" };
}
