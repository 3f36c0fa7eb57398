import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import written from "../../../client/atlas/bands/sweep-report.json" with { type: "json" };
import { PROMISES, type SweepReport } from "../../../client/atlas/bands/sweep-report.ts";
import { CODE_VERSION } from "../../../server/version.ts";
import { outcomesOf, reportOf, SAMPLE, tallyOf } from "./figures.ts";
import { co_ppm, type Heater, offMinimum_Hz } from "./heater.ts";
import { holdsMinimum, isBracketed, isTrulyBracketed, type Judged, judge } from "./judge.ts";
import { SWEEP_PAGE, withSweepFigures } from "./page.ts";
import { runOf } from "./runs.ts";

const published = written as SweepReport;
const tallies = Array.from({ length: SAMPLE }, (_, run) => tallyOf(published.seed, run));
const report = reportOf(tallies, CODE_VERSION, published.seed);

test("heaters unlike anything it believes: no minimum found that was not bracketed, and no other promise broken", () => {
  const broken = tallies.flatMap((one, run) => one.broken.map((promise) => `${run}: ${promise}`));
  expect(broken).toEqual([]);
  expect(report.truly_bracketed).toBe(report.outcomes.found);
  // It finds some, and says so of the others.
  for (const kind of ["found", "not bracketed", "below floor", "above scale"] as const) {
    expect(report.outcomes[kind], kind).toBeGreaterThan(0.03 * SAMPLE);
  }
});

test("where it finds a minimum it is nearer to the truth than stepping by hand, with fewer flame-outs", () => {
  const [both] = report.ends;
  if (!both) throw new Error("no figures");
  const { guided, hand } = both;
  expect(both.runs).toBeGreaterThan(60);
  expect(guided.within_0_1_Hz_pct).toBeGreaterThan(85);
  expect(guided.within_0_2_Hz_pct).toBeGreaterThan(95);
  expect(guided.within_0_1_Hz_pct).toBeGreaterThanOrEqual(hand.within_0_1_Hz_pct);
  expect(guided.readings_median).toBeLessThan(hand.readings_median);
  expect(guided.flame_outs_per_100).toBeLessThan(hand.flame_outs_per_100 / 4);
});

test("the published report is of this code, of 10,000 runs, with every promise kept; the page shows its figures", () => {
  expect(published.code).toBe(CODE_VERSION);
  expect(published.runs).toBe(10_000);
  expect(published.sample).toEqual({ runs: SAMPLE, outcomes: outcomesOf(tallies) });
  for (const promise of PROMISES) expect(published.broken[promise], promise).toBe(0);
  for (const { guided, hand, end } of published.ends) {
    expect(guided.within_0_1_Hz_pct, end).toBeGreaterThan(hand.within_0_1_Hz_pct);
  }
  const page = readFileSync(SWEEP_PAGE, "utf8");
  expect(withSweepFigures(page, published)).toBe(page);
});

/** A record as the judge sees it: three minutes at a rate, read once. */
const record = (list: readonly (readonly [number, number | "out"])[]) =>
  list.map(([pump_Hz, co], i) => ({
    pump_Hz,
    set_s: 180 * i,
    time_s: 180 * (i + 1),
    ...(co === "out" ? { flame_out: true } : { co_ppm: co }),
  }));
const about: Judged = {
  end: "low",
  present_Hz: 1.3,
  step_Hz: 0.1,
  resolution_ppm: 1,
};

test("the judge asks the record alone, and sees every broken promise", () => {
  const rise = record([
    [1.2, 40],
    [1, 20],
    [0.9, 24],
    [1, 20],
  ]);
  expect(isBracketed(rise, 1, about)).toBe(true);
  expect(isBracketed(rise.slice(0, 2), 1, about)).toBe(false);
  expect(
    isBracketed(
      record([
        [1.2, 40],
        [1, 20],
        [0.9, 22],
      ]),
      1,
      about,
    ),
  ).toBe(false);
  // A figure just after setting may be on its way yet.
  const young = rise.map((one) => (one.pump_Hz === 0.9 ? { ...one, time_s: one.set_s + 20 } : one));
  expect(isBracketed(young, 1, about)).toBe(false);

  const good = runOf(published.seed, 0).guided;
  const found = runOf(
    published.seed,
    tallies.findIndex(({ outcome }) => outcome === "found"),
  );
  const { end } = found.guided;
  const stopped = { ...end, kind: "stopped" as const, pump_Hz: undefined, flame_outs: 3 };
  const judged = (change: Partial<typeof good>) =>
    judge({ ...good, end: JSON.parse(JSON.stringify(stopped)), ...change }, about);
  const falling = record([
    [1.3, 80],
    [1.2, 40],
  ]);
  const named = end?.kind === "found" ? { end: { ...end, pump_Hz: 1.2 } } : {};
  expect(judged({ record: falling, set_Hz: [1.3, 1.2], ...named }).unbracketed).toBe(true);
  expect(judged({ record: falling, set_Hz: [1.3, 1] }).move).toBe(true);
  expect(judged({ record: falling, set_Hz: [1.1, 1.2] }).move).toBe(false);
  expect(judged({ record: falling, set_Hz: [1] }).move).toBe(true);
  const { end: _, ...unended } = { ...good, record: falling };
  expect(judge(unended, about).endless).toBe(true);
  expect(judged({ record: falling, set_Hz: Array(19).fill(1.3) }).endless).toBe(true);
  const outs = record([
    [1.2, "out"],
    [1.3, 50],
    [1.2, "out"],
    [1.3, 50],
    [1.2, "out"],
    [1.3, 50],
  ]);
  expect(judged({ record: outs })).toMatchObject({ relight: true, into_flame_out: true });
});

test("the invented heaters: lowest at the minimum, doubled a width away, flat and on the shelf where they should be", () => {
  const plain: Heater = {
    minimum_Hz: 4,
    lowest_ppm: 10,
    lean_width: 0.1,
    rich_width: 0.05,
    shape: "quadratic",
    flame_out_Hz: 3,
  };
  expect(co_ppm(plain, 4)).toBe(10);
  expect(co_ppm(plain, 4 * Math.exp(-0.1))).toBeCloseTo(20, 9);
  expect(co_ppm(plain, 4 * Math.exp(0.05))).toBeCloseTo(20, 9);
  const flat = { ...plain, flat: { lean: 0.05, rich: 0 } };
  expect(co_ppm(flat, 4 * Math.exp(-0.049))).toBe(10);
  expect(offMinimum_Hz(flat, 4 * Math.exp(-0.049))).toBe(0);
  expect(offMinimum_Hz(flat, 4.3)).toBeCloseTo(0.3, 9);
  expect(holdsMinimum(flat, { lower: 3, upper: 3.85 })).toBe(true);
  expect(holdsMinimum(plain, { lower: 3, upper: 3.85 })).toBe(false);
  const shelf = { ...plain, shelf: { side: "rich" as const, from: 0.05, length: 0.1 } };
  expect(co_ppm(shelf, 4 * Math.exp(0.06))).toBeCloseTo(co_ppm(shelf, 4 * Math.exp(0.14)), 9);
  expect(co_ppm(shelf, 4 * Math.exp(0.2))).toBeCloseTo(co_ppm(plain, 4 * Math.exp(0.1)), 9);
  expect(isTrulyBracketed(plain, [3.8, 4.2], 4)).toBe(true);
  expect(isTrulyBracketed(plain, [4.2, 4.4], 4)).toBe(false);
});

test("the same seed gives the same sweep", () => {
  expect(tallyOf(published.seed, 3)).toEqual(tallies[3]);
});
