import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { standardDensity } from "../../../model/air.ts";
import { bandsAt } from "../../../model/fit/bands.ts";
import { fitAtlas } from "../../../model/fit/fit.ts";
import type { GroupFit } from "../../../model/fit/group.ts";
import { priorGroup } from "../../../model/fit/prior.ts";
import type { FitRow } from "../../../model/fit/row.ts";
import { crowd, oneMore, type Seeded, seeded, trueMean, withFakes } from "./simulated-crowd.ts";

const ELEVATIONS_m = [0, 1500, 3000, 4500];

interface Study {
  /** Root-mean-square error of the mean at 0, 1,500, 3,000 and 4,500 m, %. */
  rmse: number[];
  /** Share of true means in the 95 % mean band, and of new heaters in the 80 % and 95 % bands, %. */
  mean95: number;
  new80: number;
  new95: number;
  /** Share of rows set aside, %. */
  rejected: number;
}

function study(seed: number, runs: number, make: (random: Seeded) => FitRow[]): Study {
  const random = seeded(seed);
  const squares = ELEVATIONS_m.map(() => 0);
  let [mean95, new80, new95, rejected, rows] = [0, 0, 0, 0, 0];
  const heaters = 10;
  for (let run = 0; run < runs; run++) {
    const data = make(random);
    const group = fitAtlas(data).groups[0] as GroupFit;
    rejected += group.rejected;
    rows += data.length;
    for (const [i, elevation_m] of ELEVATIONS_m.entries()) {
      const density = standardDensity(elevation_m);
      const truth = trueMean(density);
      const bands = bandsAt(group, density, {
        mean_levels: [0.95],
        new_heater_levels: [0.8, 0.95],
      });
      squares[i] = (squares[i] as number) + (Math.log(bands.pump_Hz_per_krpm) - truth) ** 2;
      const holds = (y: number, band = bands.mean_bands[0]) =>
        Number(band !== undefined && Math.exp(y) >= band.lower && Math.exp(y) <= band.upper);
      mean95 += holds(truth);
      for (let k = 0; k < heaters; k++) {
        const y = oneMore(random, density);
        new80 += holds(y, bands.new_heater_bands[0]);
        new95 += holds(y, bands.new_heater_bands[1]);
      }
    }
  }
  const asked = runs * ELEVATIONS_m.length;
  return {
    rmse: squares.map((sum) => 100 * Math.sqrt(sum / runs)),
    mean95: (100 * mean95) / asked,
    new80: (100 * new80) / (asked * heaters),
    new95: (100 * new95) / (asked * heaters),
    rejected: (100 * rejected) / rows,
  };
}

/**
 * Simulated crowds with a known truth (simulated-crowd.ts; nothing outside the project). Errors at most, in %, at
 * 0 / 1,500 / 3,000 / 4,500 m: twice what the study reports, for so few runs.
 */
describe("simulated crowds", () => {
  test.each<[name: string, runs: number, most: number[], make: (r: Seeded) => FitRow[]]>([
    ["200 contributors", 10, [1.5, 1.5, 2.2, 3.2], (r) => crowd(r, 200)],
    ["8 contributors", 60, [4.2, 4.2, 4.6, 5.6], (r) => crowd(r, 8)],
    ["3 contributors", 60, [7.0, 7.0, 7.4, 8.0], (r) => crowd(r, 3)],
    [
      "40 % fake contributors spread out, 1.6 ×",
      6,
      [1.5, 1.5, 2.2, 3.2],
      (r) => withFakes(r, crowd(r, 200), { share: 0.4, times: 1.6, spread: true }),
    ],
    [
      "30 % fake contributors spread out, 1.25 ×",
      6,
      [1.5, 1.5, 2.4, 3.4],
      (r) => withFakes(r, crowd(r, 200), { share: 0.3, times: 1.25, spread: true }),
    ],
    [
      "30 % of all rows are slips that nobody screened",
      6,
      [1.8, 2, 3.4, 5],
      (r) => crowd(r, 200, 0.3),
    ],
  ])("%s", (_, runs, most, make) => {
    const { rmse, mean95, new80, new95 } = study(17, runs, make);
    for (const [i, error] of rmse.entries()) expect(error).toBeLessThan(most[i] as number);
    expect(mean95).toBeGreaterThan(80);
    expect(new80).toBeGreaterThan(73);
    expect(new95).toBeGreaterThan(90);
  });

  test("few honest rows are set aside, and bands of many contributors are not wider than they say", () => {
    const { rejected, new80, new95 } = study(18, 10, (r) => crowd(r, 200));
    expect(rejected).toBeLessThan(1);
    expect(new80).toBeLessThan(87);
    expect(new95).toBeLessThan(98.5);
  });
});

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
