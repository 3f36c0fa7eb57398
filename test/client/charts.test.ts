import fc from "fast-check";
import { expect, test } from "vitest";
import { inWords } from "../../client/atlas/scaling/aside-sentence.tsx";
import { averageReachesBeyond } from "../../client/atlas/scaling/average-band.ts";
import {
  across,
  curveWithin,
  type Over,
  placesOf,
  scalingFrame,
} from "../../client/atlas/scaling/scaling-frame.ts";
import { figuresAt, roundTicks } from "../../client/ui/charts/axis-ticks.ts";
import { countBeyond, placeWithin, sideBeyond } from "../../client/ui/charts/frame.ts";
import { inTwoLines } from "../../client/ui/column-head.tsx";
import { format, UNITS } from "../../client/units.ts";
import { airAt } from "../../model/air.ts";
import { SAFETY } from "../../model/safety.ts";
import type { ScalingAnswer, ScalingCurvePoint, ScalingPoint } from "../../server/contract.ts";

const [METRES, FEET] = UNITS.elevation;

/** An invented curve: rate in proportion to density, bands of ±2, 12 and 18 %. */
const CURVE: ScalingCurvePoint[] = Array.from({ length: 41 }, (_, i) => {
  const elevation_m = 7000 - 225 * i;
  const { density_kg_m3 } = airAt(elevation_m);
  const rate = 0.5 * density_kg_m3;
  const band = (level: number, share: number) => ({
    level,
    lower: rate * (1 - share),
    upper: rate * (1 + share),
  });
  return {
    density_kg_m3,
    elevation_m,
    pump_Hz_per_krpm: rate,
    mean_band: band(0.95, 0.02),
    new_heater_bands: [band(0.8, 0.12), band(0.95, 0.18)],
  };
});

function tuneAt(elevation_m: number, status: ScalingPoint["status"], times = 1): ScalingPoint {
  const { density_kg_m3 } = airAt(elevation_m);
  const pump_Hz_per_krpm = 0.5 * density_kg_m3 * times;
  return {
    contributor: `${elevation_m}`,
    elevation_m,
    density_kg_m3,
    pump_Hz: 1.65 * pump_Hz_per_krpm,
    fan_rpm: 1650,
    pump_Hz_per_krpm,
    status,
    reason: null,
    aside: null,
  };
}

function scalingOf(...points: ScalingPoint[]): ScalingAnswer {
  return {
    heat_kW: 5,
    end: "low",
    fit: "invented",
    prior_only: false,
    demo: true,
    points,
    points_total: points.length,
    curve: CURVE,
    safety: SAFETY,
  };
}

test("held slips and rows set aside move no axis; every tune that counts is within", () => {
  const kept = [tuneAt(0, "kept"), tuneAt(2500, "kept", 1.1), tuneAt(4500, "kept", 0.9)];
  const slips = [
    tuneAt(10_000, "held", 2),
    tuneAt(10_100, "held", 2),
    tuneAt(1500, "held", 60),
    tuneAt(1500, "held", 0.1),
    tuneAt(3000, "rejected", 2.4),
  ];
  for (const over of ["density", "elevation"] as const) {
    for (const unit of [METRES, FEET]) {
      const without = scalingFrame(scalingOf(...kept), over, unit);
      expect(scalingFrame(scalingOf(...kept, ...slips), over, unit)).toEqual(without);
      const count = countBeyond(without, placesOf(scalingOf(...kept, ...slips), over, unit));
      expect(Object.values(count).reduce((sum, of) => sum + of)).toBe(slips.length);
      expect(count[over === "density" ? "start" : "end"]).toBe(2);
    }
  }
  const frame = scalingFrame(scalingOf(...kept, ...slips), "elevation", METRES);
  expect(frame.x[1]).toBeLessThan(6000);
});

test("an axis reaches as far as a tune that counts, with room beside it", () => {
  const high = tuneAt(5600, "kept");
  const { x } = scalingFrame(scalingOf(high), "elevation", METRES);
  expect(x[1]).toBeGreaterThan(5600);
  expect(x[1]).toBeLessThan(5800);
});

test("what lies beyond is drawn at the edge that it lies beyond, all of its mark within; the rest at its place", () => {
  const span = fc
    .tuple(
      fc.double({ min: -1e4, max: 1e4, noNaN: true }),
      fc.double({ min: 1, max: 1e4, noNaN: true }),
    )
    .map(([from, length]) => [from, from + length] as const);
  const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(span, span, value, value, (xs, ys, x, y) => {
      const frame = { x: xs, y: ys };
      const drawn = placeWithin(frame, { x, y });
      expect(sideBeyond(frame, drawn)).toBe(null);
      if (sideBeyond(frame, { x, y }) === null) expect(drawn).toEqual({ x, y });
      else {
        const fromEdge = [drawn.x - xs[0], xs[1] - drawn.x, drawn.y - ys[0], ys[1] - drawn.y];
        const lengths = [xs[1] - xs[0], xs[1] - xs[0], ys[1] - ys[0], ys[1] - ys[0]];
        const at = { start: 0, end: 1, bottom: 2, top: 3 }[sideBeyond(frame, { x, y }) ?? "top"];
        expect((fromEdge[at] as number) / (lengths[at] as number)).toBeCloseTo(0.015, 6);
      }
    }),
  );
});

test.each<[Over, readonly [number, number]]>([
  ["density", [0.7, 1.2]],
  ["elevation", [-300, 5200]],
])("over %s the curve is drawn from edge to edge, and lies on itself there", (over, span) => {
  const x = across(over, METRES);
  const drawn = curveWithin(CURVE, x, span);
  expect(x(drawn[0] as ScalingCurvePoint)).toBeCloseTo(span[0], 9);
  expect(x(drawn.at(-1) as ScalingCurvePoint)).toBeCloseTo(span[1], 9);
  for (const { density_kg_m3, pump_Hz_per_krpm, new_heater_bands } of drawn) {
    expect(pump_Hz_per_krpm / (0.5 * density_kg_m3)).toBeCloseTo(1, 6);
    expect(new_heater_bands[1]?.upper).toBeCloseTo(1.18 * pump_Hz_per_krpm, 6);
  }
});

test("ticks are round, within their axis and no more than asked for; their figures tell them apart", () => {
  expect(roundTicks(0.7, 1.4, 8)).toEqual([0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.4]);
  expect(roundTicks(-300, 5200, 4)).toEqual([0, 2000, 4000]);
  expect([0.1, 0.25].map(figuresAt([0.1, 0.25]))).toEqual([format(0.1, 2), format(0.25, 2)]);
  fc.assert(
    fc.property(
      fc.double({ min: -1e4, max: 1e4, noNaN: true }),
      fc.double({ min: 0.05, max: 1e5, noNaN: true }),
      fc.integer({ min: 2, max: 20 }),
      (from, length, most) => {
        const ticks = roundTicks(from, from + length, most);
        expect(ticks.length).toBeLessThanOrEqual(most + 1);
        expect(ticks.length).toBeGreaterThanOrEqual(Math.floor(most / 2.5) - 1);
        for (const tick of ticks) {
          expect(tick).toBeGreaterThanOrEqual(from - 1e-6 * length);
          expect(tick).toBeLessThanOrEqual(from + length * (1 + 1e-6));
        }
        expect(new Set(ticks.map(figuresAt(ticks))).size).toBe(ticks.length);
      },
    ),
  );
});

test("the average's band is drawn filled only where it hides nothing of the band of most heaters", () => {
  const most = { lower: 0.8, upper: 1.2 };
  expect(averageReachesBeyond({ lower: 0.95, upper: 1.05 }, most)).toBe(false);
  expect(averageReachesBeyond(most, most)).toBe(false);
  expect(averageReachesBeyond({ lower: 0.7, upper: 1.1 }, most)).toBe(true);
  expect(averageReachesBeyond({ lower: 0.9, upper: 1.3 }, most)).toBe(true);
});

test("a column's head takes two lines at most, as alike as its words allow, and is heard whole", () => {
  expect(inTwoLines("Elevation")).toEqual(["Elevation"]);
  expect(inTwoLines("Pump, Hz")).toEqual(["Pump, Hz"]);
  expect(inTwoLines("Of those by hand, same heater, %")).toEqual([
    "Of those by hand, ",
    "same heater, %",
  ]);
  fc.assert(
    fc.property(fc.array(fc.stringMatching(/^[a-z,]{1,12}$/), { minLength: 1 }), (words) => {
      const lines = inTwoLines(words.join(" "));
      expect(lines.length).toBeLessThanOrEqual(2);
      expect(lines.join("")).toBe(words.join(" "));
    }),
  );
});

test("a reason is said by its code with its figures; one that is unknown or lacks a figure is not", () => {
  const figures = {
    off_pct: -33.4,
    others: 196,
    density_kg_m3: 0.788,
    pump_Hz_per_krpm: 0.299,
    average_Hz_per_krpm: 0.448,
  };
  const said = inWords({ code: "far_leaner", figures });
  for (const figure of ["33 %", "196", format(0.299, 3), format(0.448, 3)]) {
    expect(said).toContain(figure);
  }
  expect(said).not.toMatch(/[-−]/);
  const { others: _, ...lacking } = figures;
  expect(inWords({ code: "far_leaner", figures: lacking })).toBe(null);
  expect(inWords({ code: "of_another_time", figures })).toBe(null);
  expect(inWords({ code: "constructor", figures })).toBe(null);
});
