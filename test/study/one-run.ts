import { AIRS, LEVELS, lnRatio } from "./airs.ts";
import { type SimulatedRow, TARGET } from "./crowd.ts";
import { drawnPopulation, FIXED, seeded } from "./population.ts";
import { ALONE, ESTIMATORS } from "./rivals/all.ts";
import type { Answer, Estimator, Fitted, Interval } from "./rivals/estimator.ts";
import { hypsotune, isOf } from "./rivals/hypsotune.ts";
import type { Scenario } from "./scenarios/scenario.ts";
import { truthOf } from "./truth.ts";

/** Rows counted and, of them, rows set aside. */
export interface Counted {
  rows: number;
  aside: number;
}

/** Figures of one estimator in one run; lists by air, or by level and air. In ln, shares 0–1. */
export interface RunFigures {
  estimator: string;
  error: number[];
  mean_held: number[][];
  new_held: number[][];
  /** Half-widths of the bands. */
  mean_half: number[][];
  new_half: number[][];
  /** Null for an estimator that sets nothing aside. */
  honest: Counted | null;
  wrong: Counted | null;
}

/** Further heaters drawn in each run to see whether the bands hold them. */
const FURTHER = 200;
const X = AIRS.map(({ density_kg_m3 }) => lnRatio(density_kg_m3));

/** One run of a scenario: what each estimator makes of the same rows. The same seed and run give the same figures. */
export function oneRun(scenario: Scenario, seed: number, run: number): RunFigures[] {
  const random = seeded(mixed(`${seed} ${scenario.id} ${run}`));
  const drawn = scenario.truth === "drawn" ? drawnPopulation(random) : FIXED;
  const { rows, truth = drawn, target = TARGET } = scenario.make(random, drawn);
  const known = truthOf(truth);
  const means = X.map((x) => known.mean(x));
  const further = Array.from({ length: FURTHER }, () => known.another(random, X));
  const own = rows.filter(isOf(target));
  return estimatorsOf(scenario, own.length < rows.length).flatMap((estimator) => {
    const fitted = estimator.fit(rows, target);
    return fitted ? [figuresOf(estimator.name, fitted, { means, further, rows: own })] : [];
  });
}

function estimatorsOf({ bands_only }: Scenario, hasOtherClasses: boolean): readonly Estimator[] {
  if (bands_only) return [hypsotune];
  return hasOtherClasses ? [...ESTIMATORS, ALONE] : ESTIMATORS;
}

interface Known {
  means: number[];
  further: number[][];
  rows: SimulatedRow[];
}

function figuresOf(estimator: string, fitted: Fitted, { means, further, rows }: Known): RunFigures {
  const answers = X.map((x) => fitted.at(x));
  const by = (figure: (answer: Answer, level: number, air: number) => number) =>
    LEVELS.map((_, level) => answers.map((answer, air) => figure(answer, level, air)));
  return {
    estimator,
    error: answers.map(({ centre }, air) => centre - (means[air] as number)),
    mean_held: by(({ mean }, level, air) => held(mean[level], means[air] as number)),
    new_held: by(({ another }, level, air) => {
      const count = further.reduce((sum, ys) => sum + held(another[level], ys[air] as number), 0);
      return count / further.length;
    }),
    mean_half: by(({ mean }, level) => half(mean[level])),
    new_half: by(({ another }, level) => half(another[level])),
    ...countAside(fitted.setAside, rows),
  };
}

function countAside(aside: Fitted["setAside"], rows: readonly SimulatedRow[]) {
  if (!aside) return { honest: null, wrong: null };
  const count = (among: SimulatedRow[]): Counted => ({
    rows: among.length,
    aside: among.filter(({ row }) => aside.has(row)).length,
  });
  return {
    honest: count(rows.filter((r) => r.honest)),
    wrong: count(rows.filter((r) => !r.honest)),
  };
}

function held(band: Interval | undefined, y: number): number {
  return Number(band !== undefined && y >= band.lower && y <= band.upper);
}

function half(band: Interval | undefined): number {
  return band ? (band.upper - band.lower) / 2 : Number.NaN;
}

/** A 32-bit number from a text: FNV-1a, stirred once more so that neighbours have nothing in common. */
function mixed(text: string): number {
  let hash = 0x811c9dc5;
  for (const letter of text) {
    hash = Math.imul(hash ^ (letter.codePointAt(0) as number), 0x01000193);
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}
