import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bandsAt } from "../../../model/fit/bands.ts";
import { fitAtlas } from "../../../model/fit/fit.ts";
import type { GroupFit } from "../../../model/fit/group.ts";
import { priorGroup } from "../../../model/fit/prior.ts";
import type { FitRow } from "../../../model/fit/row.ts";
import { crowd, seeded, withFakes } from "./simulated-crowd.ts";

describe("crowds that no estimator could make sense of", () => {
  test.each([0.6, 0.7, 0.8, 0.9])(
    "%d of all rows slips: every figure finite, shares and variances not below nought",
    (share) => {
      for (const contributors of [3, 20, 200]) {
        const { covariance, shares, ...rest } = fitAtlas(
          crowd(seeded(contributors), contributors, share),
        ).groups[0] as GroupFit;
        expect(allFinite({ covariance, shares, ...rest })).toBe(true);
        for (const value of [...Object.values(shares), covariance[0][0], covariance[1][1]]) {
          expect(value).toBeGreaterThanOrEqual(0);
        }
      }
    },
  );
});

/** Whether every number in it is finite, however deep. */
function allFinite(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value === "object" && value !== null) return Object.values(value).every(allFinite);
  return true;
}

describe("one voice per contributor", () => {
  test("a key that floods with 70 % of all rows moves the fit no more than its one tune", () => {
    const rows = crowd(seeded(5), 100);
    const lie: FitRow = { ...(rows[0] as FitRow), contributor: "flood", cell: "z", pump_Hz: 1.5 };
    const flood = Array.from({ length: Math.round((rows.length * 7) / 3) }, (_, i) => ({
      ...lie,
      row: `f${i}`,
    }));
    const once = fitAtlas([...rows, lie]).groups[0] as GroupFit;
    const often = fitAtlas([...rows, ...flood]).groups[0] as GroupFit;
    expect(Math.abs(often.intercept - once.intercept)).toBeLessThan(0.002);
    expect(often.slope).toBeCloseTo(once.slope, 2);
  });

  test("k owners at one place in one month weigh by the design effect, at several times more", () => {
    // Kish (1965): k/(1 + (k − 1)·0.25).
    const alone = crowd(seeded(6), 64).map((r) => ({ ...r, cell: undefined }));
    const votes = (change: (row: FitRow) => Partial<FitRow>) =>
      fitAtlas(alone.map((r) => ({ ...r, ...change(r) }))).groups[0]?.votes;
    const month = "2026-10";
    expect(votes(() => ({}))).toBeCloseTo(64, 6);
    expect(votes(() => ({ cell: "one place", month }))).toBeCloseTo(64 / (1 + 63 * 0.25), 6);
    const quarter = ({ contributor }: FitRow) => ({
      cell: "one place",
      month: `2026-0${1 + (Number(contributor.slice(1)) % 4)}`,
    });
    expect(votes(quarter)).toBeCloseTo((4 * 16) / (1 + 15 * 0.25), 6);
  });

  test("tunes that may be copies of the atlas neither narrow the spread nor count in full; bracketed ones do", () => {
    const honest = crowd(seeded(21), 40);
    const group = fitAtlas(honest).groups[0] as GroupFit;
    const copies = crowd(seeded(22), 160).map((row, i): FitRow => {
      const ratio = row.density_kg_m3 / 1.225;
      const suggested = Math.exp(group.intercept) * ratio ** group.slope;
      const pump_Hz = (suggested * row.fan_rpm) / 1000;
      return { ...row, row: `copy ${i}`, contributor: `copier ${row.contributor}`, pump_Hz };
    });
    const crowdOf = (found: FitRow["found"]) =>
      fitAtlas([...honest, ...copies.map((row) => ({ ...row, found }))]).groups[0] as GroupFit;
    const suggested = crowdOf("as suggested");
    expect(suggested.spread).toBeGreaterThan(0.85 * group.spread);
    expect(suggested.votes).toBeLessThan(group.votes + 20);
    expect(crowdOf("bracketed").spread).toBeLessThan(0.8 * group.spread);
  });
});

test("the same rows in any order give the same bits", () => {
  const rows = withFakes(seeded(8), crowd(seeded(7), 60, 0.1), {
    share: 0.1,
    times: 1.6,
    spread: true,
  });
  const { groups } = fitAtlas(rows);
  fc.assert(
    fc.property(fc.shuffledSubarray(rows, { minLength: rows.length }), (shuffled) => {
      expect(fitAtlas(shuffled).groups).toEqual(groups);
    }),
    { numRuns: 8, seed: 1 },
  );
});

test("it tells how far it has come, and ends with the last of all", () => {
  const rows = crowd(seeded(4), 30);
  const told = (given: FitRow[]) => {
    const steps: [done: number, of: number][] = [];
    fitAtlas(given, (done, of) => steps.push([done, of]));
    return steps;
  };
  expect(told([])).toEqual([]);
  expect(told(rows)).toEqual([[1, 1]]);
  const two = rows.map((row, i) => ({ ...row, heat_kW: i % 3 === 0 ? 2 : 5 }));
  expect(told(two)).toEqual([1, 2, 3, 4].map((done) => [done, 4]));
});

test("fan speeds counted in another unit shift the intercept alone", () => {
  const rows = crowd(seeded(9), 150);
  const [a, b] = [1, 1.1].map(
    (times) =>
      fitAtlas(rows.map((r) => ({ ...r, fan_rpm: r.fan_rpm * times }))).groups[0] as GroupFit,
  ) as [GroupFit, GroupFit];
  expect(b.intercept).toBeCloseTo(a.intercept - Math.log(1.1), 2);
  expect(b.slope).toBeCloseTo(a.slope, 2);
});

test("rows are set aside with a sentence that gives the numbers", () => {
  const rows = crowd(seeded(10), 100);
  const wrong = { ...(rows[3] as FitRow), row: "wrong", contributor: "w", pump_Hz: 3 };
  const { rejected } = fitAtlas([...rows, wrong]);
  const reason = rejected.find((r) => r.row === "wrong")?.reason ?? "";
  expect(reason).toMatch(/^Far richer than 100 similar tunes at the lowest power: \d{3} % of/);
});

test("a known dose moves the average and narrows the band of a new heater", () => {
  const doses = [22, 28];
  const rows = crowd(seeded(31), 200).map((row) => {
    const dose_uL = doses[Number(row.contributor.slice(1)) % 2] as number;
    return { ...row, dose_uL, pump_Hz: (row.pump_Hz * 25) / dose_uL };
  });
  const group = fitAtlas(rows).groups[0] as GroupFit;
  const at = (dose_uL?: number) => bandsAt(group, 1.1, { dose_uL, new_heater_levels: [0.95] });
  const width = (dose_uL?: number) => {
    const [band] = at(dose_uL).new_heater_bands as unknown as [{ lower: number; upper: number }];
    return Math.log(band.upper / band.lower);
  };
  expect(at(28).pump_Hz_per_krpm / at(22).pump_Hz_per_krpm).toBeCloseTo(22 / 28, 6);
  expect(width(22)).toBeLessThan(0.75 * width());
});

test("nights that are colder than the standard atmosphere's are found out from those who state a temperature", () => {
  const random = seeded(33);
  const rows = crowd(random, 300).map((row, i) =>
    i % 2 === 0
      ? row
      : {
          ...row,
          density_kg_m3: row.density_kg_m3 * Math.exp(-0.03),
          ln_density_sd: 0.035,
          temperature_assumed: true,
        },
  );
  const { night } = fitAtlas(rows).groups[0] as GroupFit;
  expect(night).toBeGreaterThan(0.008);
  expect(night).toBeLessThan(0.04);
});

test("bands: the prior's are wide, a first tune narrows them, doubt about the air widens them", () => {
  const width = (group: GroupFit, ln_density_sd = 0) => {
    const [band] = bandsAt(group, 1, {
      ln_density_sd,
      new_heater_levels: [0.95],
      mean_levels: [],
    }).new_heater_bands;
    return Math.log((band?.upper ?? Number.NaN) / (band?.lower ?? Number.NaN));
  };
  const first = fitAtlas(crowd(seeded(11), 1)).groups[0] as GroupFit;
  const many = fitAtlas(crowd(seeded(11), 200)).groups[0] as GroupFit;
  expect(width(priorGroup(5, "low"))).toBeGreaterThan(width(first));
  expect(width(first)).toBeGreaterThan(width(many));
  expect(width(many, 0.05)).toBeGreaterThan(width(many));
});

test("no figure comes of one that is none", () => {
  const [row] = crowd(seeded(12), 1) as [FitRow];
  for (const field of ["density_kg_m3", "pump_Hz", "fan_rpm", "heat_kW"] as const) {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, 0, -1]) {
      expect(() => fitAtlas([{ ...row, [field]: bad }])).toThrow(field);
    }
  }
  expect(() => bandsAt(priorGroup(5, "low"), Number.NaN)).toThrow("density_kg_m3");
  expect(fitAtlas([])).toEqual({ groups: [], rejected: [] });
});
