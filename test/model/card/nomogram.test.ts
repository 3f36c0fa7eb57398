import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { airAt, standardPressure } from "../../../model/air.ts";
import { tuneAt } from "../../../model/card/card-table.ts";
import { type Nomogram, nomogram, type ScaleValue } from "../../../model/card/nomogram.ts";
import { rateTicks, type Tick } from "../../../model/card/rate-ticks.ts";
import { ENDS } from "../../../model/end.ts";
import type { StartTune } from "../../../model/start.ts";
import { EMPTY_ATLAS, INVENTED_RANGE, inventedFit } from "../invented-fit.ts";

const FIT = inventedFit();
const HEATER = { heat_kW: 5, low_fan_rpm: 1700, high_fan_rpm: 4500 };
const SIZE = { width: 70, height: 90, tick_gap: 1, label_gap: 4 };

const every = (from: number, to: number, step: number): ScaleValue[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => ({
    value: from + i * step,
    labelled: i % 2 === 0,
  }));
const GRID = { elevations_m: every(0, 4500, 250), temperatures_C: every(-30, 20, 5) };

/** What a person reads: a straight line through two ticks, and the third scale between its two nearest ticks. */
function read(drawing: Nomogram, end: "low" | "high", left: Tick, right: Tick): number {
  const share = drawing.x.rate / drawing.x.temperature;
  const y = left.y + (right.y - left.y) * share;
  const scale = drawing[end];
  const above = scale.findLastIndex((tick) => tick.y <= y);
  const i = Math.min(scale.length - 2, Math.max(0, above));
  const [a, b] = [scale[i] as Tick, scale[i + 1] as Tick];
  return a.value + ((b.value - a.value) * (y - a.y)) / (b.y - a.y);
}

describe("nomogram", () => {
  const drawing = nomogram(FIT, HEATER, GRID, SIZE);

  test("a straight-edge over any two ticks gives the start tune at both ends within the error it states", () => {
    // Between ticks the eye divides evenly where the scale is logarithmic: a hundredth of the step at most.
    const between = 0.1;
    expect(drawing.greatest_error_pct).toBeLessThan(0.15);
    for (const left of drawing.elevation) {
      for (const right of drawing.temperature) {
        const tune = tuneAt(FIT, HEATER, left.value, right.value);
        for (const end of ENDS) {
          const off = 100 * Math.abs(read(drawing, end, left, right) / tune[end].pump_Hz_exact - 1);
          expect(off).toBeLessThan(drawing.greatest_error_pct + between);
        }
      }
    }
  });

  test("for a heater with tunes of its own it gives that heater's rates, not the average one's", () => {
    const own = { pump_Hz: 1.4, fan_rpm: 1700, co_ppm: 14 };
    const own_tunes = [
      {
        site: { elevation_m: 600 },
        air: { temperature_C: 10 },
        low: own,
        high: { pump_Hz: 5, fan_rpm: 4500, co_ppm: 9 },
      },
    ];
    const mine = { ...HEATER, own_tunes };
    const drawn = nomogram(FIT, mine, GRID, SIZE);
    expect(drawn.greatest_error_pct).toBeLessThan(1);
    for (const left of drawn.elevation.filter((_, i) => i % 3 === 0)) {
      for (const right of drawn.temperature.filter((_, i) => i % 2 === 0)) {
        const [tune, average] = [mine, HEATER].map((heater) =>
          tuneAt(FIT, heater, left.value, right.value),
        ) as [StartTune, StartTune];
        for (const end of ENDS) {
          const rate = read(drawn, end, left, right);
          const off = 100 * Math.abs(rate / tune[end].pump_Hz_exact - 1);
          expect(off).toBeLessThan(drawn.greatest_error_pct + 0.1);
          expect(rate).toBeGreaterThan(1.05 * average[end].pump_Hz_exact);
        }
      }
    }
  });

  test("the stated error is reached, not guessed: it is the drawing's at a corner", () => {
    const corners = [0, 4500].flatMap((z) => [-30, 20].map((t) => [z, t] as const));
    const slope = FIT.groups.find((g) => g.end === "low")?.slope ?? 0;
    const [a, b, c, d] = corners.map(([z, t]) =>
      Math.log(airAt(z, { temperature_C: t }).density_kg_m3),
    ) as [number, number, number, number];
    // What is no sum of the two: a quarter of it lands in each corner.
    const stated = (100 * slope * Math.abs(a - b - c + d)) / 4;
    const high = FIT.groups.find((g) => g.end === "high")?.slope ?? 0;
    expect(drawing.greatest_error_pct).toBeCloseTo((stated * Math.max(slope, high)) / slope, 2);
  });

  test("in dry terms the scales are those of the formula: elevation by ln pressure, night by ln kelvin", () => {
    const y = (z: number) => drawing.elevation.find(({ value }) => value === z)?.y ?? Number.NaN;
    const share = (z: number) => (y(0) - y(z)) / (y(0) - y(4500));
    const byPressure = (z: number) =>
      Math.log(standardPressure(0) / standardPressure(z)) /
      Math.log(standardPressure(0) / standardPressure(4500));
    for (const z of [1000, 2500, 4000]) expect(share(z)).toBeCloseTo(byPressure(z), 3);
    const at = (t: number) => drawing.temperature.find(({ value }) => value === t)?.y ?? Number.NaN;
    const warmth = (at(-10) - at(-30)) / (at(20) - at(-30));
    expect(warmth).toBeCloseTo(Math.log(263.15 / 243.15) / Math.log(293.15 / 243.15), 1);
  });

  test("up is higher, warmer and slower; every scale keeps inside the drawing", () => {
    for (const scale of ["elevation", "temperature", "low", "high"] as const) {
      const ys = drawing[scale].map(({ y }) => y);
      const down = scale === "low" || scale === "high";
      expect(ys).toEqual([...ys].sort((a, b) => (down ? a - b : b - a)));
      expect(Math.min(...ys)).toBeGreaterThanOrEqual(-1e-9);
      expect(Math.max(...ys)).toBeLessThanOrEqual(SIZE.height + 1e-9);
    }
    expect(drawing.x.elevation).toBe(0);
    expect(drawing.x.rate).toBeGreaterThan(10);
    expect(drawing.x.temperature).toBe(SIZE.width);
  });

  test("the middle line tells how far the air has been tuned in", () => {
    const [from, to] = drawing.known ?? [0, 0];
    expect(from).toBeGreaterThan(0);
    expect(to).toBeGreaterThan(from);
    expect(to).toBeLessThan(SIZE.height);
    const [thinnest] = INVENTED_RANGE;
    const rate = 1.7 * Math.exp(FIT.groups[0]?.intercept ?? 0);
    const slowest = rate * (thinnest / 1.225) ** (FIT.groups[0]?.slope ?? 0);
    const inside = drawing.low.filter(({ y }) => y >= from && y <= to).map(({ value }) => value);
    expect(FIT.groups[0]?.end).toBe("low");
    expect(Math.min(...inside)).toBeGreaterThan(slowest * 0.98);
    expect(nomogram(EMPTY_ATLAS, HEATER, GRID, SIZE).known).toBe(null);
  });

  test("any range, any fan speed: the reading stays within 1 %, physics alone or a fit", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -400, max: 3000 }),
        fc.integer({ min: 500, max: 3000 }),
        fc.integer({ min: -45, max: 0 }),
        fc.integer({ min: 10, max: 45 }),
        fc.integer({ min: 800, max: 6000 }),
        fc.boolean(),
        (from, climb, coldest, warmer, fan, empty) => {
          const value = (v: number) => ({ value: v, labelled: true });
          const drawn = nomogram(
            empty ? EMPTY_ATLAS : FIT,
            { heat_kW: 5, high_fan_rpm: fan },
            {
              elevations_m: [value(from), value(from + climb)],
              temperatures_C: [value(coldest), value(coldest + warmer)],
            },
            SIZE,
          );
          expect(drawn.greatest_error_pct).toBeLessThan(1);
          expect(drawn.high.length).toBeGreaterThan(1);
        },
      ),
      { numRuns: 25 },
    );
  });

  test("a scale without extent is refused by name", () => {
    const one = { ...GRID, temperatures_C: [{ value: 0, labelled: true }] };
    expect(() => nomogram(FIT, HEATER, one, SIZE)).toThrow(/temperatures_C/);
  });
});

describe("ticks of the pump rates", () => {
  test("are round, keep their distance, and label a whole part of themselves", () => {
    const yOf = (rate: number) => 100 * Math.log(rate / 2);
    const ticks = rateTicks([2.03, 4.97], yOf, { tick_gap: 1, label_gap: 4 });
    expect(ticks[0]?.value).toBe(2.05);
    expect(ticks.at(-1)?.value).toBe(4.95);
    const gaps = (of: Tick[]) => of.slice(1).map(({ y }, i) => y - (of[i]?.y ?? 0));
    expect(Math.min(...gaps(ticks))).toBeGreaterThan(1);
    const labelled = ticks.filter((tick) => tick.labelled);
    expect(Math.min(...gaps(labelled))).toBeGreaterThan(3.9);
    expect(labelled.map(({ value }) => value).slice(0, 3)).toEqual([2.2, 2.4, 2.6]);
  });
});
