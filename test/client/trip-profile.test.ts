import fc from "fast-check";
import { expect, test } from "vitest";
import { type ColumnTexts, cutTo, layOut } from "../../client/trip/profile-layout.ts";
import { planShown, shownStill } from "../../client/trip/shown-plan.ts";
import { NEW_TRIP } from "../../client/trip/trip.ts";
import { planTrip } from "../../model/trip/trip.ts";
import { inventedFit } from "../model/invented-fit.ts";

/** Letters of one width. */
const widthOf = (text: string) => 7 * [...text].length;

const stops = fc.array(
  fc.record({
    elevation_m: fc.integer({ min: -400, max: 6000 }),
    low: fc.integer({ min: -60, max: 60 }),
    high: fc.integer({ min: -60, max: 60 }),
    nights: fc.constantFrom("", "3 nights"),
    rate: fc.constantFrom("0.9", "0.95", "12.125"),
  }),
  { minLength: 1, maxLength: 30 },
);
const windows = fc.record({
  rich_pct: fc.integer({ min: 0, max: 40 }),
  lean_pct: fc.integer({ min: 0, max: 50 }),
});
const widths = fc.integer({ min: 200, max: 1500 });

const textsOf = ({ nights, rate }: { nights: string; rate: string }): ColumnTexts => ({
  ...{ name: "A hut with a long name", rates: [rate, rate], elevation: "3,000 m" },
  ...{ night: "≈ −10 °C", nights, shift: ["12 %", "leaner"] },
});

function laidOut(
  all: { elevation_m: number; low: number; high: number; nights: string; rate: string }[],
  window: { rich_pct: number; lean_pct: number },
  width: number,
) {
  const shifts = { low: all.map(({ low }) => low), high: all.map(({ high }) => high) };
  const elevations_m = all.map(({ elevation_m }) => elevation_m);
  const texts = all.map(textsOf);
  const layout = layOut({ elevations_m, texts, shifts }, window, { width, several: true, widthOf });
  return { layout, shifts, elevations_m, texts };
}

test("a column each, wide enough for a finger and for its texts; the drawing fills its place and scrolls only where it must", () => {
  fc.assert(
    fc.property(stops, windows, widths, (all, window, width) => {
      const { layout, texts } = laidOut(all, window, width);
      expect(layout.column).toBeGreaterThanOrEqual(60);
      expect(layout.width).toBeGreaterThanOrEqual(width - 1e-9);
      expect(layout.width).toBeCloseTo(layout.column * all.length, 6);
      for (const { rates, elevation, night, nights, shift } of texts) {
        const rows = layout.beside ? [rates.join(" / ")] : rates;
        for (const text of [...rows, elevation, night, nights, ...shift])
          expect(widthOf(text)).toBeLessThan(layout.column);
      }
      // One below the other only where both beside each other would not fit.
      if (!layout.beside) {
        const both = Math.max(...texts.map(({ rates }) => widthOf(rates.join(" / "))));
        expect(1.3 * both + 6).toBeGreaterThan(width / all.length);
      }
    }),
  );
});

test("higher stands higher, richer above leaner, and no row of text lies on another or on the drawing", () => {
  fc.assert(
    fc.property(stops, windows, widths, (all, window, width) => {
      const { layout, shifts, elevations_m } = laidOut(all, window, width);
      const { points, shiftY, rows, windowY, height } = layout;
      const [first] = points;
      for (const [i, { y }] of points.entries()) {
        const higher = (elevations_m[i] as number) - (elevations_m[0] as number);
        expect(Math.sign((first?.y ?? 0) - y)).toBe(Math.sign(higher));
        // The elevation above the dot stands clear of the rates, and the dot of the night.
        expect(y - 9 - 13).toBeGreaterThanOrEqual(rows.below);
        expect(y + 4).toBeLessThan(rows.night - 11);
      }
      const [rich, lean] = windowY;
      expect(rich).toBeLessThanOrEqual(shiftY(0));
      expect(lean).toBeGreaterThanOrEqual(shiftY(0));
      for (const y of [...windowY, ...[...shifts.low, ...shifts.high].map(shiftY)]) {
        expect(y).toBeGreaterThan(rows.nights);
        expect(y).toBeLessThan(rows.size - 11);
      }
      const baselines = [rows.tunes, rows.name, rows.rates, rows.night, rows.size, rows.side];
      for (const [i, y] of baselines.slice(1).entries())
        expect(y - (baselines[i] as number)).toBeGreaterThanOrEqual(13);
      expect(rows.side).toBeLessThan(height);
    }),
  );
});

test("a name is cut to its column, and says that it was", () => {
  expect(cutTo("Hut", 21, widthOf)).toBe("Hut");
  expect(cutTo("High lake", 42, widthOf)).toBe("High…");
  expect(cutTo("🏔🏔🏔", 14, widthOf)).toBe("🏔…");
  expect(widthOf(cutTo("A very long name of a place", 60, widthOf))).toBeLessThanOrEqual(60);
});

test("what is set now is shown at its own fan speeds: as much more fuel on as much more air is the same mixture", () => {
  const stops = [
    { name: "Coast", elevation_m: 5, temperature_C: 10 },
    { name: "Pass", elevation_m: 3000, temperature_C: -10 },
  ];
  const trip = { ...NEW_TRIP, stops };
  const answer = planTrip(inventedFit(5, 12), trip);
  const { low, high } = answer.stops[0]?.start ?? {};
  if (!low || !high) throw new Error("No start at the first stop.");
  const times = (factor: number) => ({
    low: { pump_Hz: low.pump_Hz_exact * factor, fan_rpm: low.fan_rpm * factor },
    high: { pump_Hz: high.pump_Hz_exact * factor, fan_rpm: high.fan_rpm * factor },
  });
  const plan = planShown(answer, "now", trip, times(1));
  expect([plan.shifts.low[0], plan.shifts.high[0]]).toEqual([0, 0]);
  expect(plan.shifts.low[1]).toBeGreaterThan(5);
  expect(plan.edge).toMatchObject({ stop: 1 });
  const faster = planShown(answer, "now", trip, times(1.1));
  expect(faster.shifts).toEqual(plan.shifts);
  expect(faster.fans_rpm.low).toBeCloseTo(1.1 * low.fan_rpm, 9);
  // Chosen, and then another heater of which that is not known.
  expect(shownStill("now", answer, undefined)).toBe(answer.legs.length > 1 ? "fewest" : "one");
  expect(() => planShown(answer, "now", trip)).toThrow(/set now/);
});
