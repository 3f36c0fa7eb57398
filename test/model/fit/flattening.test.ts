import { expect, test } from "vitest";
import { AtlasLedger } from "../../../model/fit/atlas-ledger.ts";
import { fitGroup } from "../../../model/fit/fit-group.ts";
import { REFERENCE_SLOPE } from "../../../model/fit/grid.ts";
import type { FitRow } from "../../../model/fit/row.ts";
import { PHYSICS, PRIOR } from "../../../model/fit/prior.ts";
import { crowd, TARGET } from "../../study/crowd.ts";
import { FIXED, seeded } from "../../study/population.ts";

/** Slope as published, and as the rows' equations alone have it. */
function slopes(rows: FitRow[]) {
  const ledger = new AtlasLedger();
  ledger.load(rows);
  const { tally } = (ledger.ledgers()[0] as ReturnType<AtlasLedger["ledgers"]>[number]).ledger;
  const { fit, joint } = fitGroup(TARGET.heat_kW, TARGET.end, tally, PHYSICS);
  return { published: fit.slope, plain: REFERENCE_SLOPE + joint.line.c };
}

/** Simulated crowds whose densities are off by 1 % (nothing outside the project). */
test("errors of density flatten a large crowd's slope by about a hundredth, and that is put right", () => {
  const runs = Array.from({ length: 12 }, (_, run) =>
    slopes(crowd(seeded(run + 1), FIXED, 10_000)),
  );
  const off = (of: "published" | "plain") =>
    runs.reduce((sum, slope) => sum + slope[of] - FIXED.slope, 0) / runs.length;
  expect(off("plain")).toBeLessThan(-0.006);
  expect(Math.abs(off("published"))).toBeLessThan(0.004);
});

test("a small crowd's slope is left as it is", () => {
  for (let run = 0; run < 20; run++) {
    const { published, plain } = slopes(crowd(seeded(run + 1), FIXED, 50));
    expect(published - plain).toBeGreaterThanOrEqual(0);
    expect(published - plain).toBeLessThan(0.001);
  }
});

test("a crowd that saw one air alone tells nothing of its errors, however large", () => {
  const rows = crowd(seeded(1), FIXED, 5000).map((row) => ({ ...row, density_kg_m3: 1.1 }));
  const { published } = slopes(rows);
  expect(Math.abs(published - PRIOR.slope)).toBeLessThan(0.06);
  expect(published).toBeLessThanOrEqual(PRIOR.slope_bounds[1]);
});
