import fc from "fast-check";
import { expect, test } from "vitest";
import { ENDS, type End } from "../../../model/end.ts";
import { settablePump } from "../../../model/rounding.ts";
import { fewestTunes, type Leg } from "../../../model/trip/fewest-tunes.ts";
import { type Expected, oneTune } from "../../../model/trip/one-tune.ts";
import { type ExpectedAt, type MixtureWindow, WORKING_WINDOW } from "../../../model/trip/window.ts";
import {
  allRates_Hz,
  bestRates,
  standsAt,
  steps,
  sure,
  trips,
  windows,
  worstOf,
} from "./random-trips.ts";

type Plan = { lasts: number[]; rank: number; worst_pct: number };

const RANKS = ["roomy", "tight", "beyond"];

const alike = (stops: readonly ExpectedAt[]) =>
  stops.every(({ pump_Hz }) => pump_Hz === stops[0]?.pump_Hz);

/** Rates that may serve a stop: within its window, or the nearest where the steps are too coarse for that. */
function servable(at: ExpectedAt, window: MixtureWindow, step_Hz: number): number[] {
  const within = allRates_Hz(step_Hz).filter((rate) => standsAt(rate, [at], window) !== "beyond");
  return within.length > 0 ? within : [settablePump(at.pump_Hz, step_Hz)];
}

/** The best rate for some stops of one end, by trying all; null when none serves them all. */
function best(stops: readonly ExpectedAt[], window: MixtureWindow, step_Hz: number) {
  const serving = stops
    .map((at) => servable(at, window, step_Hz))
    .reduce((a, b) => a.filter((rate) => b.includes(rate)));
  if (serving.length === 0) return null;
  return bestRates(serving, stops, window, step_Hz)
    .map(({ standing, worst_pct }) => ({
      // Nothing better can be had of one stop, or of stops alike, than their own start rate.
      rank: standing === "tight" && alike(stops) ? 0 : RANKS.indexOf(standing),
      worst: worst_pct,
    }))
    .reduce((a, b) => (b.worst < a.worst - 1e-5 ? b : a));
}

/** Shift at each stop, by end, of the tune that serves it, whole %. */
function shiftsAlong(legs: readonly Leg[]): Record<End, number[]> {
  return {
    low: legs.flatMap(({ tune }) => tune.low.shifts_pct),
    high: legs.flatMap(({ tune }) => tune.high.shifts_pct),
  };
}

/** Every way to cut the trip into stretches that each have a tune: all 2ⁿ⁻¹ tried. */
function everyPlan(expected: Expected, window: MixtureWindow, step_Hz: number): Plan[] {
  const n = expected.low.length;
  const plans: Plan[] = [];
  for (let cuts = 0; cuts < 2 ** (n - 1); cuts++) {
    const lasts = Array.from({ length: n }, (_, i) => i).filter(
      (i) => i === n - 1 || cuts & (1 << i),
    );
    const stretches = lasts.map((last, k) =>
      ENDS.map((end) =>
        best(expected[end].slice((lasts[k - 1] ?? -1) + 1, last + 1), window, step_Hz),
      ),
    );
    const all = stretches.flat();
    if (all.includes(null)) continue;
    const sure = all as NonNullable<ReturnType<typeof best>>[];
    plans.push({
      lasts,
      rank: Math.max(...sure.map(({ rank }) => rank)),
      worst_pct: Math.max(...sure.map(({ worst }) => worst)),
    });
  }
  return plans;
}

/** 35 % lean at one end with the change-over after stop 2, at the other after stop 3: the same but for the last digits. */
const ALIKE_BUT_FOR_DUST: [Expected, MixtureWindow, number] = [
  {
    low: [0.889, 1.537, 1, 0.8].map((pump_Hz) => ({ pump_Hz, unsure_pct: 1 })),
    high: [3.2004, 5.3795, 3.112, 0.8 * 3.5].map((pump_Hz) => ({ pump_Hz, unsure_pct: 1 })),
  },
  { rich_pct: 12, lean_pct: 35 },
  0.1,
];

test("as few as any plan; of those the best in the window, the least worst shift, the latest change-over: by brute force", () => {
  fc.assert(
    fc.property(trips(6), windows, steps, (expected, window, step_Hz) => {
      const legs = fewestTunes(expected, window, step_Hz);
      const plans = everyPlan(expected, window, step_Hz);
      const fewest = Math.min(...plans.map(({ lasts }) => lasts.length));
      expect(legs).toHaveLength(fewest);
      const few = plans.filter(({ lasts }) => lasts.length === fewest);
      const rank = Math.min(...few.map((plan) => plan.rank));
      for (const { first, last, tune } of legs) {
        for (const end of ENDS) {
          const stops = expected[end].slice(first, last + 1);
          const stands = RANKS.indexOf(standsAt(tune[end].pump_Hz, stops, window));
          if (!alike(stops)) expect(stands).toBeLessThanOrEqual(rank);
        }
      }
      const good = few.filter((plan) => plan.rank === rank);
      const least = Math.min(...good.map(({ worst_pct }) => worst_pct));
      const worst = Math.max(
        ...legs.flatMap(({ first, last, tune }) =>
          ENDS.map((end) => worstOf(tune[end].pump_Hz, expected[end].slice(first, last + 1))),
        ),
      );
      expect(worst).toBeCloseTo(least, 4);
      const latest = Math.max(
        ...good.filter((p) => p.worst_pct < least + 1e-9).map(({ lasts }) => lasts[0] as number),
      );
      expect(legs[0]?.last).toBeGreaterThanOrEqual(latest);
    }),
    { numRuns: 120, examples: [ALIKE_BUT_FOR_DUST] },
  );
});

test("legs follow one another, cover every stop once, and stay within the window wherever a rate can", () => {
  fc.assert(
    fc.property(trips(25), windows, (expected, window) => {
      const legs = fewestTunes(expected, window);
      let next = 0;
      for (const { first, last } of legs) {
        expect(first).toBe(next);
        next = last + 1;
      }
      expect(next).toBe(expected.low.length);
      const shifts = shiftsAlong(legs);
      const beyond = (end: End, stop: number) => {
        const shift = shifts[end][stop] as number;
        return shift > window.rich_pct || shift < -window.lean_pct;
      };
      for (const end of ENDS) {
        for (const [stop, at] of expected[end].entries()) {
          const possible = allRates_Hz().some((rate) => standsAt(rate, [at], window) !== "beyond");
          expect(beyond(end, stop)).toBe(!possible);
        }
      }
      for (const { first, last, tune } of legs) {
        const { end, stop, shift_pct, standing } = tune.edge;
        expect(stop).toBeGreaterThanOrEqual(first);
        expect(stop).toBeLessThanOrEqual(last);
        expect(shifts[end][stop]).toBe(shift_pct);
        if (standing === "beyond") expect(beyond(end, stop)).toBe(true);
      }
      expect(fewestTunes(expected, window)).toEqual(legs);
    }),
  );
});

test("one tune does exactly when the fewest is one, and then it is the same tune with the same figures", () => {
  fc.assert(
    fc.property(trips(6), windows, steps, (expected, window, step_Hz) => {
      const one = oneTune(expected, window, step_Hz);
      const legs = fewestTunes(expected, window, step_Hz);
      if (one.edge.standing !== "beyond") expect(legs).toHaveLength(1);
      if (legs.length === 1) expect(legs[0]?.tune).toEqual(one);
    }),
  );
});

test("tunes in a row are never the same tune: nobody is sent to change nothing", () => {
  fc.assert(
    fc.property(trips(12), windows, (expected, window) => {
      const legs = fewestTunes(expected, window);
      for (const [i, { tune }] of legs.slice(1).entries()) {
        const before = legs[i]?.tune;
        const same = ENDS.every((end) => before?.[end].pump_Hz === tune[end].pump_Hz);
        expect(same).toBe(false);
      }
    }),
  );
});

test("worked by hand: a valley, two passes, a valley in the working window", () => {
  const expected = sure({ low: [1.6, 1, 1.4, 1.6], high: [6.4, 4, 5.6, 6.4] });
  const legs = fewestTunes(expected, WORKING_WINDOW);
  expect(legs.map(({ first, last }) => [first, last])).toEqual([
    [0, 0],
    [1, 1],
    [2, 3],
  ]);
  // 1.0 with 1.4 would do as well, but tightly: 1.1 is 10 % rich at the one and 21 % lean at the other.
  expect(legs[2]?.tune.low).toEqual({ pump_Hz: 1.5, shifts_pct: [7, -6] });
  expect(legs.every(({ tune }) => tune.edge.standing === "roomy")).toBe(true);
});

test("two hundred stops take no time worth naming, and one stop has the tune that can be set there", () => {
  const low = Array.from({ length: 200 }, (_, i) => 1 + 0.5 * Math.sin(i * 0.7));
  const high = low.map((pump_Hz) => pump_Hz * 3.6);
  expect(fewestTunes(sure({ low, high }), { rich_pct: 42, lean_pct: 60 })).toHaveLength(1);
  expect(fewestTunes(sure({ low: [1.1], high: [4.2] }), WORKING_WINDOW)[0]).toMatchObject({
    ...{ first: 0, last: 0 },
    tune: { low: { pump_Hz: 1.1, shifts_pct: [0] }, high: { pump_Hz: 4.2, shifts_pct: [0] } },
  });
});

test("a window that leaves no fuel, or none at all, is refused by name", () => {
  const expected = sure({ low: [1], high: [4] });
  expect(() => fewestTunes(expected, { rich_pct: -1, lean_pct: 25 })).toThrow(/rich_pct/);
  expect(() => fewestTunes(expected, { rich_pct: 12, lean_pct: 100 })).toThrow(/lean_pct/);
  expect(() => fewestTunes(expected, { rich_pct: Number.NaN, lean_pct: 5 })).toThrow(/rich_pct/);
});
