import fc from "fast-check";
import { expect, test } from "vitest";
import { layOut } from "../../client/on-site/chart-layout.ts";
import { format } from "../../client/units.ts";
import { pictureOf } from "../../model/sweep/picture.ts";
import type { SweepReading, SweepSetup } from "../../model/sweep/setup.ts";

/** Read at steady figures, one rate after the other. */
function sweepOf(
  read: readonly (readonly [pump_Hz: number, co_ppm: number])[],
  end: "low" | "high" = "low",
): { setup: SweepSetup; readings: SweepReading[] } {
  const [first] = read;
  const setup: SweepSetup = {
    end,
    present_Hz: first?.[0] ?? 1,
    suggested_Hz: first?.[0] ?? 1,
    bands_Hz: [{ level: 0.95, lower: 0.6, upper: 6 }],
  };
  const readings = read.map(([pump_Hz, co_ppm], i) => ({
    pump_Hz,
    co_ppm,
    still: true,
    set_s: 300 * i,
    time_s: 300 * i + 200,
  }));
  return { setup, readings };
}

function drawn(...[read, end]: Parameters<typeof sweepOf>) {
  const { setup, readings } = sweepOf(read, end);
  const picture = pictureOf(setup, readings);
  return { picture, ...layOut(picture, []) };
}

/** The line's height at a place, px: between its corners it is straight. */
function heightAt(line: string, x: number): number {
  const corners = line
    .slice(1)
    .split("L")
    .map((pair) => pair.split(" ").map(Number) as [number, number]);
  const after = Math.max(
    1,
    corners.findIndex(([there]) => there >= x - 0.1),
  );
  const [from, to] = [corners[after - 1], corners[after] ?? corners[after - 1]];
  if (!from || !to) throw new Error("a line has corners");
  const share = to[0] === from[0] ? 0 : (x - from[0]) / (to[0] - from[0]);
  return from[1] + share * (to[1] - from[1]);
}

/** A reading's disc has a radius of 5: the line is on it or touches it. */
const NEAR_px = 6;

const rates = (least: number, most: number) =>
  fc.uniqueArray(fc.integer({ min: least, max: most }), { minLength: 1, maxLength: 9 });
const swept = fc
  .tuple(fc.constantFrom<["low" | "high", number, number]>(["low", 7, 25], ["high", 25, 75]))
  .chain(([[end, least, most]]) =>
    rates(least, most).chain((steps) =>
      fc
        .array(fc.integer({ min: 3, max: 990 }), {
          minLength: steps.length,
          maxLength: steps.length,
        })
        .map((ppm) => ({
          end,
          read: steps.map((step, i) => [step / 10, ppm[i] as number] as const),
        })),
    ),
  );

test("no label of the pump rate's axis stands twice, and each is a rate that a controller has", () => {
  fc.assert(
    fc.property(swept, ({ read, end }) => {
      const { xTicks, xDecimals } = drawn(read, end);
      const labels = xTicks.map((tick) => format(tick, xDecimals));
      expect(labels.length).toBeGreaterThanOrEqual(2);
      expect(new Set(labels).size).toBe(labels.length);
      for (const [i, tick] of xTicks.entries()) {
        expect(Number(labels[i])).toBeCloseTo(tick, 9);
        expect(Math.abs(tick * 10 - Math.round(tick * 10))).toBeLessThan(1e-6);
      }
    }),
  );
});

test("the line passes through the readings, however steep they fall: 308, 171, 84, 34 ppm at 0.8, 0.9, 1.0, 1.1 Hz", () => {
  const steep = [
    [1.1, 34],
    [1, 84],
    [0.9, 171],
    [0.8, 308],
  ] as const;
  const passes = (...sweep: Parameters<typeof sweepOf>) => {
    const { picture, line, x, y } = drawn(...sweep);
    expect(picture.levels).toHaveLength(sweep[0].length);
    for (const { pump_Hz, ppm } of picture.levels) {
      expect(Math.abs(heightAt(line, x(pump_Hz)) - y(ppm))).toBeLessThan(NEAR_px);
    }
  };
  passes(steep);
  fc.assert(fc.property(swept, ({ read, end }) => passes(read, end)));
});

test("what was read twice at a rate lies on either side of the line", () => {
  const { picture, line, x, y } = drawn([
    [1, 48],
    [1.1, 29],
    [1, 55],
  ]);
  const at = picture.levels.filter(({ pump_Hz }) => pump_Hz === 1).map(({ ppm }) => y(ppm));
  expect(at).toHaveLength(2);
  const height = heightAt(line, x(1));
  expect(height).toBeGreaterThan(Math.min(...at));
  expect(height).toBeLessThan(Math.max(...at));
});
