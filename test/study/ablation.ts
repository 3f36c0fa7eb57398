import { mean, median, rootMeanSquare } from "simple-statistics";
import type { StudyAblation } from "../../client/atlas/bands/report.ts";
import { standardDensity } from "../../model/air.ts";
import { averageAt, halfWidth, newHeaterAt, type Student } from "../../model/fit/bands.ts";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { GroupFit } from "../../model/fit/group.ts";
import type { FitRow } from "../../model/fit/row.ts";
import { lnRatio } from "./airs.ts";
import { type SimulatedRow, TARGET } from "./crowd.ts";
import { FIXED, type Seeded, seeded } from "./population.ts";
import { isOf } from "./rivals/hypsotune.ts";
import { scenarioOf } from "./scenarios/all.ts";
import { truthOf } from "./truth.ts";

/** A part of the model, as what it knows of a row: without it the fit is not told. */
interface Part {
  part: string;
  without: (row: SimulatedRow) => SimulatedRow;
  scenarios: string[];
}

const PARTS: readonly Part[] = [
  {
    part: "dose as an offset",
    without: ({ dose_uL: _, ...row }) => row,
    scenarios: ["trade-doses-lognormal-stated-100", "trade-doses-two-sizes-stated-100"],
  },
  {
    part: "final CO",
    without: ({ co_ppm: _, co_below_ppm: __, ...row }) => row,
    scenarios: ["air-co-stated", "trade-stopped-early-30"],
  },
  {
    part: "owners of one place and month are alike",
    without: ({ cell: _, ...row }) => row,
    scenarios: ["fakes-one-place-1.6x-40pct", "trade-clubs"],
  },
  {
    part: "nights without a temperature share an offset",
    without: (row) => ({ ...row, temperature_assumed: false }),
    scenarios: ["air-no-temperature", "trade-no-temperature-cold"],
  },
  {
    part: "possible copies",
    without: ({ found: _, suggested_Hz_per_krpm: __, ...row }) => ({ ...row, found: "bracketed" }),
    scenarios: ["trade-copies-50-from-30", "trade-copies-80-from-30"],
  },
];

const X = lnRatio(standardDensity(3000));
const FURTHER = 100;

/** What single parts of the model are worth: the same crowds fitted with what the part needs to know, and without. */
export function ablation(runs: number, seed: number): StudyAblation[] {
  if (runs === 0) return [];
  return PARTS.flatMap(({ part, without, scenarios }) =>
    scenarios.map((id) => {
      const crowds = Array.from({ length: runs }, (_, run) => crowdOf(id, seeded(seed + run)));
      return {
        part,
        scenario: id,
        runs,
        with_it: figures(crowds, (row) => row),
        without_it: figures(crowds, without),
      };
    }),
  );
}

interface Crowd {
  rows: readonly SimulatedRow[];
  mean: number;
  /** Further heaters, tuned once, with their dose where they would state it. */
  further: { y: number; dose_uL?: number | undefined }[];
}

function crowdOf(id: string, random: Seeded): Crowd {
  const { rows, truth = FIXED } = scenarioOf(id).make(random, FIXED);
  const known = truthOf(truth);
  const further = Array.from({ length: FURTHER }, () =>
    known.one ? known.one(random, X) : { y: known.another(random, [X])[0] as number },
  );
  return { rows, mean: known.mean(X), further };
}

function figures(crowds: readonly Crowd[], seen: (row: SimulatedRow) => FitRow) {
  const runs = crowds.map(({ rows, mean: truth, further }) => {
    const group = fitAtlas(rows.map(seen)).groups.find(isOf(TARGET)) as GroupFit;
    const average = averageAt(group, X);
    const heaters = further.map(({ y, dose_uL }) => ({ y, band: newHeaterAt(group, X, dose_uL) }));
    return {
      error: average.centre - truth,
      held: holds(average, truth),
      new_held: mean(heaters.map(({ y, band }) => holds(band, y))),
      new_half: median(heaters.map(({ band }) => halfWidth(band, 0.95))),
    };
  });
  const pct = (share: number) => Math.round(1000 * share) / 10;
  return {
    rmse_pct: pct(rootMeanSquare(runs.map(({ error }) => error))),
    mean_95_held_pct: pct(mean(runs.map(({ held }) => held))),
    new_95_held_pct: pct(mean(runs.map(({ new_held }) => new_held))),
    new_95_half_pct: pct(mean(runs.map(({ new_half }) => new_half))),
  };
}

const holds = (band: Student, y: number) =>
  Math.abs(y - band.centre) <= halfWidth(band, 0.95) ? 1 : 0;
