import { describe, expect, test } from "vitest";
import { standardDensity } from "../../../model/air.ts";
import { bandsAt } from "../../../model/fit/bands.ts";
import { fitAtlas } from "../../../model/fit/fit.ts";
import type { GroupFit } from "../../../model/fit/group.ts";
import type { FitRow } from "../../../model/fit/row.ts";
import { lnRatio } from "../../study/airs.ts";
import { besideLargeClasses, sibling } from "../../study/classes.ts";
import { FIXED, trueMean } from "../../study/population.ts";
import { seeded } from "./simulated-crowd.ts";

const of5 = (rows: FitRow[]) => fitAtlas(rows).groups.find((g) => g.heat_kW === 5) as GroupFit;
const DENSITY = standardDensity(3000);
const band = (group: GroupFit) =>
  bandsAt(group, DENSITY, { mean_levels: [0.95] }).mean_bands[0] as {
    lower: number;
    upper: number;
  };
const width = (group: GroupFit) => Math.log(band(group).upper / band(group).lower);

/** Simulated classes (nothing outside the project). */
describe("classes share what they can", () => {
  test("three contributors beside three classes like theirs: a narrower band that still holds", () => {
    let [narrower, held] = [0, 0];
    const runs = 8;
    for (let run = 0; run < runs; run++) {
      const random = seeded(900 + run);
      const truth = sibling(random, FIXED);
      const rows = besideLargeClasses(random, FIXED, truth, 3);
      const pooled = of5(rows);
      const alone = of5(rows.filter((r) => r.heat_kW === 5));
      narrower += Number(width(pooled) < width(alone));
      const mean = Math.exp(trueMean(truth, lnRatio(DENSITY)));
      const { lower, upper } = band(pooled);
      held += Number(mean >= lower && mean <= upper);
    }
    expect(narrower / runs).toBeGreaterThanOrEqual(0.75);
    expect(held / runs).toBeGreaterThanOrEqual(0.75);
  });

  test("a class that truly differs is drawn no farther from its truth than alone", () => {
    const apart = { ...FIXED, intercept: FIXED.intercept + 0.35, slope: 0.75 };
    let [pooled, alone] = [0, 0];
    for (let run = 0; run < 5; run++) {
      const rows = besideLargeClasses(seeded(1500 + run), FIXED, apart, 30);
      const error = (group: GroupFit) =>
        (group.intercept + group.slope * lnRatio(DENSITY) - trueMean(apart, lnRatio(DENSITY))) ** 2;
      pooled += error(of5(rows));
      alone += error(of5(rows.filter((r) => r.heat_kW === 5)));
    }
    expect(pooled).toBeLessThan(1.3 * alone);
  });
});
