import { expect, test } from "vitest";
import { LEVELS } from "./airs.ts";
import { crowd, USUAL } from "./crowd.ts";
import { oneRun } from "./one-run.ts";
import { FIXED, seeded } from "./population.ts";
import { SCENARIOS, scenarioOf } from "./scenarios/all.ts";
import type { Scenario } from "./scenarios/scenario.ts";
import { planOf, study } from "./study.ts";
import { tally } from "./tally.ts";

test("the same seed gives the same figures on one thread and on two", async () => {
  const scenarios = ["clean-3", "clean-8", "pooling-alike-3"].map(scenarioOf);
  const plan = {
    scenarios,
    size: "quick",
    seed: 5,
    runs: () => 2,
    own_heater_crowds: 0,
    alarm_crowds: 0,
    ablation_runs: 0,
    sensitivity_runs: 0,
  } as const;
  const [one, two, other] = await Promise.all([
    study({ ...plan, threads: 1 }),
    study({ ...plan, threads: 2 }),
    study({ ...plan, threads: 2, seed: 6 }),
  ]);
  expect(two).toEqual(one);
  expect(other.scenarios).not.toEqual(one.scenarios);
});

test("a report says how to make it again", async () => {
  const plan = {
    scenarios: [scenarioOf("clean-3")],
    size: "quick",
    seed: 5,
    runs: () => 2,
    own_heater_crowds: 1,
    alarm_crowds: 0,
    ablation_runs: 0,
    sensitivity_runs: 0,
  } as const;
  const { runs, ...again } = planOf(await study({ ...plan, threads: 1 }));
  // The same plan and seed give the same report: that is the test above.
  expect({ ...plan, ...again }).toEqual({ ...plan, scenarios: [scenarioOf("clean-3")] });
  expect(runs(scenarioOf("clean-3"))).toBe(2);
});

test("a run that fails fails the study, naming the scenario", async () => {
  const scenarios = [{ ...scenarioOf("clean-3"), id: "unheard of" }];
  await expect(study({ scenarios, size: "quick", seed: 1, threads: 1 })).rejects.toThrow(
    "unheard of",
  );
});

test("every fifth scenario gives finite figures, each estimator's within what can be", () => {
  const most = SCENARIOS.filter(({ contributors }, i) => contributors <= 200 && i % 5 === 0);
  expect(most.length).toBeGreaterThan(15);
  for (const scenario of most) {
    for (const result of tally([oneRun(scenario, 1, 0)])) {
      const { estimator, false_rejection_pct, caught_pct, ...lists } = result;
      const figures = Object.values(lists).flat(2);
      expect(figures.every(Number.isFinite), `${scenario.id} ${estimator}`).toBe(true);
      for (const share of [false_rejection_pct ?? 0, caught_pct ?? 0]) {
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(100);
      }
    }
  }
});

test("names of scenarios, and of rows within a run, are unique", () => {
  expect(new Set(SCENARIOS.map(({ id }) => id)).size).toBe(SCENARIOS.length);
  for (const { id, contributors, make } of SCENARIOS) {
    if (contributors > 200 || id.startsWith("trade-copies")) continue;
    const names = make(seeded(1), FIXED).rows.map(({ row }) => row);
    expect(new Set(names).size, id).toBe(names.length);
  }
});

/** The textbook's promise under the textbook's conditions: independent normal rows, air known exactly. */
test("least squares' bands hold as often as they say on clean normal data, one row per contributor", () => {
  const scenario: Scenario = {
    ...scenarioOf("clean-3"),
    contributors: 30,
    make: (random, truth) => ({
      rows: crowd(random, truth, 30, { ...USUAL, tunes: "one", density_sd: 0 }),
    }),
  };
  const runs = Array.from({ length: 200 }, (_, run) => oneRun(scenario, 3, run));
  const result = tally(runs).find(({ estimator }) => estimator === "Least squares");
  for (const [i, level] of LEVELS.entries()) {
    const nominal = 100 * level;
    // Three standard errors of 200 yes-or-no outcomes.
    const noise = 3 * Math.sqrt((nominal * (100 - nominal)) / 200);
    for (const held of result?.mean_coverage_pct[i] ?? []) {
      expect(Math.abs(held - nominal)).toBeLessThan(noise);
    }
    for (const held of result?.new_coverage_pct[i] ?? []) {
      expect(Math.abs(held - nominal)).toBeLessThan(2.5);
    }
  }
});
