import { z } from "zod";
import type { FinalCo } from "../../model/co-reading.ts";
import { byEnd, exactly, num, pair } from "./quantities.ts";
import { safety } from "./safety.ts";

const cell = z.strictObject({
  cell: z
    .string()
    .describe(
      "H3, resolution 3 to 5: coarser where fewer than 5 contributors would show; 2 for those who tuned in several; 1 for several cells in one",
    ),
  lat: num,
  lon: num,
  tunes: num,
  contributors: num,
  elevation_m: num.describe("Mean of its tunes, to 100 m"),
  mixture_shift_pct: byEnd.describe("Median against the fit; plus is richer"),
  cells_within: num
    .optional()
    .describe(
      "It stands for so many cells, which /api/cells/{cell} names: the whole world is told in such where there are many. Contributors are counted once in each",
    ),
});

export type Cell = z.infer<typeof cell>;

export const cells = z.strictObject({
  parent: z.string(),
  cells: z.array(cell),
  demo: z.boolean(),
  safety,
});

export type CellsAnswer = z.infer<typeof cells>;

const finalCo = {
  co_ppm: num.nullable(),
  co_below_ppm: num.nullable().describe("The meter's floor where it showed nothing"),
} satisfies Record<keyof FinalCo, z.ZodType>;

/** One end of an accepted tune as it was set. */
const setEnd = z.strictObject({ pump_Hz: num, fan_rpm: num, ...finalCo });

export const cellTune = z.strictObject({
  heat_kW: num,
  elevation_m: num,
  temperature_C: num.nullable(),
  density_kg_m3: num,
  month: z.string().describe("2026-10; the year alone of contributors who tuned in several places"),
  low: setEnd,
  high: setEnd,
});

/** An accepted tune as its cell shows it: no finer in place and time than the open data, and of nobody. */
export type CellTune = z.infer<typeof cellTune>;

export const cellTunes = z.strictObject({
  cell: z.string(),
  tunes_total: num,
  elevation_range_m: pair,
  month_range: z.tuple([z.string(), z.string()]).meta(exactly(2)),
  tunes: z.array(cellTune).describe("Newest month first, at most 200"),
  demo: z.boolean(),
  safety,
});

export type CellTunesAnswer = z.infer<typeof cellTunes>;
