import { readFileSync } from "node:fs";
import { afterAll, expect, test, vi } from "vitest";
import written from "../../../client/atlas/bands/poisoning-report.json" with { type: "json" };
import { ATTACKS, type PoisoningReport } from "../../../client/atlas/bands/poisoning-report.ts";
import { OWNERS_OF_SIZE } from "../../../server/new-keys.ts";
import { CODE_VERSION } from "../../../server/version.ts";
import { sampleOf } from "./figures.ts";
import { POISONING_PAGE, withPoisoningFigures } from "./page.ts";

const published = written as PoisoningReport;
const warned = vi.spyOn(console, "warn").mockImplementation(() => {});
afterAll(() => warned.mockRestore());

test("the first atlas attacked again moves as the published report says, and its newcomers wait as long", async () => {
  expect(published.code).toBe(CODE_VERSION);
  expect(await sampleOf(published.seed)).toEqual(published.sample);
});

test("in the published report every goal is kept, and without waiting the same lies do far more", () => {
  expect(published.attacks.map(({ id }) => id)).toEqual(ATTACKS);
  for (const { id, most_pct, goal_pct } of published.attacks)
    if (goal_pct !== null) expect(most_pct, id).toBeLessThan(goal_pct);
  const of = (id: string) => published.attacks.find((one) => one.id === id)?.most_pct ?? 0;
  expect(of("counted at once")).toBeGreaterThan(5 * of("fresh keys"));
  const goals = published.attacks.filter(({ goal_pct }) => goal_pct !== null);
  expect(goals.map(({ id }) => id)).toEqual(["fresh keys", "one key", "many keys", "hundred"]);
});

test("in the published report honest newcomers are in the fit within a week, but for a few, unless a hundred lie meanwhile", () => {
  const quiet = published.newcomers.filter(({ attackers }) => attackers < 100);
  expect(quiet.map(({ honest, attackers }) => [honest, attackers])).toEqual([
    [10, 0],
    [10, 0],
    [30, 0],
    [200, 0],
    [10, 1],
  ]);
  for (const { newcomers, median_days, within_a_week, honest, a_week } of quiet) {
    expect(median_days, `${honest} owners, ${a_week} a week`).toBeLessThanOrEqual(7);
    expect(within_a_week / newcomers, `${honest} owners, ${a_week} a week`).toBeGreaterThan(0.95);
  }
});

test("in the published report a liar among a size's first owners does not move its average out of its band", () => {
  const { outside_band, lies, first, from } = published.few_owners;
  expect(outside_band).toBe(0);
  expect(lies).toBeGreaterThan(100);
  expect([first, from]).toEqual([OWNERS_OF_SIZE, OWNERS_OF_SIZE]);
});

test("the page for operators shows the report's figures", () => {
  const page = readFileSync(POISONING_PAGE, "utf8");
  expect(withPoisoningFigures(page, published)).toBe(page);
});
