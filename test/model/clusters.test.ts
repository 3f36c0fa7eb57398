import { describe, expect, test } from "vitest";
import { type AlikeTune, atLeast, chanceOf, clustersOf } from "../../model/clusters.ts";
import { seeded } from "../../seed-demo/random.ts";

const SD = 0.07;
const tune = (n: number, low: number, high: number, of: Partial<AlikeTune> = {}): AlikeTune => ({
  id: `tune ${n}`,
  contributor: `owner ${n}`,
  place: "a place",
  month: "2026-11",
  heat_kW: 5,
  shift: { low, high },
  step: { low: 0, high: 0 },
  isNew: true,
  as_suggested: false,
  ...of,
});
const found = (tunes: AlikeTune[]) => clustersOf(tunes, () => SD);

describe("what is a cluster", () => {
  const alike = [0, 1, 2, 3, 4].map((n) => tune(n, 0.1 + 0.002 * n, 0.1 - 0.002 * n));

  test("owners of one place, month and size who agree at both powers; their neighbours are none of it", () => {
    const others = [tune(7, -0.05, 0.02), tune(8, 0.1, -0.04)];
    const [cluster, ...more] = found([...others, ...alike]);
    expect(more).toEqual([]);
    expect(cluster).toMatchObject({ contributors: 5, new_contributors: 5, place: "a place" });
    expect(cluster?.tunes.toSorted()).toEqual(alike.map(({ id }) => id));
  });

  test.each([
    ["place", (t: AlikeTune, n: number) => ({ ...t, place: `place ${n}` })],
    ["month", (t: AlikeTune, n: number) => ({ ...t, month: `2026-0${n + 1}` })],
    ["size", (t: AlikeTune, n: number) => ({ ...t, heat_kW: 2 + n })],
    ["owner", (t: AlikeTune) => ({ ...t, contributor: "one owner" })],
  ])("of one %s each: none", (_, change) => {
    expect(found(alike.map(change))).toEqual([]);
  });

  test("most of them must be new, and two are a coincidence", () => {
    const known = alike.map((t, n) => ({ ...t, isNew: n === 0 }));
    expect(found(known)).toEqual([]);
    expect(found(alike.slice(0, 2))).toEqual([]);
  });

  test("tunes without a place are looked at together", () => {
    expect(found(alike.map((t) => ({ ...t, place: null })))).toMatchObject([{ place: null }]);
  });

  test("several, the least probable first, no tune in two", () => {
    const at = (first: number, owners: number, shift: number) =>
      Array.from({ length: owners }, (_, n) => tune(first + n, shift, shift));
    const clusters = found([...at(0, 7, -0.1), ...at(7, 8, 0.1)]);
    expect(clusters.map(({ contributors }) => contributors)).toEqual([8, 7]);
    const ids = clusters.flatMap(({ tunes }) => tunes);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe("the bound on chance", () => {
  test("binomial tails are those of a printed table", () => {
    // NBS Applied Mathematics Series 6, Tables of the Binomial Probability Distribution (1950), whose entries follow
    // from sums that can be done by hand: P(X ≥ 2 | 3, ½) = 4/8; P(X ≥ 1 | 10, 0.1) = 1 − 0.9¹⁰.
    expect(atLeast(2, 3, 0.5)).toBeCloseTo(0.5, 12);
    expect(atLeast(1, 10, 0.1)).toBeCloseTo(1 - 0.9 ** 10, 12);
    expect(atLeast(5, 5, 0.2)).toBeCloseTo(0.2 ** 5, 12);
    expect(atLeast(0, 5, 0.2)).toBe(1);
    expect(atLeast(6, 5, 0.2)).toBe(0);
  });

  test("holds: honest owners of a place and month look like a cluster no more often than it says", () => {
    const { normal } = seeded(11);
    const MONTHS = 4000;
    for (const owners of [4, 8, 20, 60]) {
      let clusters = 0;
      for (let month = 0; month < MONTHS; month++) {
        // The worst case: what a heater is at one power it is at the other.
        const honest = Array.from({ length: owners }, (_, n) => {
          const shift = SD * normal();
          return tune(n, shift, shift);
        });
        if (found(honest).length > 0) clusters++;
      }
      expect(clusters / MONTHS, `${owners} owners`).toBeLessThan(0.05);
    }
  });

  test("holds where pumps are set in steps, too: then honest rates are often the same", () => {
    const { normal } = seeded(12);
    // A step of 0.1 Hz at 1.1 and at 4.2 Hz, all fans alike.
    const step = { low: 0.1 / 1.1, high: 0.1 / 4.2 };
    const MONTHS = 4000;
    for (const owners of [4, 8, 20]) {
      let clusters = 0;
      for (let month = 0; month < MONTHS; month++) {
        const honest = Array.from({ length: owners }, (_, n) => {
          const heater = SD * normal();
          const set = (end: "low" | "high") => step[end] * Math.round(heater / step[end]);
          return tune(n, set("low"), set("high"), { step });
        });
        if (found(honest).length > 0) clusters++;
      }
      expect(clusters / MONTHS, `${owners} owners`).toBeLessThan(0.05);
    }
  });

  test("falls with every one more that agrees, and rises with the number of owners", () => {
    expect(chanceOf(5, 10, SD)).toBeLessThan(chanceOf(4, 10, SD));
    expect(chanceOf(5, 20, SD)).toBeGreaterThan(chanceOf(5, 10, SD));
    expect(chanceOf(3, 1000, SD)).toBe(1);
  });
});
