import { between, type Seeded } from "./draws.ts";

/**
 * Where and when people tune, and what the air really is there. The truth is computed apart from the atlas's own air:
 * hydrostatic column, ideal gas, Magnus's vapour pressure (its three constants from memory; a test holds the sum to
 * the atlas's CIPM-2007 within 0.15 %). Climate and travel are common practice, no source.
 */

const GRAVITY_OVER_R_K_per_m = 9.80665 / 287.05287;
const R_DRY_AIR = 287.05287;

export interface Climate {
  /** Mean night at sea level over the year, °C, and how far January is below it. */
  yearly_C: number;
  swing_K: number;
  /** How fast nights get colder with elevation. The standard atmosphere's 6.5 K/km is a mean of day and night. */
  lapse_K_per_km: number;
  /** Weather of the single night. */
  temperature_sd_K: number;
  pressure_sd_hPa: number;
}

export const drawClimate = (random: Seeded, colder_K: number): Climate => ({
  yearly_C: between(random, [5, 10]) - colder_K,
  swing_K: between(random, [5, 9]),
  lapse_K_per_km: between(random, [4.8, 6.2]),
  temperature_sd_K: between(random, [3, 6]),
  pressure_sd_hPa: between(random, [5, 10]),
});

export interface Night {
  elevation_m: number;
  temperature_C: number;
  pressure_hPa: number;
  humidity_pct: number;
  density_kg_m3: number;
  /** ln(density/1.225) */
  x: number;
  month: string;
}

/** Months people tune in: heaters run from autumn to spring, up high also in summer. */
const MONTHS = [1, 1, 2, 2, 3, 3, 4, 5, 7, 8, 9, 10, 10, 11, 11, 12, 12];
const MONTH_NAMES = Array.from({ length: 36 }, (_, i) => {
  const month = `${(i % 12) + 1}`.padStart(2, "0");
  return `${2024 + Math.floor(i / 12)}-${month}`;
});
const WARMTH = Array.from({ length: 12 }, (_, i) => -Math.cos((2 * Math.PI * i) / 12));

/** Station pressure, hPa, under a column that is `warmer_K` than standard: the hypsometric equation. */
export function columnPressure(sea_hPa: number, elevation_m: number, warmer_K: number): number {
  const mean_K = 288.15 - 0.00325 * elevation_m + warmer_K;
  return sea_hPa * Math.exp((-GRAVITY_OVER_R_K_per_m * elevation_m) / mean_K);
}

/** Vapour pressure, hPa, over water. */
const vapour = (temperature_C: number, humidity_pct: number): number =>
  (humidity_pct / 100) * 6.112 * Math.exp((17.62 * temperature_C) / (243.12 + temperature_C));

/** Density of moist air, kg/m³, by the ideal gas. */
export function trueDensity(pressure_hPa: number, temperature_C: number, humidity_pct: number) {
  const dry_hPa = pressure_hPa - 0.378 * vapour(temperature_C, humidity_pct);
  return (dry_hPa * 100) / (R_DRY_AIR * (temperature_C + 273.15));
}

export const anyMonth = (random: Seeded): number =>
  12 * Math.floor(random.uniform() * 3) +
  ((MONTHS[Math.floor(random.uniform() * MONTHS.length)] ?? 1) - 1);

/** Most nights are humid; the driest are those up high. */
export const nightHumidity = (random: Seeded, elevation_m: number, humid: boolean): number => {
  const driest = humid ? 85 : 40;
  return driest + (100 - driest) * Math.sqrt(random.uniform()) * (1 - elevation_m / 20_000);
};

/** One night at an elevation. */
export function night(
  random: Seeded,
  climate: Climate,
  elevation_m: number,
  monthIndex: number,
  humid: boolean,
): Night {
  const season_K = climate.swing_K * (WARMTH[monthIndex % 12] ?? 0);
  const usual_C = climate.yearly_C + season_K - (climate.lapse_K_per_km * elevation_m) / 1000;
  const drawn_C = usual_C + climate.temperature_sd_K * random.normal();
  const temperature_C = Math.min(32, Math.max(-48, drawn_C));
  const aboveStandard_K = temperature_C - (15 - 0.0065 * elevation_m);
  const sea_hPa = 1014 + climate.pressure_sd_hPa * random.normal();
  // The ground cools more than the air above it, so the column differs from standard by half.
  const pressure_hPa = columnPressure(sea_hPa, elevation_m, aboveStandard_K / 2);
  const humidity_pct = nightHumidity(random, elevation_m, humid);
  return nightOf(elevation_m, temperature_C, pressure_hPa, humidity_pct, monthIndex);
}

function nightOf(
  elevation_m: number,
  temperature_C: number,
  pressure_hPa: number,
  humidity_pct: number,
  monthIndex: number,
): Night {
  const density_kg_m3 = trueDensity(pressure_hPa, temperature_C, humidity_pct);
  const x = Math.log(density_kg_m3 / 1.225);
  const month = MONTH_NAMES[monthIndex] ?? "2024-01";
  return {
    elevation_m,
    temperature_C,
    pressure_hPa,
    humidity_pct,
    density_kg_m3,
    x,
    month,
  };
}

/** A night of this climate whose air has exactly this x: the weather is drawn, the elevation follows from it. */
export function nightAt(random: Seeded, climate: Climate, x: number): Night {
  const monthIndex = anyMonth(random);
  const sea_hPa = 1014 + climate.pressure_sd_hPa * random.normal();
  const weather_K = climate.temperature_sd_K * random.normal();
  const humidity_pct = 60 + 40 * random.uniform();
  const season_K = climate.swing_K * (WARMTH[monthIndex % 12] ?? 0);
  const sea_C = climate.yearly_C + season_K + weather_K;
  let elevation_m = 1000;
  let temperature_C = 0;
  let pressure_hPa = 900;
  let left = 0;
  for (let i = 0; i < 5; i++) {
    elevation_m = Math.max(0, elevation_m - left * 10_000);
    temperature_C = sea_C - (climate.lapse_K_per_km * elevation_m) / 1000;
    const aboveStandard_K = temperature_C - (15 - 0.0065 * elevation_m);
    pressure_hPa = columnPressure(sea_hPa, elevation_m, aboveStandard_K / 2);
    left = x - Math.log(trueDensity(pressure_hPa, temperature_C, humidity_pct) / 1.225);
  }
  // Where this season's air at sea level is not dense enough, the night was colder.
  for (let i = 0; i < 3; i++) {
    left = x - Math.log(trueDensity(pressure_hPa, temperature_C, humidity_pct) / 1.225);
    temperature_C = (temperature_C + 273.15) * Math.exp(-left) - 273.15;
  }
  const drawn = nightOf(elevation_m, temperature_C, pressure_hPa, humidity_pct, monthIndex);
  return { ...drawn, density_kg_m3: 1.225 * Math.exp(x), x };
}
