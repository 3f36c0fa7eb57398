import { standardDensity } from "../../model/air.ts";
import type { End } from "../../model/end.ts";
import type { FitRow } from "../../model/fit/row.ts";
import { lnRatio } from "./airs.ts";
import { heaterOf, type Population, type Seeded, tuned } from "./population.ts";

/** A row of which the truth is known. */
export interface SimulatedRow extends FitRow {
  ln_density_sd?: number;
  /** When it was tuned, year and month. */
  month: string;
  /** Whether it says what its heater's best tune was; a wrong row is one the fit had better set aside. */
  honest: boolean;
  elevation_m: number;
  /** Density of that night against the standard atmosphere's. */
  night: number;
}

/** How a crowd tunes and what it states. */
export interface Reporting {
  /** Tunes of one contributor: one; 1–3; 2–4; or 1–12, geometrically fewer. */
  tunes: "one" | "few" | "several" | "geometric";
  /** Standard deviation of the stated ln density. */
  density_sd: number;
  /** Share of rows whose temperature is unknown: their density is the standard atmosphere's. */
  no_temperature: number;
  /** Share of rows whose elevation is 300 m off (standard deviation). */
  vague_elevation: number;
  /** Share of tunes whose crew stops early, at a final CO of 30–150 ppm, as far from the best as such a CO means. */
  stops_early: number;
  /** Whether the CO is stated. */
  co_stated: boolean;
}

export const USUAL: Reporting = {
  tunes: "few",
  density_sd: 0.01,
  no_temperature: 0,
  vague_elevation: 0,
  stops_early: 0,
  co_stated: true,
};

/** Who the rows are of: a name that begins the contributors' names, a heat class, an end. */
export interface Whose {
  name?: string;
  heat_kW?: number;
  end?: End;
}

export const TARGET = { heat_kW: 5, end: "low" as End };

const NIGHT_SD_K = 10;
const ELEVATION_SD_m = 300;
/** What a row states of its ln density when it has no temperature, or a vague elevation. */
const LN_SD_NO_TEMPERATURE = 0.035;
const LN_SD_VAGUE_ELEVATION = 0.036;
/** One contributor in five is at home where others are. */
const CROWDED = 0.2;

interface Site {
  cell: string;
  elevation_m: number;
}

/**
 * Contributors who tune honestly: 55 % of sites below 500 m, the rest thinning out to 4,500 m, night temperatures
 * 10 K about the standard atmosphere's. The first tune is made at home, the others wherever they go.
 */
export function crowd(
  random: Seeded,
  population: Population,
  contributors: number,
  reporting: Reporting = USUAL,
  whose: Whose = {},
): SimulatedRow[] {
  const towns = Array.from({ length: 1 + Math.floor(contributors / 20) }, (_, i) => ({
    cell: `town ${i}`,
    elevation_m: someElevation(random),
  }));
  return Array.from({ length: contributors }, (_, c) => {
    const heater = heaterOf(random, population);
    return Array.from({ length: tunesOf(random, reporting.tunes) }, (_, k) => {
      const site = k === 0 ? homeOf(random, towns) : somewhere(random);
      const night = 288 / (288 + NIGHT_SD_K * random.normal());
      const x = lnRatio(standardDensity(site.elevation_m) * night);
      const { off, co_ppm } = finalCo(random, reporting);
      const y = tuned(random, population, heater, x) + off;
      const stated = statedAir(random, reporting, site.elevation_m, night);
      const contributor = `${whose.name ?? "c"}${c}`;
      return rowOf({
        contributor,
        k,
        site,
        month: someMonth(random),
        night,
        y,
        stated,
        whose,
        co_ppm,
      });
    });
  }).flat();
}

function homeOf(random: Seeded, towns: readonly Site[]): Site {
  if (random.uniform() >= CROWDED) return somewhere(random);
  return towns[Math.floor(towns.length * random.uniform() ** 2)] as Site;
}

function somewhere(random: Seeded): Site {
  return {
    elevation_m: someElevation(random),
    cell: `place ${Math.floor(1e6 * random.uniform())}`,
  };
}

function someElevation({ uniform }: Seeded): number {
  return uniform() < 0.55 ? 500 * uniform() : 500 + 4000 * uniform() * uniform();
}

/** One of 24 months. */
export function someMonth({ uniform }: Seeded): string {
  const month = Math.floor(24 * uniform());
  return `${2025 + Math.floor(month / 12)}-${String(1 + (month % 12)).padStart(2, "0")}`;
}

function tunesOf({ uniform }: Seeded, tunes: Reporting["tunes"]): number {
  if (tunes === "one") return 1;
  if (tunes === "several") return 2 + Math.floor(3 * uniform());
  if (tunes === "few") return 1 + Number(uniform() < 0.5) + Number(uniform() < 0.25);
  return Math.min(12, 1 + Math.floor(Math.log(1 - uniform()) / Math.log(0.6)));
}

/** CO twice the usual 30 ppm means a mixture about 10 % off, and so on by the square: common practice, no source. */
function finalCo(random: Seeded, { stops_early, co_stated }: Reporting) {
  if (stops_early === 0 || random.uniform() >= stops_early) return { off: 0 };
  const above = 4 * random.uniform();
  const off = 0.1 * Math.sqrt(above) * random.normal();
  return co_stated ? { off, co_ppm: 30 * (1 + above) } : { off };
}

interface Stated {
  density_kg_m3: number;
  ln_density_sd?: number;
  temperature_assumed?: boolean;
}

function statedAir(random: Seeded, r: Reporting, elevation_m: number, night: number): Stated {
  const small = Math.exp(r.density_sd * random.normal());
  if (r.no_temperature > 0 && random.uniform() < r.no_temperature) {
    const density_kg_m3 = standardDensity(elevation_m) * small;
    return { density_kg_m3, ln_density_sd: LN_SD_NO_TEMPERATURE, temperature_assumed: true };
  }
  if (r.vague_elevation > 0 && random.uniform() < r.vague_elevation) {
    const thought = Math.max(-400, elevation_m + ELEVATION_SD_m * random.normal());
    const density_kg_m3 = standardDensity(thought) * night * small;
    return { density_kg_m3, ln_density_sd: LN_SD_VAGUE_ELEVATION };
  }
  return { density_kg_m3: standardDensity(elevation_m) * night * small };
}

/** The row of one tune, k-th of its contributor. */
export function rowOf(of: {
  contributor: string;
  k: number;
  site: Site;
  month: string;
  night: number;
  y: number;
  stated: Stated;
  whose?: Whose;
  co_ppm?: number | undefined;
  honest?: boolean;
}): SimulatedRow {
  const { heat_kW, end } = { ...TARGET, ...of.whose };
  const fan_rpm = end === "low" ? 1650 : 4400;
  return {
    row: `${of.contributor} ${of.k} ${heat_kW} ${end}`,
    contributor: of.contributor,
    cell: of.site.cell,
    heat_kW,
    end,
    ...of.stated,
    month: of.month,
    pump_Hz: (fan_rpm / 1000) * Math.exp(of.y),
    fan_rpm,
    co_ppm: of.co_ppm,
    honest: of.honest ?? true,
    elevation_m: of.site.elevation_m,
    night: of.night,
  };
}
