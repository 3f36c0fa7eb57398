import { besideLargeClasses, sibling } from "../classes.ts";
import { FIXED, type Population } from "../population.ts";
import type { Scenario } from "./scenario.ts";

/** A class unlike the others. */
const APART: Population = { ...FIXED, intercept: FIXED.intercept + 0.35, slope: 0.75 };

const alike = (contributors: number): Scenario => ({
  id: `pooling-alike-${contributors}`,
  title: `a heater size with ${contributors} owners beside three like it with 60 each`,
  family: "pooling",
  truth: "drawn",
  contributors,
  make: (random, family) => {
    const truth = sibling(random, family);
    return { rows: besideLargeClasses(random, family, truth, contributors), truth };
  },
});

export const POOLING: readonly Scenario[] = [
  alike(3),
  alike(8),
  {
    id: "pooling-apart-30",
    title: "a heater size with 30 owners unlike three with 60 each that agree",
    family: "pooling",
    truth: "fixed",
    contributors: 30,
    make: (random, family) => ({
      rows: besideLargeClasses(random, family, APART, 30),
      truth: APART,
    }),
  },
];
