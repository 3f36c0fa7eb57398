import { mean, rootMeanSquare } from "simple-statistics";
import type { StudySensitivity } from "../../client/atlas/bands/report.ts";
import { standardDensity } from "../../model/air.ts";
import { averageAt, halfWidth, newHeaterAt } from "../../model/fit/bands.ts";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { GroupFit } from "../../model/fit/group.ts";
import { SETTINGS } from "../../model/fit/settings.ts";
import { lnRatio } from "./airs.ts";
import { type SimulatedRow, TARGET } from "./crowd.ts";
import { FIXED, seeded } from "./population.ts";
import { isOf } from "./rivals/hypsotune.ts";
import { scenarioOf } from "./scenarios/all.ts";

/** A crowd with a little of everything, and a small one, in which beliefs count most. */
const CROWDS = ["trade-as-people-are", "clean-15"];

/** Levels are moved by 10 %, the slope by what people might argue about; all else is halved and doubled. */
const MOVED: Partial<Record<keyof typeof SETTINGS, (value: number) => number[]>> = {
  level_low: (v) => [v - 0.1, v + 0.1],
  level_high: (v) => [v - 0.1, v + 0.1],
  slope: (v) => [v - 0.08, v + 0.08],
};
const halvedAndDoubled = (v: number) => [v / 2, 2 * v];

/** All but the width of the broad component, which the likelihood has worked in as a constant. */
const MOVABLE = (Object.keys(SETTINGS) as (keyof typeof SETTINGS)[]).filter(
  (name) => name !== "mistake_range",
);

const X = lnRatio(standardDensity(3000));

/** How far the answers move at 3,000 m when a chosen number is another: the larger of the two ways. */
export function sensitivity(runs: number, seed: number): StudySensitivity[] {
  if (runs === 0) return [];
  return CROWDS.flatMap((scenario) => {
    const crowds = Array.from(
      { length: runs },
      (_, run) => scenarioOf(scenario).make(seeded(seed + run), FIXED).rows,
    );
    const usual = crowds.map(answer);
    return MOVABLE.map((name) => {
      const others = (MOVED[name] ?? halvedAndDoubled)(SETTINGS[name]).map((value) =>
        moves(
          usual,
          withSetting(name, value, () => crowds.map(answer)),
        ),
      );
      const most = (of: keyof (typeof others)[number]) =>
        Math.round(10 * Math.max(...others.map((figures) => figures[of]))) / 10;
      return {
        name,
        scenario,
        runs,
        average_pct: most("average_pct"),
        mean_width_pct: most("mean_width_pct"),
        new_width_pct: most("new_width_pct"),
      };
    });
  });
}

interface Answered {
  centre: number;
  mean_half: number;
  new_half: number;
}

function answer(rows: readonly SimulatedRow[]): Answered {
  const group = fitAtlas(rows).groups.find(isOf(TARGET)) as GroupFit;
  const average = averageAt(group, X);
  return {
    centre: average.centre,
    mean_half: halfWidth(average, 0.95),
    new_half: halfWidth(newHeaterAt(group, X), 0.95),
  };
}

/** Root-mean-square move of the average, and mean changes of the half-widths, %. */
function moves(usual: readonly Answered[], other: readonly Answered[]) {
  const pairs = usual.map((before, k) => [before, other[k] as Answered] as const);
  return {
    average_pct: 100 * rootMeanSquare(pairs.map(([p, q]) => q.centre - p.centre)),
    mean_width_pct: 100 * Math.abs(mean(pairs.map(([p, q]) => q.mean_half / p.mean_half - 1))),
    new_width_pct: 100 * Math.abs(mean(pairs.map(([p, q]) => q.new_half / p.new_half - 1))),
  };
}

/** The settings are constants to everybody else; only what they are worth asks what they might have been. */
function withSetting<T>(name: keyof typeof SETTINGS, value: number, run: () => T): T {
  const settings = SETTINGS as Record<keyof typeof SETTINGS, number>;
  const before = settings[name];
  settings[name] = value;
  try {
    return run();
  } finally {
    settings[name] = before;
  }
}
