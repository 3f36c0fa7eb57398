import { standardDensity } from "../../model/air.ts";
import type { FitRow } from "../../model/fit/row.ts";
import { lnRatio } from "./airs.ts";
import { crowd, rowOf, type SimulatedRow, someMonth, USUAL } from "./crowd.ts";
import { FIXED, type Population, type Seeded, trueMean } from "./population.ts";

/** So many of another kind make up a share of all. */
const toMake = (share: number, others: number) => Math.round((others * share) / (1 - share));
const contributorsOf = (rows: readonly FitRow[]) => new Set(rows.map((r) => r.contributor)).size;

/**
 * Adds crews who found their mixture by the sea and carry it everywhere. A row of theirs is wrong where that is off by
 * more than the spread between heaters: near sea level it is as good as any.
 */
export function withLazy(
  random: Seeded,
  population: Population,
  rows: readonly SimulatedRow[],
  share: number,
): SimulatedRow[] {
  const crews = toMake(share, contributorsOf(rows));
  const never = { ...population, slope: 0, slope_sd: 0 };
  const theirs = crowd(random, never, crews, { ...USUAL, tunes: "several" }, { name: "lazy" });
  const wrong = (row: SimulatedRow) =>
    Math.abs(population.slope * lnRatio(standardDensity(row.elevation_m) * row.night)) >
    population.between;
  return [...rows, ...theirs.map((row) => ({ ...row, honest: !wrong(row) }))];
}

/** How contributors lie who agree on one lie. */
export interface Lie {
  /** Share of all contributors. */
  share: number;
  /** What they state against the true pump rate. */
  times: number;
  /** All at one place of that elevation, or each at a place of its own. */
  at_m: number | "high places" | "the sea" | "anywhere";
  /** One row each; two high ones; or a true one by the sea and a false one up high. */
  rows?: "one" | "two high" | "true and false";
}

const PLACES_m = { "high places": [2500, 4500], "the sea": [0, 500], anywhere: [0, 4500] } as const;
const PLACES = 400;
/** They agree to 3 %. */
const AGREE = 0.03;
/** Who lies from one place does so at one time; who takes the trouble to spread out picks months too. */
const ONE_MONTH = "2026-10";

/** Adds invented contributors who agree on one lie. */
export function withFakes<Row extends FitRow>(
  random: Seeded,
  population: Population,
  rows: readonly Row[],
  { share, times, at_m, rows: told = "one" }: Lie,
): (Row | SimulatedRow)[] {
  const fakes = toMake(share, contributorsOf(rows));
  const say = (fake: number, k: number, elevation_m: number, cell: string, lie: number) => {
    const density_kg_m3 = standardDensity(elevation_m);
    const y =
      trueMean(population, lnRatio(density_kg_m3)) + Math.log(lie) + AGREE * random.normal();
    const site = { cell, elevation_m };
    const stated = { density_kg_m3 };
    const contributor = `fake${fake}`;
    const month = typeof at_m === "number" ? ONE_MONTH : someMonth(random);
    return rowOf({ contributor, k, site, month, night: 1, y, stated, honest: lie === 1 });
  };
  const lie = (fake: number, k: number) => {
    if (typeof at_m === "number") return say(fake, k, at_m, "one place", times);
    const [lowest, highest] = PLACES_m[at_m];
    const elevation_m = lowest + (highest - lowest) * random.uniform();
    return say(fake, k, elevation_m, `lie ${Math.floor(PLACES * random.uniform())}`, times);
  };
  const lies = Array.from({ length: fakes }, (_, fake) => {
    if (told === "one") return [lie(fake, 0)];
    if (told === "two high") return [lie(fake, 0), lie(fake, 1)];
    const low = say(fake, 0, 500 * random.uniform(), `low ${fake}`, 1);
    return [low, lie(fake, 1)];
  });
  return [...rows, ...lies.flat()];
}

/** Adds one key that floods: so large a share of all rows, all from 4,000 m, all 1.6 times the true pump rate. */
export function withFlood(
  random: Seeded,
  rows: readonly SimulatedRow[],
  share: number,
  population: Population = FIXED,
): SimulatedRow[] {
  const site = { cell: "one place", elevation_m: 4000 };
  const density_kg_m3 = standardDensity(site.elevation_m);
  const lie = trueMean(population, lnRatio(density_kg_m3)) + Math.log(1.6);
  const flood = Array.from({ length: toMake(share, rows.length) }, (_, k) => {
    const y = lie + AGREE * random.normal();
    const stated = { density_kg_m3 };
    const contributor = "flood";
    return rowOf({ contributor, k, site, month: ONE_MONTH, night: 1, y, stated, honest: false });
  });
  return [...rows, ...flood];
}
