import type { End } from "../../../model/end.ts";
import { withOtherEnd } from "../classes.ts";
import { crowd, type Reporting, USUAL } from "../crowd.ts";
import { FIXED, type Population } from "../population.ts";
import type { Scenario } from "./scenario.ts";

const CROWD = 200;

const spread = (id: string, title: string, truth: Population): Scenario => ({
  id: `spread-${id}`,
  title,
  family: "spread",
  truth: "fixed",
  contributors: CROWD,
  make: (random) => ({ rows: crowd(random, truth, CROWD), truth }),
});

const LOW: Population = { ...FIXED, between: 0.12, within: 0.07 };
const HIGH: Population = {
  ...FIXED,
  intercept: Math.log(0.98),
  slope: 0.88,
  between: 0.06,
  within: 0.035,
};

/** The low end twice as wide as the high one; one or the other is asked about. */
const ends = (end: End): Scenario => ({
  id: `spread-ends-${end}`,
  title: `low end twice as wide as the high end: the ${end} end`,
  family: "spread",
  truth: "fixed",
  contributors: CROWD,
  make: (random) => ({
    rows: withOtherEnd(random, crowd(random, LOW, CROWD), LOW, HIGH),
    truth: end === "low" ? LOW : HIGH,
    target: { heat_kW: 5, end },
  }),
});

const air = (id: string, title: string, reporting: Partial<Reporting>): Scenario => ({
  id: `air-${id}`,
  title,
  family: "air",
  truth: "fixed",
  contributors: CROWD,
  make: (random, truth) => ({ rows: crowd(random, truth, CROWD, { ...USUAL, ...reporting }) }),
});

export const SPREAD_AND_AIR: readonly Scenario[] = [
  spread("heavy-tails", "heavy tails: Student's t with 3 degrees of freedom", {
    ...FIXED,
    between_df: 3,
    within_df: 3,
  }),
  spread("unequal-care", "half the heaters spread three times as wide as the others", {
    ...FIXED,
    between: 0.04,
    within: 0.025,
    careless: 3,
  }),
  ends("low"),
  ends("high"),
  air("no-temperature", "half the temperatures missing", { no_temperature: 0.5 }),
  air("elevation-300m", "half the elevations 300 m off", { vague_elevation: 0.5 }),
  air("co-stated", "half the owners stop at 30 to 150 ppm and say so", { stops_early: 0.5 }),
  air("co-unstated", "half the owners stop at 30 to 150 ppm and do not say so", {
    stops_early: 0.5,
    co_stated: false,
  }),
];
