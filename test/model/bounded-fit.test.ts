import fc from "fast-check";
import { expect, test } from "vitest";
import { fitBounded, OwnersSample } from "../../model/bounded-fit.ts";
import { averageAt } from "../../model/fit/bands.ts";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { GroupFit } from "../../model/fit/group.ts";
import type { FitRow } from "../../model/fit/row.ts";
import { asideOf } from "../../model/fit/standing.ts";
import { crowd, seeded } from "./fit/simulated-crowd.ts";

/** Owners under random names, as in the atlas. */
function named(rows: readonly FitRow[], seed: number): FitRow[] {
  const { uniform } = seeded(seed);
  const names = new Map<string, string>();
  return rows.map((row) => {
    const name =
      names.get(row.contributor) ??
      Math.floor(2 ** 48 * uniform())
        .toString(16)
        .padStart(12, "0");
    names.set(row.contributor, name);
    return { ...row, contributor: name };
  });
}

const both = (seed: number, owners: number): FitRow[] =>
  named(crowd(seeded(seed), owners, 0.05), seed).flatMap((row): FitRow[] => [
    { ...row, end: "low" },
    { ...row, end: "high", pump_Hz: 3.7 * row.pump_Hz },
    { ...row, end: "low", heat_kW: 2 },
  ]);

const rows = both(21, 90);
const none = () => {};
const ofSample = ({ tunes, rejected, density_range, contributors, ...fitted }: GroupFit) => fitted;

test("up to the limit it is the fit of all rows, and what that counts", () => {
  const { groups, rejected } = fitBounded(rows, none, 90);
  const all = fitAtlas(rows);
  expect(groups).toEqual(all.groups);
  expect(rejected.length).toBeGreaterThan(5);
  // Told in the order of the rows, not of the groups.
  const sorted = (list: typeof rejected) => list.map((r) => JSON.stringify(r)).sort();
  expect(sorted(rejected)).toEqual(sorted(all.rejected));
});

test("beyond it the fit is that of the first owners by name, and everything that is counted is counted of all", () => {
  const first = new Set([...new Set(rows.map((row) => row.contributor))].sort().slice(0, 40));
  const sampled = rows.filter((row) => first.has(row.contributor));
  const { groups, rejected } = fitBounded(rows, none, 40);
  expect(groups.map(ofSample)).toEqual(fitAtlas(sampled).groups.map(ofSample));
  for (const group of groups) {
    const own = rows.filter((row) => row.heat_kW === group.heat_kW && row.end === group.end);
    const kept = own.filter((row) => asideOf(group, row) === null).map((row) => row.density_kg_m3);
    expect(group).toMatchObject({
      contributors: 90,
      tunes: kept.length,
      rejected: own.length - kept.length,
      density_range: [Math.min(...kept), Math.max(...kept)],
    });
  }
  expect(rejected.length).toBe(groups.reduce((sum, group) => sum + group.rejected, 0));
});

test("the same rows in any order give the same bits", () => {
  const { groups } = fitBounded(rows, none, 40);
  fc.assert(
    fc.property(fc.shuffledSubarray(rows, { minLength: rows.length }), (shuffled) => {
      expect(fitBounded(shuffled, none, 40).groups).toEqual(groups);
    }),
    { numRuns: 5 },
  );
});

test("one more owner changes one member of the sample at most", () => {
  const members = (list: readonly FitRow[]) => {
    const sample = new OwnersSample(40);
    for (const row of list) sample.add(row);
    return new Set(sample.rows().map((row) => row.contributor));
  };
  const before = members(rows);
  expect(before.size).toBe(40);
  for (const name of ["000000000000", "7fffffffffff", "ffffffffffff"]) {
    const after = members([
      ...rows,
      ...rows.slice(0, 3).map((row) => ({ ...row, contributor: name })),
    ]);
    expect(after.size).toBe(40);
    expect([...before].filter((one) => !after.has(one)).length).toBeLessThanOrEqual(1);
  }
});

/** Standard error of the mean of a simple random sample of n out of N: W. G. Cochran, Sampling Techniques, 3rd ed. 1977, eq. 2.20. */
test("the average of a sample lies as near to the whole crowd's as a simple random sample of owners does", () => {
  const whole = named(crowd(seeded(5), 4000), 5);
  const [all] = fitAtlas(whole).groups as [GroupFit];
  const [some] = fitBounded(whole, none, 1000).groups as [GroupFit];
  const standardError = (all.spread / Math.sqrt(1000)) * Math.sqrt(1 - 1000 / 4000);
  expect(standardError).toBeLessThan(0.005);
  for (const x of [0, -0.2]) {
    const apart = averageAt(some, x).centre - averageAt(all, x).centre;
    expect(apart).not.toBe(0);
    expect(Math.abs(apart)).toBeLessThan(4 * standardError);
  }
});
