import fc from "fast-check";
import { expect, test } from "vitest";
import { ENDS } from "../../../model/end.ts";
import { settablePump } from "../../../model/rounding.ts";
import { oneTune, tuneKeptFrom } from "../../../model/trip/one-tune.ts";
import { roomOf, shiftAt, WORKING_WINDOW } from "../../../model/trip/window.ts";
import { allRates_Hz, bestRates, standsAt, sure, trips, windows, worstOf } from "./random-trips.ts";

const WIDE = { rich_pct: 100, lean_pct: 90 };

test("worked by hand: 1.0 and 1.5 Hz expected; 1.2 Hz is 20 % rich at the one and 20 % lean at the other", () => {
  const { low } = oneTune(sure({ low: [1, 1.5, 1.2], high: [4, 4, 4] }), WIDE);
  expect(low).toEqual({ pump_Hz: 1.2, shifts_pct: [20, -20, 0] });
});

test("worked by hand: the least worst shift leaves the window on its rich side, another tune does not", () => {
  // 0.96 and 1.25 Hz: 1.1 is 15 % rich and 12 % lean; 1.0 is 4 % rich and 20 % lean, within 12 and 25.
  const one = oneTune(sure({ low: [0.96, 1.25], high: [4, 4] }), WORKING_WINDOW);
  expect(one.low).toEqual({ pump_Hz: 1, shifts_pct: [4, -20] });
  expect(one.edge).toEqual({
    ...{ end: "low", stop: 1, shift_pct: -20, unsure_pct: 0 },
    ...{ room_pct: 5, standing: "roomy" },
  });
});

test("a tune with room comes before one at the window's very edge, though it shifts more", () => {
  // 3.93 and 4.46 Hz: 4.2 is 7 % rich and 6 % lean, which is the least; 4.1 is 4 % rich and 8 % lean.
  const expected = sure({ low: [1, 1], high: [3.93, 4.46] });
  expect(oneTune(expected, WORKING_WINDOW).high).toEqual({ pump_Hz: 4.2, shifts_pct: [7, -6] });
  const { high, edge } = oneTune(expected, { rich_pct: 7, lean_pct: 25 });
  expect(high).toEqual({ pump_Hz: 4.1, shifts_pct: [4, -8] });
  expect(edge).toMatchObject({ end: "high", shift_pct: 4, room_pct: 3, standing: "roomy" });
  const only = oneTune(expected, { rich_pct: 7, lean_pct: 7 });
  expect(only.high.pump_Hz).toBe(4.2);
  expect(only.edge).toMatchObject({ end: "high", shift_pct: 7, room_pct: 0, standing: "tight" });
});

test("of all that can be set none stands better in the window, and none that stands as well shifts less", () => {
  fc.assert(
    fc.property(trips(8), windows, (expected, window) => {
      const one = oneTune(expected, window);
      for (const end of ENDS) {
        const best = bestRates(allRates_Hz(), expected[end], window);
        const least = Math.min(...best.map(({ worst_pct }) => worst_pct));
        expect(best.map(({ pump_Hz }) => pump_Hz)).toContain(one[end].pump_Hz);
        expect(worstOf(one[end].pump_Hz, expected[end])).toBeLessThan(least + 1e-5);
      }
    }),
    { numRuns: 150 },
  );
});

test("a stop alone, or stops alike, have the start rate that is shown there, tight or not", () => {
  // 0.753 Hz: 0.8 is 6 % rich, nearer to the edge than the 9 % that are unsure; 0.7 would have more room.
  const at = { pump_Hz: 0.753, unsure_pct: 9 };
  const high = { pump_Hz: 2.8, unsure_pct: 9 };
  for (const stops of [1, 3]) {
    const expected = { low: Array(stops).fill(at), high: Array(stops).fill(high) };
    const { low, edge } = oneTune(expected, WORKING_WINDOW);
    expect(low.pump_Hz).toBe(settablePump(0.753));
    expect(edge).toMatchObject({ end: "low", shift_pct: 6, room_pct: 6, standing: "tight" });
  }
});

test("verdict and figures are one: what is said of the edge follows from the very shifts that are shown", () => {
  fc.assert(
    fc.property(trips(8), windows, (expected, window) => {
      const { edge, ...ends } = oneTune(expected, window);
      const shown = ENDS.flatMap((end) => ends[end].shifts_pct);
      for (const shift of shown) expect(Number.isInteger(shift)).toBe(true);
      const outside = shown.some((s) => s > window.rich_pct || s < -window.lean_pct);
      expect(edge.standing === "beyond").toBe(outside);
      expect(ends[edge.end].shifts_pct[edge.stop]).toBe(edge.shift_pct);
      expect(edge.room_pct).toBeCloseTo(roomOf(edge.shift_pct, window), 6);
      const stands = ENDS.map((end) => standsAt(ends[end].pump_Hz, expected[end], window));
      if (edge.standing === "roomy") expect(stands).toEqual(["roomy", "roomy"]);
      if (edge.standing === "tight") expect(stands).toContain("tight");
    }),
  );
});

test("room that is smaller than what is unsure there is tight, and so are less than 3 %", () => {
  const at = (pump_Hz: number, unsure_pct: number) => [{ pump_Hz, unsure_pct }];
  const window = { rich_pct: 10, lean_pct: 10 };
  const high = at(4, 0);
  expect(oneTune({ low: at(1, 9), high }, window).edge.standing).toBe("roomy");
  expect(oneTune({ low: at(1, 11), high }, window).edge).toMatchObject({
    ...{ end: "low", shift_pct: 0, unsure_pct: 11, room_pct: 10, standing: "tight" },
  });
  expect(oneTune({ low: at(1, 0), high }, { rich_pct: 2, lean_pct: 10 }).edge.standing).toBe(
    "tight",
  );
});

test("where the pump's steps are coarser than the window, the nearest step is taken and said to be outside", () => {
  const { low, edge } = oneTune(sure({ low: [0.85], high: [4] }), { rich_pct: 3, lean_pct: 3 });
  expect(low).toEqual({ pump_Hz: 0.8, shifts_pct: [-6] });
  expect(edge).toMatchObject({ end: "low", room_pct: -3, standing: "beyond" });
});

test("dust in what is expected changes no tune, on a half step least of all", () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 12, max: 40 }), { minLength: 1, maxLength: 5 }),
      fc.double({ min: -4e-10, max: 4e-10, noNaN: true }),
      windows,
      (halves, off, window) => {
        const rates = halves.map((n) => n * 0.05);
        const dusty = rates.map((rate, i) => rate + (i % 2 ? off : -off));
        const high = rates.map(() => 4);
        const clean = oneTune(sure({ low: rates, high }), window);
        expect(oneTune(sure({ low: dusty, high }), window)).toEqual(clean);
      },
    ),
  );
});

test("a stop's own tune is what can be set there, kept at all others", () => {
  const rates = sure({ low: [1, 1.25, 0.8], high: [4, 5, 4] });
  expect(tuneKeptFrom(rates, 0).low).toEqual({
    pump_Hz: 1,
    shifts_pct: [0, -20, 25],
  });
  // 1.25 lies at half a step: the leaner rate is set, which is 4 % lean at the stop itself.
  expect(tuneKeptFrom(rates, 1).low).toEqual({
    pump_Hz: 1.2,
    shifts_pct: [20, -4, 50],
  });
  expect(() => tuneKeptFrom(sure({ low: [1], high: [4] }), 1)).toThrow(RangeError);
});

test("a shift is shown and judged in whole percents, half of one away from 0", () => {
  const at = { pump_Hz: 1, unsure_pct: 0 };
  expect([1.124, 1.125, 0.885, 0.8751].map((rate) => shiftAt(rate, at))).toEqual([
    12, 13, -12, -12,
  ]);
});
