import { expect, test } from "vitest";
import { logPrior } from "../../../model/fit/belief.ts";
import { logLikelihood } from "../../../model/fit/likelihood.ts";
import { ONE_CROWD, PARAMETERS, TWO_CROWDS } from "../../../model/fit/parameters.ts";
import { physicsPrior } from "../../../model/fit/prior.ts";
import type { FitRow } from "../../../model/fit/row.ts";
import { sampleOf } from "../../../model/fit/sample.ts";
import { crowd, seeded } from "./simulated-crowd.ts";

/** Rows that reach every term: missing temperatures, doses, copies, slips, one owner with more rows than count. */
const rows: FitRow[] = crowd(seeded(5), 40, 0.15).map((row, i) => ({
  ...row,
  temperature_assumed: i % 3 === 0,
  ln_density_sd: i % 3 === 0 ? 0.035 : 0,
  dose_uL: Number(row.contributor.slice(1)) % 3 === 0 ? 22 + (i % 2) : undefined,
  found: Number(row.contributor.slice(1)) % 5 === 0 ? "stopped early" : undefined,
  co_ppm: i % 4 === 0 ? 90 : undefined,
}));
const [first] = rows as [FitRow];
for (let k = 0; k < 12; k++) rows.push({ ...first, row: `more ${k}`, pump_Hz: 1 + 0.02 * k });

const sample = sampleOf(rows);
const somewhere = Float64Array.from([
  ...[-0.4, 0.85, Math.log(0.09), Math.log(0.055), Math.log(0.06), 2.5],
  ...[-3, -3.2, -2.5, 0.4, -2.2, -0.1, 0.01, 3.1],
  ...[-2, 0.3, 0.25, 0.1, Math.log(0.09)],
]);

const posterior = (t: Float64Array, gradient = new Float64Array(t.length)) =>
  logLikelihood(t, sample, { gradient }) +
  logPrior(t, sample, { ...physicsPrior("low"), df: 4 }, { gradient });

test.each([ONE_CROWD, TWO_CROWDS])(
  "the gradient by %i parameters is that of differences",
  (length) => {
    const t = somewhere.slice(0, length);
    const gradient = new Float64Array(length);
    posterior(t, gradient);
    for (let p = 0; p < length; p++) {
      const at = (by: number) => posterior(t.map((v, q) => (q === p ? v + by : v)));
      const difference = (at(1e-5) - at(-1e-5)) / 2e-5;
      const scale = 1 + Math.abs(difference);
      expect(Math.abs((gradient[p] as number) - difference) / scale, PARAMETERS[p]).toBeLessThan(
        1e-6,
      );
    }
  },
);

// One, three, and as many as count of one owner, who tunes carefully: then all of them together are narrow beside how heaters differ.
test.each([
  [1, 0.055],
  [3, 0.055],
  [3, 0.02],
  [8, 0.02],
])(
  "the integral over a heater's own level is that of the multivariate normal: %i good rows, ± %f",
  (count, sigma) => {
    // Closed form: y ~ N(a + bx, τ²J + σ²I); no mistakes, no heavy tails, own slopes or errors of the air.
    const t = somewhere.slice(0, ONE_CROWD);
    const set = (name: (typeof PARAMETERS)[number], value: number) => {
      t[PARAMETERS.indexOf(name)] = value;
    };
    for (const odds of ["logit_never", "logit_other", "logit_feet", "logit_slip"] as const)
      set(odds, -40);
    set("ln_within", Math.log(sigma));
    set("ln_own_slope", -20);
    set("ln_tail", 18);
    const own = sampleOf(
      rows.slice(0, count).map((row, k) => ({
        ...row,
        row: k,
        contributor: "one",
        density_kg_m3: 1 + 0.03 * k,
        // In no steps.
        pump_Hz: Math.SQRT2 * (0.7 + 0.021 * k),
        temperature_assumed: false,
        ln_density_sd: 0,
        co_ppm: undefined,
        dose_uL: undefined,
        found: undefined,
      })),
    );
    const [b, tau2, sigma2] = [0.85, 0.09 ** 2, sigma ** 2];
    // Wherever the rows lie between two nodes.
    for (const a of [-0.4, -0.39, -0.38, -0.37]) {
      set("level", a);
      const r = Array.from(own.y, (y, j) => y - a - b * (own.x[j] as number));
      const n = r.length;
      const sum = r.reduce((s, v) => s + v, 0);
      const squares = r.reduce((s, v) => s + v * v, 0);
      const exponent = (squares - (tau2 / (sigma2 + n * tau2)) * sum * sum) / sigma2;
      const determinant = sigma2 ** (n - 1) * (sigma2 + n * tau2);
      const closed = -0.5 * (exponent + Math.log(determinant) + n * Math.log(2 * Math.PI));
      expect(logLikelihood(t, own)).toBeCloseTo(closed, 2);
    }
  },
);
