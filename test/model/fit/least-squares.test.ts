import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Band, bandsAt } from "../../../model/fit/bands.ts";
import { bisquareWeight } from "../../../model/fit/bisquare.ts";
import { REFERENCE_SLOPE } from "../../../model/fit/grid.ts";
import type { GroupFit } from "../../../model/fit/group.ts";
import { type LeastSquares, leastSquares } from "../../../model/fit/least-squares.ts";
import { solve } from "../../../model/fit/normal-equations.ts";
import { PRIOR, priorGroup } from "../../../model/fit/prior.ts";
import { studentFactor } from "../../../model/fit/student.ts";
import { seeded } from "./simulated-crowd.ts";

const read = (file: string) => JSON.parse(readFileSync(`test/reference/${file}`, "utf8"));

/** Correct significant digits of a figure (log relative error), as NIST counts them. */
const digits = (got: number, certified: number) =>
  got === certified ? 15 : -Math.log10(Math.abs(got - certified) / Math.abs(certified || 1));

/** Powers of x, with or without the constant term. */
const polynomial = (x: number[], degree: number, intercept: boolean) =>
  x.map((value) =>
    Array.from(
      { length: degree + (intercept ? 1 : 0) },
      (_, k) => value ** (intercept ? k : k + 1),
    ),
  );

/**
 * NIST Statistical Reference Datasets, linear regression, certified values (each file names its source).
 * Digits asked: 10 of every figure where the data allow it. The Wampler polynomials are conditioned so that
 * double precision cannot hold more: powers of x up to 20⁵ beside 1.
 */
const sets: [name: string, coefficient: number, spread: number][] = [
  ["Norris", 10, 10],
  ["Pontius", 10, 10],
  ["NoInt1", 10, 10],
  ["NoInt2", 10, 10],
  ["Longley", 10, 10],
  ["Wampler3", 8, 10],
  ["Wampler4", 7, 10],
  ["Wampler5", 5, 10],
];

describe("least squares against NIST's certified figures", () => {
  test.each(sets)("%s", (name, coefficientDigits, spreadDigits) => {
    const set = read(`nist/${name}.json`);
    const design =
      set.degree === undefined || Array.isArray(set.x[0])
        ? set.x.map((row: number[]) => (set.intercept ? [1, ...row] : row))
        : polynomial(set.x, set.degree, set.intercept);
    const fit = leastSquares(design, set.y, { constant: set.intercept });
    set.certified.parameters.forEach((p: { estimate: number; sd: number }, j: number) => {
      expect(digits(fit.coefficients[j] as number, p.estimate)).toBeGreaterThan(coefficientDigits);
      expect(digits(fit.standard_errors[j] as number, p.sd)).toBeGreaterThan(spreadDigits);
    });
    expect(digits(fit.residual_sd, set.certified.residualSD)).toBeGreaterThan(spreadDigits);
    expect(digits(fit.r_squared, set.certified.rSquared)).toBeGreaterThan(spreadDigits);
    const F = set.certified.anova.regression.F;
    if (Number.isFinite(F)) expect(digits(fit.f, F)).toBeGreaterThan(spreadDigits);
  });

  // Exact polynomials: residuals are zero, so only the coefficients can be compared.
  test.each(["Wampler1", "Wampler2"])("%s, an exact polynomial", (name) => {
    const set = read(`nist/${name}.json`);
    const fit = leastSquares(polynomial(set.x, set.degree, true), set.y);
    for (const [j, p] of set.certified.parameters.entries()) {
      expect(digits(fit.coefficients[j] as number, p.estimate)).toBeGreaterThan(8);
    }
  });
});

interface RBand {
  x: number;
  level: number;
  fit: number;
  confLow: number;
  confHigh: number;
  predLow: number;
  predHigh: number;
}

/** A plain least-squares line as a published group: what the bands are drawn from, with no prior and no jackknife. */
function groupOf(fit: LeastSquares): GroupFit {
  const [[aa, ab], [ba, bb]] = fit.unscaled_covariance.map((row) =>
    row.map((v) => v * fit.residual_sd ** 2),
  ) as GroupFit["covariance"];
  return {
    ...priorGroup(5, "low"),
    intercept: fit.coefficients[0] as number,
    slope: fit.coefficients[1] as number,
    covariance: [
      [aa, ab],
      [ba, bb],
    ],
    line_df: fit.residual_df,
    spread: fit.residual_sd,
    spread_df: fit.residual_df,
    contributors: fit.residual_df + 2,
  };
}

/** Bands in the units of y: the atlas draws them on logarithmic scales. */
function intervals(group: GroupFit, x: number, level: number) {
  const levels = { mean_levels: [level], new_heater_levels: [level] };
  const { pump_Hz_per_krpm, mean_bands, new_heater_bands } = bandsAt(
    group,
    1.225 * Math.exp(x),
    levels,
  );
  const logs = (band: Band | undefined) =>
    [Math.log(band?.lower ?? Number.NaN), Math.log(band?.upper ?? Number.NaN)] as const;
  return {
    fit: Math.log(pump_Hz_per_krpm),
    mean: logs(mean_bands[0]),
    another: logs(new_heater_bands[0]),
  };
}

describe("the atlas's bands against R's confidence and prediction intervals", () => {
  // R 4.2.2 predict.lm on its data set cars, and on Kutner et al. Table 1.1 (Toluca).
  test.each(["cars", "toluca"])("%s to 1e-9", (name) => {
    const set = read("stats_prediction_intervals.json")[name];
    const group = groupOf(leastSquares(polynomial(set.x, 1, true), set.y));
    expect(set.bands.length).toBeGreaterThan(8);
    for (const band of set.bands as RBand[]) {
      const { fit, mean, another } = intervals(group, band.x, band.level);
      const close = (got: number, want: number) =>
        expect(Math.abs(got - want)).toBeLessThan(1e-9 * Math.max(Math.abs(want), 1));
      close(fit, band.fit);
      close(mean[0], band.confLow);
      close(mean[1], band.confHigh);
      close(another[0], band.predLow);
      close(another[1], band.predHigh);
    }
  });

  test("published Toluca limits, as printed", () => {
    // Kutner et al., §2.4–2.5: at 100, 90 % limits of the mean 394.9–443.8 and of one more 332.2–506.6.
    const set = read("stats_prediction_intervals.json").toluca;
    const group = groupOf(leastSquares(polynomial(set.x, 1, true), set.y));
    const { mean, another } = intervals(group, 100, 0.9);
    expect(mean[0]).toBeCloseTo(394.9, 1);
    expect(mean[1]).toBeCloseTo(443.8, 1);
    expect(another[0]).toBeCloseTo(332.2, 1);
    expect(another[1]).toBeCloseTo(506.6, 1);
  });

  test("weighted cars (weights 1/speed)", () => {
    const { cars, carsWeighted } = read("stats_prediction_intervals.json");
    const weights = cars.x.map((speed: number) => 1 / speed);
    const fit = leastSquares(polynomial(cars.x, 1, true), cars.y, { weights });
    for (const j of [0, 1]) {
      expect(digits(fit.coefficients[j] as number, carsWeighted.coef[j])).toBeGreaterThan(10);
      expect(digits(fit.standard_errors[j] as number, carsWeighted.se[j])).toBeGreaterThan(10);
    }
    expect(digits(fit.residual_sd, carsWeighted.sigma)).toBeGreaterThan(10);
  });
});

test("Student's t quantiles against 40-digit figures", () => {
  const { rows } = read("stats_quantiles.json").studentT_40digit;
  let compared = 0;
  for (const row of rows) {
    for (const [key, text] of Object.entries(row)) {
      if (!key.startsWith("p")) continue;
      const level = 2 * Number(key.slice(1)) - 1;
      expect(Math.abs(studentFactor(level, row.df) / Number(text) - 1)).toBeLessThan(1e-9);
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(60);
});

test("infinite degrees of freedom are the normal distribution", () => {
  expect(studentFactor(0.95, Number.POSITIVE_INFINITY)).toBeCloseTo(1.95996398454005, 8);
});

test("normal equations give the line of least squares over the rows, its slope kept within bounds", () => {
  const { uniform, normal } = seeded(3);
  for (let run = 0; run < 200; run++) {
    const rows = Array.from({ length: 3 + Math.floor(uniform() * 30) }, () => {
      const x = -0.5 * uniform();
      return { w: uniform(), x, r: 0.1 + 3 * (uniform() - 0.5) * x + 0.1 * normal() };
    });
    const sums = { aa: 0, ac: 0, cc: 0, ra: 0, rc: 0 };
    for (const { w, x, r } of rows) {
      sums.aa += w;
      sums.ac += w * x;
      sums.cc += w * x * x;
      sums.ra += w * r;
      sums.rc += w * x * r;
    }
    const [a, c] = leastSquares(
      rows.map(({ x }) => [1, x]),
      rows.map(({ r }) => r),
      { weights: rows.map(({ w }) => w) },
    ).coefficients as [number, number];
    const line = solve(sums);
    const [least, most] = PRIOR.slope_bounds.map((slope) => slope - REFERENCE_SLOPE) as [
      number,
      number,
    ];
    if (c > least && c < most) {
      expect(line.c).toBeCloseTo(c, 9);
      expect(line.a).toBeCloseTo(a, 9);
    } else expect([least, most]).toContain(line.c);
  }
});

/** Huber's weight: full voice within k scales, k over distance beyond (Huber 1964). */
function huberWeight(scaled: number, k: number): number {
  return Math.min(1, k / Math.max(Math.abs(scaled), Number.MIN_VALUE));
}

describe("reweighting against published robust fits of the stack loss data", () => {
  const { stackloss, constants } = read("stats_robust.json");
  const { data } = stackloss;
  const y: number[] = data["stack.loss"];
  const design = y.map((_, i) => [
    1,
    data["Air.Flow"][i],
    data["Water.Temp"][i],
    data["Acid.Conc."][i],
  ]);
  const solveWith = (weights: Float64Array) =>
    leastSquares(design, y, { weights: [...weights] }).coefficients;
  const residuals = (b: number[]) =>
    Float64Array.from(
      y,
      (value, i) =>
        value - (design[i] as number[]).reduce((s, d, j) => s + d * (b[j] as number), 0),
    );
  /** Median absolute residual ÷ 0.6745, the scale the published figures use. */
  const scale = (r: Float64Array) =>
    (r.map(Math.abs).sort()[(r.length - 1) / 2] as number) / 0.6745;

  // The published figures stop at a relative change of 1e-4; the tight ones iterate on.
  test.each([
    ["huber", huberWeight, constants.huberK],
    ["bisquare", bisquareWeight, constants.bisquareC],
  ] as const)("%s", (name, psi, c) => {
    let b = solveWith(new Float64Array(y.length).fill(1));
    let s = 0;
    for (let step = 0; step < 400; step++) {
      const r = residuals(b);
      s = scale(r);
      b = solveWith(r.map((residual) => psi(residual / s, c)));
    }
    const tight = Object.values<number>(stackloss[`${name}_tight`].coef);
    const published = stackloss[`${name}_published`].coef as number[];
    for (const [j, want] of tight.entries()) {
      expect(digits(b[j] as number, want)).toBeGreaterThan(5);
      expect(digits(b[j] as number, published[j] as number)).toBeGreaterThan(2.5);
    }
    expect(digits(s, stackloss[`${name}_tight`].scale)).toBeGreaterThan(5);
  });
});

test("what cannot be fitted is refused by name", () => {
  expect(() =>
    leastSquares(
      [
        [1, 2],
        [1, 2],
        [1, 2],
      ],
      [1, 2, 3],
    ),
  ).toThrow("Column 2");
  expect(() => leastSquares([[1], [1]], [1])).toThrow("as many rows");
  expect(() => leastSquares([[1], [Number.NaN]], [1, 2])).toThrow("finite");
});
