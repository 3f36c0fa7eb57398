import {
  type BrokenPromise,
  OUTCOMES,
  PROMISES,
  type SweepFigures,
  type SweepReport,
} from "../../../client/atlas/bands/sweep-report.ts";
import { onStep, stepsFrom, stepsNear } from "../../../model/rounding.ts";
import type { SweepReading } from "../../../model/sweep/setup.ts";
import { co_ppm, type Heater, offMinimum_Hz } from "./heater.ts";
import { isBracketed, isTrulyBracketed, type Judged, judge } from "./judge.ts";
import { type Run, runOf } from "./runs.ts";

/** What is kept of a run: the readings themselves would be too many. */
export interface Tally {
  end: Run["end"];
  outcome: (typeof OUTCOMES)[number] | undefined;
  broken: BrokenPromise[];
  truly_bracketed: boolean;
  is_ordinary: boolean;
  unbracketed_by_hand: boolean;
  guided: Measures;
  hand: Measures;
}

interface Measures {
  off_Hz: number;
  above_lowest_ppm: number;
  settings: number;
  readings: number;
  minutes: number;
  flame_outs: number;
}

export function tallyOf(seed: number, run: number): Tally {
  const { end, heater, setup, meter, guided, hand, is_ordinary } = runOf(seed, run);
  const { resolution_ppm } = meter;
  const { present_Hz, step_Hz = 0.1 } = setup;
  const about: Judged = { end, present_Hz, step_Hz, resolution_ppm };
  const broken = judge(guided, about);
  const outcome = guided.end;
  const left_Hz = outcome && "pump_Hz" in outcome ? outcome.pump_Hz : present_Hz;
  const minimum_Hz = outcome?.kind === "found" ? outcome.minimum_Hz : left_Hz;
  const lowest_ppm = lowestSettable_ppm(heater, step_Hz);
  const read = guided.record.map(({ pump_Hz }) => pump_Hz);
  return {
    end,
    outcome: outcome?.kind,
    broken: PROMISES.filter((promise) => broken[promise]),
    truly_bracketed: outcome?.kind === "found" && isTrulyBracketed(heater, read, left_Hz),
    is_ordinary,
    unbracketed_by_hand: !isBracketed(hand.record, hand.minimum_Hz, about),
    guided: measuresOf(heater, guided, minimum_Hz, left_Hz, lowest_ppm),
    hand: measuresOf(heater, hand, hand.minimum_Hz, hand.minimum_Hz, lowest_ppm),
  };
}

/** The lowest CO at any rate that the controller can be set to and that burns. */
function lowestSettable_ppm(heater: Heater, step_Hz: number): number {
  const least = stepsFrom(heater.flame_out_Hz, step_Hz);
  const around = stepsNear(heater.minimum_Hz, step_Hz);
  const steps = [-1, 0, 1].map((k) => Math.max(least, around + k));
  return Math.min(...steps.map((k) => co_ppm(heater, onStep(k, step_Hz))));
}

function measuresOf(
  heater: Heater,
  search: { record: SweepReading[]; set_Hz: number[]; minutes: number },
  minimum_Hz: number,
  left_Hz: number,
  lowest_ppm: number,
): Measures {
  return {
    off_Hz: offMinimum_Hz(heater, minimum_Hz),
    above_lowest_ppm: co_ppm(heater, left_Hz) - lowest_ppm,
    settings: search.set_Hz.length,
    readings: search.record.length,
    minutes: search.minutes,
    flame_outs: search.record.filter(({ flame_out }) => flame_out).length,
  };
}

/** So many of the first runs are swept again by a test. */
export const SAMPLE = 300;

export function outcomesOf(tallies: readonly Tally[]): SweepReport["outcomes"] {
  const count = (kind: (typeof OUTCOMES)[number]) =>
    tallies.filter(({ outcome }) => outcome === kind).length;
  return Object.fromEntries(OUTCOMES.map((kind) => [kind, count(kind)])) as SweepReport["outcomes"];
}

/** The figures of many runs together. */
export function reportOf(tallies: readonly Tally[], code: string, seed: number): SweepReport {
  const count = (holds: (tally: Tally) => boolean) => tallies.filter(holds).length;
  const found = tallies.filter(({ outcome }) => outcome === "found");
  const most = (of: (measures: Measures) => number) =>
    tallies.reduce((least, { guided }) => Math.max(least, of(guided)), 0);
  const sample = tallies.slice(0, SAMPLE);
  const ends: [SweepReport["ends"][number]["end"], Tally[]][] = [
    ["both", found],
    ["low", found.filter(({ end }) => end === "low")],
    ["high", found.filter(({ end }) => end === "high")],
  ];
  return {
    code,
    seed,
    runs: tallies.length,
    outcomes: outcomesOf(tallies),
    sample: { runs: sample.length, outcomes: outcomesOf(sample) },
    broken: Object.fromEntries(
      PROMISES.map((promise) => [promise, count(({ broken }) => broken.includes(promise))]),
    ) as SweepReport["broken"],
    truly_bracketed: count(({ truly_bracketed }) => truly_bracketed),
    ordinary: {
      runs: count(({ is_ordinary }) => is_ordinary),
      found: count(({ is_ordinary, outcome }) => is_ordinary && outcome === "found"),
    },
    most: { settings: most(({ settings }) => settings), readings: most((m) => m.readings) },
    unbracketed_by_hand: count((tally) => tally.unbracketed_by_hand),
    ends: ends.map(([end, of]) => ({
      end,
      runs: of.length,
      guided: figuresOf(of.map(({ guided }) => guided)),
      hand: figuresOf(of.map(({ hand }) => hand)),
    })),
  };
}

function figuresOf(all: readonly Measures[]): SweepFigures {
  const within = (Hz: number) =>
    tenth((100 * all.filter(({ off_Hz }) => off_Hz <= Hz + 1e-9).length) / all.length);
  const at = (share: number, of: (measures: Measures) => number) => {
    const sorted = all.map(of).sort((a, b) => a - b);
    return tenth(sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0);
  };
  const flame_outs = all.reduce((sum, one) => sum + one.flame_outs, 0);
  return {
    within_0_1_Hz_pct: within(0.1),
    within_0_2_Hz_pct: within(0.2),
    above_lowest_ppm: at(0.5, ({ above_lowest_ppm }) => above_lowest_ppm),
    above_lowest_95_ppm: at(0.95, ({ above_lowest_ppm }) => above_lowest_ppm),
    settings_median: at(0.5, ({ settings }) => settings),
    readings_median: at(0.5, ({ readings }) => readings),
    minutes_median: at(0.5, ({ minutes }) => minutes),
    flame_outs_per_100: tenth((100 * flame_outs) / all.length),
  };
}

const tenth = (value: number) => Number(value.toFixed(1));
