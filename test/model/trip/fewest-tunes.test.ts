import fc from "fast-check";
import { expect, test } from "vitest";
import { fewestTunes, shiftsAlong } from "../../../model/trip/fewest-tunes.ts";
import { type Expected, oneTuneWithin, worstOf } from "../../../model/trip/one-tune.ts";
import { type MixtureWindow, WORKING_WINDOW } from "../../../model/trip/window.ts";
import { trips, windows } from "./random-trips.ts";

type Plan = { lasts: number[]; worst_pct: number };

const part = ({ low, high }: Expected, first: number, last: number): Expected => ({
  low: low.slice(first, last + 1),
  high: high.slice(first, last + 1),
});

/** Every way to cut the trip into stretches, that stays within the window: all 2ⁿ⁻¹ tried. */
function everyPlan(expected: Expected, window: MixtureWindow): Plan[] {
  const n = expected.low.length;
  const plans: Plan[] = [];
  for (let cuts = 0; cuts < 2 ** (n - 1); cuts++) {
    const lasts = Array.from({ length: n }, (_, i) => i).filter(
      (i) => i === n - 1 || cuts & (1 << i),
    );
    let first = 0;
    let worst_pct = 0;
    let fits = true;
    for (const last of lasts) {
      const tune = oneTuneWithin(part(expected, first, last), window);
      if (!tune) {
        fits = false;
        break;
      }
      worst_pct = Math.max(worst_pct, worstOf(tune));
      first = last + 1;
    }
    if (fits) plans.push({ lasts, worst_pct });
  }
  return plans;
}

/** As far as each tune goes, then the next: over intervals of ln mixture, the textbook's greedy way. */
function greedy(expected: Expected, { rich_pct, lean_pct }: MixtureWindow): number {
  const width = Math.log(1 + rich_pct / 100) - Math.log(1 - lean_pct / 100);
  let tunes = 0;
  for (let first = 0; first < expected.low.length; tunes++) {
    let last = first;
    const fits = (values: readonly number[]) =>
      Math.log(Math.max(...values)) - Math.log(Math.min(...values)) <= width + 1e-12;
    while (last + 1 < expected.low.length) {
      const { low, high } = part(expected, first, last + 1);
      if (!fits(low) || !fits(high)) break;
      last++;
    }
    first = last + 1;
  }
  return tunes;
}

test("as few as any plan, and of those the least worst shift, the latest change-over: by brute force", () => {
  fc.assert(
    fc.property(trips(8), windows, (expected, window) => {
      const legs = fewestTunes(expected, window);
      const plans = everyPlan(expected, window);
      const fewest = Math.min(...plans.map(({ lasts }) => lasts.length));
      expect(legs).toHaveLength(fewest);
      const few = plans.filter(({ lasts }) => lasts.length === fewest);
      const least = Math.min(...few.map(({ worst_pct }) => worst_pct));
      const worst = Math.max(...legs.map(({ tune }) => worstOf(tune)));
      expect(worst).toBe(least);
      const first = Math.max(
        ...few.filter((p) => p.worst_pct === least).map(({ lasts }) => lasts[0] as number),
      );
      expect(legs[0]?.last).toBe(first);
      expect(legs).toHaveLength(greedy(expected, window));
    }),
    { numRuns: 150 },
  );
});

test("legs follow one another, cover every stop once, and stay within the window", () => {
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
      for (const shift of [...shifts.low, ...shifts.high]) {
        expect(shift).toBeLessThanOrEqual(window.rich_pct + 1e-9);
        expect(shift).toBeGreaterThanOrEqual(-window.lean_pct - 1e-9);
      }
      expect(fewestTunes(expected, window)).toEqual(legs);
    }),
  );
});

test("worked by hand: a valley, two passes, a valley in the working window", () => {
  // 1.4 × 0.75 = 1.05 is within 12 % of 1.0, but 1.6 × 0.75 = 1.2 is not.
  const expected = { low: [1.6, 1, 1.4, 1.6], high: [6.4, 4, 5.6, 6.4] };
  const legs = fewestTunes(expected, WORKING_WINDOW);
  expect(legs.map(({ first, last }) => [first, last])).toEqual([
    [0, 0],
    [1, 1],
    [2, 3],
  ]);
  // 1.0 with 1.4 would fit as well, at a worse shift: 1.12 is 20 % lean there.
  expect(worstOf(legs[2]?.tune as never)).toBeCloseTo((1.6 / 1.5 - 1 + (1 - 1.4 / 1.5)) * 50, 6);
});

test("two hundred stops take no time worth naming, and one stop is its own tune", () => {
  const low = Array.from({ length: 200 }, (_, i) => 1 + 0.5 * Math.sin(i * 0.7));
  const high = low.map((pump_Hz) => pump_Hz * 3.6);
  expect(fewestTunes({ low, high }, { rich_pct: 40, lean_pct: 60 })).toHaveLength(1);
  expect(fewestTunes({ low: [1.1], high: [4.2] }, WORKING_WINDOW)[0]).toMatchObject({
    first: 0,
    last: 0,
    tune: { low: { worst_pct: 0 }, high: { worst_pct: 0 } },
  });
});

test("a window that leaves no fuel, or none at all, is refused by name", () => {
  const expected = { low: [1], high: [4] };
  expect(() => fewestTunes(expected, { rich_pct: -1, lean_pct: 25 })).toThrow(/rich_pct/);
  expect(() => fewestTunes(expected, { rich_pct: 12, lean_pct: 100 })).toThrow(/lean_pct/);
  expect(() => fewestTunes(expected, { rich_pct: Number.NaN, lean_pct: 5 })).toThrow(/rich_pct/);
});
