import { describe, expect, test } from "vitest";
import { cardTable } from "../../../model/card/card-table.ts";
import { ENDS } from "../../../model/end.ts";
import { PUMP_STEP_Hz } from "../../../model/heater.ts";
import { settablePump } from "../../../model/rounding.ts";
import { startTune } from "../../../model/start.ts";
import type { OwnTune } from "../../../model/tune.ts";
import { EMPTY_ATLAS, inventedFit } from "../invented-fit.ts";

const FIT = inventedFit();
const HEATER = { heat_kW: 5, low_fan_rpm: 1700, high_fan_rpm: 4500, dose_uL: 22 };
const GRID = { elevations_m: [0, 1500, 3000, 4500], temperatures_C: [-30, -10, 10] };

describe("table of the card", () => {
  const table = cardTable(FIT, HEATER, GRID);

  test("every cell is the start tune of its elevation and night temperature at the owner's fan speeds", () => {
    for (const [i, elevation_m] of GRID.elevations_m.entries()) {
      for (const [j, temperature_C] of GRID.temperatures_C.entries()) {
        const tune = startTune(FIT, {
          heat_kW: 5,
          site: { elevation_m, elevation_sd_m: 0, elevation_source: "given" },
          air: { temperature_C },
          low_fan_rpm: 1700,
          high_fan_rpm: 4500,
        });
        for (const end of ENDS) {
          const cell = table[end].rows[i]?.cells[j];
          expect(cell?.pump_Hz).toBe(tune[end].pump_Hz);
          expect(cell?.pump_Hz_exact).toBe(tune[end].pump_Hz_exact);
          expect(cell?.extrapolated).toBe(tune.basis.extrapolated);
        }
      }
    }
  });

  test("a finer controller's card has its steps, and keeps the exact rates", () => {
    const fine = cardTable(FIT, { ...HEATER, step_Hz: 0.05 }, GRID);
    const cells = (of: typeof table) => ENDS.flatMap((end) => of[end].rows.flatMap((r) => r.cells));
    for (const [i, cell] of cells(fine).entries()) {
      expect(cell.pump_Hz).toBe(settablePump(cell.pump_Hz_exact, 0.05));
      expect(cell.pump_Hz_exact).toBe(cells(table)[i]?.pump_Hz_exact);
    }
    expect(cells(fine).some((cell, i) => cell.pump_Hz !== cells(table)[i]?.pump_Hz)).toBe(true);
  });

  test("own tunes that count are counted, one that cannot be is not", () => {
    const found = (pump_Hz: number) => ({
      site: { elevation_m: 600 },
      air: { temperature_C: 10 },
      low: { pump_Hz, fan_rpm: 1700, co_ppm: 14 },
      high: { pump_Hz: 4.4, fan_rpm: 4500, co_ppm: 9 },
    });
    const of = (own_tunes: OwnTune[]) => cardTable(FIT, { ...HEATER, own_tunes }, GRID).own_tunes;
    expect(table.own_tunes).toBe(0);
    expect(of([found(1.2)])).toBe(1);
    expect(of([found(1.2), found(1.25)])).toBe(2);
    // In pulses a minute.
    expect(of([{ ...found(1.2), low: { pump_Hz: 72, fan_rpm: 1700, co_ppm: 14 } }])).toBe(0);
  });

  test("rates fall with elevation and with warmth", () => {
    for (const end of ENDS) {
      const exact = table[end].rows.map(({ cells }) => cells.map((cell) => cell.pump_Hz_exact));
      for (const row of exact) expect(row).toEqual([...row].sort((a, b) => b - a));
      for (const j of GRID.temperatures_C.keys()) {
        const column = exact.map((row) => row[j]) as number[];
        expect(column).toEqual([...column].sort((a, b) => b - a));
      }
    }
  });

  test("the bands of a row hold the band of each of its cells", () => {
    for (const end of ENDS) {
      for (const [i, row] of table[end].rows.entries()) {
        for (const [l, { level, below_pct, above_pct }] of row.reach.entries()) {
          expect(level).toBe([0.8, 0.95][l]);
          for (const [j, cell] of row.cells.entries()) {
            const tune = startTune(FIT, {
              ...HEATER,
              site: {
                elevation_m: GRID.elevations_m[i] as number,
                elevation_sd_m: 0,
                elevation_source: "given",
              },
              air: { temperature_C: GRID.temperatures_C[j] as number },
            });
            const band = tune[end].new_heater_bands_Hz[l];
            const slack = 1e-12;
            expect(cell.pump_Hz * (1 - below_pct / 100)).toBeLessThanOrEqual(
              (band?.lower ?? 0) + slack,
            );
            expect(cell.pump_Hz * (1 + above_pct / 100)).toBeGreaterThanOrEqual(
              (band?.upper ?? 9) - slack,
            );
          }
        }
        const [inner, outer] = row.reach;
        expect(outer?.above_pct).toBeGreaterThan(inner?.above_pct ?? 0);
        // Against the figure as printed: no wider than the band of an unrounded start by more than the rounding.
        const coarsest = Math.min(...row.cells.map(({ pump_Hz }) => pump_Hz));
        expect(inner?.above_pct).toBeLessThan(20 + (100 * PUMP_STEP_Hz) / coarsest);
      }
    }
  });

  test("air beyond the crews' is told cell by cell", () => {
    expect(table.low.rows[0]?.cells[0]?.extrapolated).toBe(true);
    expect(table.low.rows[1]?.cells[1]?.extrapolated).toBe(false);
    expect(table.extrapolated).toBe(true);
    const narrow = { elevations_m: [500, 1500], temperatures_C: [-10, 10] };
    expect(cardTable(FIT, HEATER, narrow).extrapolated).toBe(false);
  });

  test("a dose adds what one pulse a second burns: 22 µL × 3,600 s", () => {
    expect(table.low.fuel_L_h_per_Hz).toBeCloseTo(0.0792, 10);
    const without = cardTable(FIT, { heat_kW: 5 }, GRID);
    expect(without.low.fuel_L_h_per_Hz).toBeUndefined();
    expect([without.low.fan_rpm, without.high.fan_rpm]).toEqual([1650, 4400]);
  });

  test("an empty atlas gives physics alone, says so, and is wide", () => {
    const empty = cardTable(EMPTY_ATLAS, HEATER, GRID);
    expect(empty.basis).toMatchObject({ prior_only: true, tunes: 0, fit: "prior" });
    const [, outer] = empty.low.rows[0]?.reach ?? [];
    expect(outer?.above_pct).toBeGreaterThan(40);
  });

  test("what cannot be used is refused by name", () => {
    expect(() => cardTable(FIT, HEATER, { ...GRID, elevations_m: [] })).toThrow(/elevations_m/);
    expect(() => cardTable(FIT, { ...HEATER, low_fan_rpm: -1 }, GRID)).toThrow(/low_fan_rpm/);
    expect(() => cardTable(FIT, HEATER, { ...GRID, temperatures_C: [Number.NaN] })).toThrow(
      /temperature_C/,
    );
  });
});
