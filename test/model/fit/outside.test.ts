import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { fitAtlas } from "../../../model/fit/fit.ts";
import type { FitRow } from "../../../model/fit/row.ts";

/** Figures published outside the project, through the atlas's own fit. */
const read = (file: string) => JSON.parse(readFileSync(`test/reference/${file}`, "utf8"));

test("Rosner's 54 values hold three outliers, and the fit sets aside those three", () => {
  // NIST/SEMATECH e-Handbook §1.3.5.17.3, Rosner (1983): 6.01, 5.42 and 5.34. As heaters in sea-level air that differ
  // by 11 % for each unit, which makes the others scatter as usual heaters do.
  const { values } = read("stats_outliers.json").rosnerGESD as { values: number[] };
  const rows = values.map(
    (value, row): FitRow => ({
      row,
      contributor: `c${row}`,
      heat_kW: 5,
      end: "low",
      density_kg_m3: 1.225,
      pump_Hz: 1.1 * Math.exp(0.11 * (value - 2.25)),
      fan_rpm: 1650,
    }),
  );
  const { rejected } = fitAtlas(rows);
  expect(rejected.map(({ row }) => values[row as number])).toEqual([5.34, 5.42, 6.01]);
});
