import { crowd } from "../crowd.ts";
import { OTHER, otherCrowd } from "./other-crowd.ts";
import type { Scenario } from "./scenario.ts";

const FIXED_SIZES = [3, 8, 15, 50, 200, 1000, 10_000];
const DRAWN_SIZES = [1, 3, 8, 30, 200, 1000];
const OTHER_SIZES = [8, 30, 200];

const people = (n: number) => `${n.toLocaleString("en")} owner${n === 1 ? "" : "s"}`;

const clean = (id: string, contributors: number, truth: Scenario["truth"]): Scenario => ({
  id,
  title:
    truth === "fixed"
      ? `${people(contributors)}, no mistakes`
      : `${people(contributors)}, no mistakes, truth drawn from the prior`,
  family: "clean",
  truth,
  contributors,
  bands_only: truth === "drawn",
  make: (random, population) => ({ rows: crowd(random, population, contributors) }),
});

export const CLEAN: readonly Scenario[] = [
  ...FIXED_SIZES.map((n) => clean(`clean-${n}`, n, "fixed")),
  ...DRAWN_SIZES.map((n) => clean(`clean-drawn-${n}`, n, "drawn")),
  ...OTHER_SIZES.map(
    (contributors): Scenario => ({
      id: `clean-other-${contributors}`,
      title: `${people(contributors)}: heavier tails, own slopes, half the temperatures unknown, 1 to 12 tunes each`,
      family: "clean",
      truth: "fixed",
      contributors,
      make: (random) => ({ rows: otherCrowd(random, contributors), truth: OTHER }),
    }),
  ),
];
