import { requireFinite } from "./numerics/finite.ts";
import { exp, power } from "./numerics/ln-exp.ts";

/**
 * Air at the intake: pressure and density from elevation (ISO 2533:1975),
 * density of moist air (CIPM-2007), station pressure and QNH, density altitude.
 * Elevations are geometric metres above mean sea level unless said otherwise.
 */

/** ISO 2533:1975, Table 1. */
const GRAVITY_m_s2 = 9.80665;
const GAS_CONSTANT_J_kgK = 287.05287;
const EARTH_RADIUS_m = 6_356_766;
const SEA_LEVEL_K = 288.15;
const SEA_LEVEL_hPa = 1013.25;
const LAPSE_K_per_m = 0.0065;
const ICE_POINT_K = 273.15;
/** g / (R · lapse) = 5.25588: the exponent of pressure on temperature below 11 km. */
const PRESSURE_EXPONENT = GRAVITY_m_s2 / (GAS_CONSTANT_J_kgK * LAPSE_K_per_m);

/** Density of the standard atmosphere at sea level, kg/m³ (ISO 2533:1975); every density ratio is against it. */
export const STANDARD_DENSITY_kg_m3 = 1.225;

/** Elevations the atlas speaks of, m: below the Dead Sea's shore to the highest roads and camps. */
export const ELEVATION_RANGE_m: readonly [number, number] = [-500, 6000];

/** Geopotential altitude, m, of a geometric elevation z, m: H = r z/(r + z) (ISO 2533:1975, eq. 8). */
export function geopotential(elevation_m: number): number {
  return (EARTH_RADIUS_m * elevation_m) / (EARTH_RADIUS_m + elevation_m);
}

/** Geometric elevation, m, of a geopotential altitude H, m: z = r H/(r − H). */
export function geometric(altitude_m: number): number {
  return (EARTH_RADIUS_m * altitude_m) / (EARTH_RADIUS_m - altitude_m);
}

/** Temperature of the standard atmosphere, °C, at a geometric elevation, m. */
export function standardTemperature(elevation_m: number): number {
  return SEA_LEVEL_K - LAPSE_K_per_m * geopotential(elevation_m) - ICE_POINT_K;
}

/** Pressure of the standard atmosphere, hPa, at a geometric elevation, m (ISO 2533:1975, eq. 12). */
export function standardPressure(elevation_m: number): number {
  const ratio = 1 - (LAPSE_K_per_m * geopotential(elevation_m)) / SEA_LEVEL_K;
  return SEA_LEVEL_hPa * power(ratio, PRESSURE_EXPONENT);
}

/** Density of the dry standard atmosphere, kg/m³, at a geometric elevation, m: p/(R T). */
export function standardDensity(elevation_m: number): number {
  const kelvin = standardTemperature(elevation_m) + ICE_POINT_K;
  return (standardPressure(elevation_m) * 100) / (GAS_CONSTANT_J_kgK * kelvin);
}

/**
 * Station pressure, hPa, from a sea-level pressure in the aviation sense (QNH), hPa:
 * p = p₀ ((QNH/p₀)ⁿ − L H/T₀)^(1/n), n = R L/g (ICAO Doc 7488; the exact inverse of the altimeter setting).
 */
export function stationPressureFromQnh(qnh_hPa: number, elevation_m: number): number {
  const n = 1 / PRESSURE_EXPONENT;
  const base =
    power(qnh_hPa / SEA_LEVEL_hPa, n) - (LAPSE_K_per_m * geopotential(elevation_m)) / SEA_LEVEL_K;
  return SEA_LEVEL_hPa * power(base, PRESSURE_EXPONENT);
}

/** Geopotential altitude, m, at which the standard atmosphere has this pressure, hPa. */
export function pressureAltitude(pressure_hPa: number): number {
  return (
    (SEA_LEVEL_K / LAPSE_K_per_m) * (1 - power(pressure_hPa / SEA_LEVEL_hPa, 1 / PRESSURE_EXPONENT))
  );
}

/** Geopotential altitude, m, at which the standard atmosphere has this density, kg/m³. */
export function densityAltitude(density_kg_m3: number): number {
  // Density falls as T^(exponent − 1), so the exponent is RL/(g − RL) = 0.234969.
  const ratio = density_kg_m3 / STANDARD_DENSITY_kg_m3;
  return (SEA_LEVEL_K / LAPSE_K_per_m) * (1 - power(ratio, 1 / (PRESSURE_EXPONENT - 1)));
}

/** Constants of CIPM-2007: Picard, Davis, Gläser, Fujii, Metrologia 45 (2008) 149–155, appendix A. */
const CIPM = {
  saturation: [1.2378847e-5, -1.9121316e-2, 33.93711047, -6.3431645e3],
  enhancement: [1.00062, 3.14e-8, 5.6e-7],
  a: [1.58123e-6, -2.9331e-8, 1.1043e-10],
  b: [5.707e-6, -2.051e-8],
  c: [1.9898e-4, -2.376e-6],
  d: 1.83e-11,
  e: -0.765e-8,
  /** Molar masses of dry air (400 ppm of CO₂) and of water, kg/mol, and the gas constant, J/(mol K). */
  Ma: 28.96546e-3,
  Mv: 18.01528e-3,
  R: 8.314472,
} as const;

/** Saturation pressure of water vapour, Pa, at a temperature, °C (CIPM-2007, eq. A1.1). */
export function saturationPressure(temperature_C: number): number {
  const T = temperature_C + ICE_POINT_K;
  const [A, B, C, D] = CIPM.saturation;
  return exp(A * T * T + B * T + C + D / T);
}

/**
 * Density of moist air, kg/m³ (CIPM-2007, eq. 1, at 400 ppm of CO₂).
 * Published for 600–1,100 hPa and 15–27 °C; outside it stays far within what a tune can feel.
 * @param pressure_hPa station pressure
 * @param temperature_C air temperature at the intake
 * @param humidity_pct relative humidity, 0–100
 */
export function moistAirDensity(
  pressure_hPa: number,
  temperature_C: number,
  humidity_pct: number,
): number {
  const p = pressure_hPa * 100;
  const t = temperature_C;
  const T = t + ICE_POINT_K;
  const [alpha, beta, gamma] = CIPM.enhancement;
  const f = alpha + beta * p + gamma * t * t;
  const xv = ((humidity_pct / 100) * f * saturationPressure(t)) / p;
  const [a0, a1, a2] = CIPM.a;
  const [b0, b1] = CIPM.b;
  const [c0, c1] = CIPM.c;
  const pT = p / T;
  const Z =
    1 -
    pT * (a0 + a1 * t + a2 * t * t + (b0 + b1 * t) * xv + (c0 + c1 * t) * xv * xv) +
    pT * pT * (CIPM.d + CIPM.e * xv * xv);
  return ((p * CIPM.Ma) / (Z * CIPM.R * T)) * (1 - xv * (1 - CIPM.Mv / CIPM.Ma));
}

/** What a person may know of the air at a site. A pressure is station pressure; QNH comes under its own name. */
export interface GivenAir {
  temperature_C?: number | undefined;
  pressure_hPa?: number | undefined;
  qnh_hPa?: number | undefined;
  humidity_pct?: number | undefined;
}

export type AssumedAir = "temperature" | "pressure" | "humidity";

/** The air at a site, complete, with what had to be assumed and what that costs. */
export interface Air {
  density_kg_m3: number;
  density_ratio: number;
  /** Station pressure. */
  pressure_hPa: number;
  temperature_C: number;
  humidity_pct: number;
  /** Geometric elevation at which the standard atmosphere has this density. */
  density_altitude_m: number;
  assumed: AssumedAir[];
  /** Standard deviation of ln density that the assumptions and the elevation's uncertainty bring. */
  ln_density_sd: number;
}

/** Our own working values for what is not given; see {@link airAt}. */
const UNKNOWN_TEMPERATURE_SD_K = 10;
const UNKNOWN_HUMIDITY_pct = 50;
const UNKNOWN_HUMIDITY_SD_pct = 25;
/** Weather moves station pressure by about this share; standard column against real column adds more, higher up. */
const WEATHER_PRESSURE_SD = 0.008;
const COLUMN_PRESSURE_SD_per_km = 0.005;
/** d ln p / dz of the standard atmosphere near the ground, 1/m. */
const PRESSURE_GRADIENT_per_m = 1.2e-4;

/**
 * The air at an elevation from what is given, the standard atmosphere for the rest.
 * Nothing given: the dry standard atmosphere itself. Temperature or pressure given but no humidity: 50 %.
 * `ln_density_sd` adds in squares: 10 K for an unknown night temperature, 0.8 % weather plus 0.5 % per km
 * for an unknown pressure, 25 points of humidity, and the elevation's own uncertainty. With a QNH the weather is
 * known, the column and the elevation are not.
 * @param elevation_m geometric, −500…6,000
 * @param elevation_sd_m standard deviation of that elevation
 * @throws RangeError naming the field when a number is not finite or both pressures are given
 */
export function airAt(elevation_m: number, given: GivenAir = {}, elevation_sd_m = 0): Air {
  requireFinite({ elevation_m, elevation_sd_m, ...given });
  if (given.pressure_hPa !== undefined && given.qnh_hPa !== undefined) {
    throw new RangeError("pressure_hPa and qnh_hPa: give one, station pressure or QNH, not both.");
  }
  const { temperature_C, pressure_hPa, assumed } = fillIn(elevation_m, given);
  const standard = assumed.includes("temperature") && assumed.includes("pressure");
  const humidity_pct = given.humidity_pct ?? (standard ? 0 : UNKNOWN_HUMIDITY_pct);
  const density_kg_m3 =
    standard && humidity_pct === 0
      ? standardDensity(elevation_m)
      : moistAirDensity(pressure_hPa, temperature_C, humidity_pct);
  return {
    density_kg_m3,
    density_ratio: density_kg_m3 / STANDARD_DENSITY_kg_m3,
    pressure_hPa,
    temperature_C,
    humidity_pct,
    density_altitude_m: geometric(densityAltitude(density_kg_m3)),
    assumed,
    ln_density_sd: lnDensitySd(
      { elevation_m, elevation_sd_m, temperature_C, pressure_hPa },
      assumed,
      given.qnh_hPa !== undefined,
    ),
  };
}

function fillIn(elevation_m: number, given: GivenAir) {
  const assumed: AssumedAir[] = [];
  if (given.temperature_C === undefined) assumed.push("temperature");
  if (given.pressure_hPa === undefined && given.qnh_hPa === undefined) assumed.push("pressure");
  if (given.humidity_pct === undefined) assumed.push("humidity");
  const pressure_hPa =
    given.pressure_hPa ??
    (given.qnh_hPa === undefined
      ? standardPressure(elevation_m)
      : stationPressureFromQnh(given.qnh_hPa, elevation_m));
  return {
    temperature_C: given.temperature_C ?? standardTemperature(elevation_m),
    pressure_hPa,
    assumed,
  };
}

function lnDensitySd(
  at: { elevation_m: number; elevation_sd_m: number; temperature_C: number; pressure_hPa: number },
  assumed: readonly AssumedAir[],
  reduced: boolean,
): number {
  let variance = 0;
  if (assumed.includes("temperature")) {
    variance += (UNKNOWN_TEMPERATURE_SD_K / (at.temperature_C + ICE_POINT_K)) ** 2;
  }
  if (assumed.includes("pressure")) variance += WEATHER_PRESSURE_SD ** 2;
  // A QNH brings the weather, but is reduced through the standard column by the stated elevation all the same.
  if (assumed.includes("pressure") || reduced) {
    variance += ((COLUMN_PRESSURE_SD_per_km * Math.max(0, at.elevation_m)) / 1000) ** 2;
    variance += (PRESSURE_GRADIENT_per_m * at.elevation_sd_m) ** 2;
  }
  if (assumed.includes("humidity")) {
    const saturated = (0.378 * saturationPressure(at.temperature_C)) / (at.pressure_hPa * 100);
    variance += ((saturated * UNKNOWN_HUMIDITY_SD_pct) / 100) ** 2;
  }
  return Math.sqrt(variance);
}
