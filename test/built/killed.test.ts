import { expect, test } from "vitest";
import { killUnderLoad } from "../torture/killed.ts";

test("killed twice in the middle of submissions: every acknowledged tune is there, once", async () => {
  const { acknowledged, lost, stored, meant } = await killUnderLoad(2);
  expect(acknowledged).toBeGreaterThanOrEqual(200);
  expect(lost).toEqual([]);
  // Written but not acknowledged, a tune may be there; none is there twice.
  expect(stored).toBeGreaterThanOrEqual(acknowledged);
  expect(stored).toBeLessThanOrEqual(meant);
});
