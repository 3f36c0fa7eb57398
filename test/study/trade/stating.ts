import { airAt, type GivenAir, stationPressureFromQnh } from "../../../model/air.ts";
import { between, chance, type Seeded } from "./draws.ts";
import type { Night } from "./nights.ts";
import type { Tells } from "./owner.ts";
import type { Mistake } from "./row.ts";

/** What an owner states of a night, and the air that the atlas computes from it (model/air). */

export interface Stated {
  density_kg_m3: number;
  ln_density_sd: number;
  temperature_given: boolean;
  /** False when the atlas would question it at the door: an elevation, a temperature or a pressure out of reason. */
  passes: boolean;
}

export const FEET_PER_METRE = 1 / 0.3048;
const VAGUE_ELEVATION_SD_m = 120;
/** Our own working values of a door: the highest camps; warm nights; a station pressure that fits its elevation. */
const HIGHEST_STATED_m = 6000;
const WARMEST_STATED_C = 50;
const PRESSURE_FITS = 0.08;

export function state(random: Seeded, tells: Tells, night: Night, slip?: Mistake): Stated {
  const sd_m = tells.vagueElevation ? VAGUE_ELEVATION_SD_m : 0;
  let elevation_m = night.elevation_m + (sd_m && sd_m * random.normal());
  if (slip === "feet as metres") elevation_m *= FEET_PER_METRE;
  elevation_m = Math.round(elevation_m / 10) * 10;
  if (elevation_m > HIGHEST_STATED_m) return NOT_SENT;
  const given: GivenAir = {};
  const temperature_given = tells.temperature || slip === "Fahrenheit as Celsius";
  if (temperature_given) {
    const thermometer_C = night.temperature_C + 1.5 * random.normal();
    const told = slip === "Fahrenheit as Celsius" ? 1.8 * thermometer_C + 32 : thermometer_C;
    given.temperature_C = Math.round(told);
    if (given.temperature_C > WARMEST_STATED_C) return NOT_SENT;
  }
  if (slip === "QNH as station pressure") {
    given.pressure_hPa = Math.round(qnh(night));
  } else if (tells.pressure === "station") {
    given.pressure_hPa = Math.round(night.pressure_hPa + random.normal());
  } else if (tells.pressure === "QNH") {
    given.qnh_hPa = Math.round(qnh(night));
  }
  if (tells.humidity) given.humidity_pct = Math.min(100, Math.round(night.humidity_pct));
  const air = atlasAir(elevation_m, given, sd_m);
  const standard_hPa = slip === undefined ? 0 : stationPressureFromQnh(1013.25, elevation_m);
  const passes =
    slip !== "QNH as station pressure" ||
    Math.abs((given.pressure_hPa ?? standard_hPa) / standard_hPa - 1) < PRESSURE_FITS;
  return { ...air, temperature_given, passes };
}

const NOT_SENT: Stated = {
  density_kg_m3: 0,
  ln_density_sd: 0,
  temperature_given: false,
  passes: false,
};

/** Sea-level pressure that weather services tell for a night: the station's, reduced by the standard column (ICAO). */
function qnh({ pressure_hPa, elevation_m }: Night): number {
  const n = 0.190263;
  const gain = (0.0065 * elevation_m) / 288.15;
  return 1013.25 * ((pressure_hPa / 1013.25) ** n + gain) ** (1 / n);
}

/** Airs already computed, by elevation and temperature: most owners state no more, and runs are many. */
const known = new Map<number, { density_kg_m3: number; ln_density_sd: number }>();

function atlasAir(elevation_m: number, given: GivenAir, sd_m: number) {
  if (given.pressure_hPa ?? given.qnh_hPa ?? given.humidity_pct) return compute();
  const key = (elevation_m / 10) * 1024 + (given.temperature_C ?? 400) * 2 + (sd_m ? 1 : 0);
  let air = known.get(key);
  if (!air) {
    air = compute();
    known.set(key, air);
  }
  return air;
  function compute() {
    const { density_kg_m3, ln_density_sd } = airAt(elevation_m, given, sd_m);
    return { density_kg_m3, ln_density_sd };
  }
}

/** The fan's read-out with the wrong number of magnets: doubled or halved, whichever still looks like a fan; else 0. */
export function fanMisread(random: Seeded, low_rpm: number, high_rpm: number): number {
  const doubles = 2 * high_rpm <= 8000;
  const halves = low_rpm / 2 >= 500;
  if (doubles && halves) return chance(random, 0.5) ? 2 : 0.5;
  return doubles ? 2 : halves ? 0.5 : 0;
}

/** Careless owners read and set badly: this much scatter of ln on top, 2 to 3 times that of the others. */
export const carelessness = (random: Seeded): number => between(random, [0.05, 0.07]);
