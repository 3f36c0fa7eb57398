import { expect, test } from "vitest";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { GroupFit } from "../../model/fit/group.ts";
import type { FitRow } from "../../model/fit/row.ts";
import { fitInSteps, type KeptSteps, type Uncounted } from "../../model/fit-in-steps.ts";
import { crowd, seeded } from "./fit/simulated-crowd.ts";

const rows = crowd(seeded(5), 40, 0.1).flatMap((row): FitRow[] => [
  { ...row, end: "low" },
  { ...row, end: "high", pump_Hz: 3.7 * row.pump_Hz },
  { ...row, end: "low", heat_kW: 2 },
]);
const uncounted = ({ tunes, rejected, density_range, ...fitted }: GroupFit): Uncounted => fitted;

/** Keeps what storage would, and fails at one of the steps. */
function kept(failAt?: number) {
  const steps = new Map<string, Uncounted>();
  let puts = 0;
  const store: KeptSteps = {
    get: async (name) => structuredClone(steps.get(name)),
    put: async (name, found) => {
      if (++puts === failAt) throw new Error("cut off");
      steps.set(name, structuredClone(found));
    },
  };
  return { store, puts: () => puts };
}

test.each([
  ["several sizes", rows, 6],
  ["one size", rows.filter(({ heat_kW }) => heat_kW !== 2), 2],
  ["none", [], 0],
] as const)(
  "step by step it is the fit made at once, to the last bit: %s",
  async (_, of, steps) => {
    const { store, puts } = kept();
    const shuffled = of.toReversed();
    expect(await fitInSteps(shuffled, store)).toEqual(fitAtlas(of).groups.map(uncounted));
    expect(puts()).toBe(steps);
  },
);

test("cut off at any step it goes on there: no step that was kept is made again", async () => {
  const whole = fitAtlas(rows).groups.map(uncounted);
  for (const failAt of [1, 3, 6]) {
    const { store, puts } = kept(failAt);
    await expect(fitInSteps(rows, store)).rejects.toThrow("cut off");
    expect(await fitInSteps(rows, store)).toEqual(whole);
    // The one that was cut off, and no other, is put twice.
    expect(puts()).toBe(6 + 1);
  }
});
