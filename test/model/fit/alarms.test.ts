import { describe, expect, test } from "vitest";
import { alarmsOf, THRESHOLDS } from "../../../model/fit/alarms.ts";
import { AtlasLedger } from "../../../model/fit/atlas-ledger.ts";
import type { Alarm, PublishedFit } from "../../../model/fit/group.ts";
import type { FitRow } from "../../../model/fit/row.ts";
import { FIXED } from "../../study/population.ts";
import { CLEAN } from "../../study/scenarios/clean.ts";
import { MISTAKES } from "../../study/scenarios/mistakes.ts";
import type { Scenario } from "../../study/scenarios/scenario.ts";
import { EMPTY_ATLAS } from "../invented-fit.ts";
import { seeded } from "./simulated-crowd.ts";

/** Alarms when the last tenth of the contributors joins, for so many simulated crowds. */
function alarmsIn(scenario: Scenario | undefined, runs: number): Alarm[][] {
  if (!scenario) throw new Error("No such scenario");
  return Array.from({ length: runs }, (_, run) => {
    const { rows } = scenario.make(seeded(500 + run), FIXED);
    const contributors = [...new Set(rows.map((r) => r.contributor))];
    const late = new Set(contributors.slice(Math.floor(0.9 * contributors.length)));
    return joined(
      rows.filter((r) => !late.has(r.contributor)),
      rows.filter((r) => late.has(r.contributor)),
    );
  });
}

function joined(first: FitRow[], then: FitRow[]): Alarm[] {
  const ledger = new AtlasLedger();
  ledger.load(first);
  const before: PublishedFit = { ...EMPTY_ATLAS, groups: ledger.fit() };
  for (const row of then) ledger.put(row);
  return alarmsOf(before, ledger.fit(), ledger.surges());
}

const of = (list: readonly Scenario[], id: string) => list.find((s) => s.id === id);
const share = (runs: Alarm[][], code: Alarm["code"]) =>
  runs.filter((alarms) => alarms.some((a) => a.code === code)).length / runs.length;

/** Simulated crowds (nothing outside the project). */
describe("alarms", () => {
  test.each(["clean-8", "clean-30", "clean-200", "clean-other-30", "clean-other-200"])(
    "honest crowds seldom raise one: %s",
    (id) => {
      const runs = alarmsIn(of(CLEAN, id), 60);
      const raised = runs.filter((alarms) => alarms.length > 0);
      expect(raised.length).toBeLessThanOrEqual(2);
    },
  );

  test("twenty in a hundred from one place in one month", () => {
    const runs = alarmsIn(of(MISTAKES, "fakes-one-place-1.25x-20pct"), 20);
    expect(share(runs, "many_new_keys")).toBe(1);
  });

  test("twenty in a hundred spread over high places: slopes contradict contributors' own, or two crowds show", () => {
    const runs = alarmsIn(of(MISTAKES, "fakes-spread-1.25x-20pct"), 40);
    const told = runs.filter((alarms) =>
      alarms.some((a) => a.code === "slope_against_own_steps" || a.code === "two_populations"),
    );
    expect(told.length / runs.length).toBeGreaterThan(0.9);
  });

  test("one heater in ten in the wrong class, a third richer", () => {
    const runs = alarmsIn(of(MISTAKES, "fakes-spread-1.6x-10pct"), 20);
    expect(share(runs, "two_populations")).toBe(1);
  });

  test("an alarm says what it found, how much, and against which threshold", () => {
    const [alarms] = alarmsIn(of(MISTAKES, "fakes-one-place-1.6x-20pct"), 1);
    const alarm = alarms?.find((a) => a.code === "many_new_keys");
    expect(alarm?.sentence).toMatch(/^\d+ of \d+ contributors tuned in one place in one month/);
    expect(alarm?.value).toBeGreaterThan(THRESHOLDS.many_new_keys);
    expect(alarm?.threshold).toBe(THRESHOLDS.many_new_keys);
  });
});
