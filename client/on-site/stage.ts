import { type CoReading, coReadingOf, isFinalCo } from "../../model/co-reading.ts";
import type { End } from "../../model/end.ts";
import { foundBy, type Outcome, type SetRate, type Wait } from "../../model/sweep/answer.ts";
import {
  type CheckExpectation,
  fullPowerOf,
  judgeCheck,
  type MatchedEnd,
  middleOf,
} from "../../model/sweep/middle.ts";
import { type Picture, pictureOf } from "../../model/sweep/picture.ts";
import type { SweepReading, SweepSetup } from "../../model/sweep/setup.ts";
import { nextStep } from "../../model/sweep/sweep.ts";
import { type Plan, setupOf } from "./plan.ts";
import { isCheck, isEnd, type Run, runOf, type StopReason } from "./run.ts";
import type { EndResult, Session } from "./session.ts";

/** From lighting until readings mean something (our own working value). */
export const WARM_UP_s = 600;
/** From one power to another the heater takes this long at least (our own working value). */
const CHANGE_s = 120;
const CHECK_LAGS = 4;

/** What the pump is to do and when to read: the same for a sweep and a check. */
export interface Waiting {
  /** The pump has still to be set; otherwise the meter is waited for. */
  toSet: boolean;
  pump_Hz: number;
  wait_s: number;
  /** When to read, ms of the wall clock; missing while the pump has still to be set. */
  due_at?: number;
}

/** What is to be shown now. */
export type Stage =
  | { is: "checklist" }
  | { is: "warm-up"; due_at: number }
  | { is: "relight"; lighting: boolean; attempts: number; richer_Hz?: number }
  | ({ is: "sweep"; answer: SetRate | Wait } & AtEnd & Waiting)
  | ({ is: "ended"; answer: Outcome; result?: EndResult } & AtEnd)
  | ({ is: "check"; which: "middle" | "full"; expected: CheckExpectation } & CheckedAs & Waiting)
  | { is: "done" }
  | { is: "stopped"; why: StopReason };

export interface AtEnd {
  end: End;
  readings: SweepReading[];
  picture: Picture;
}

interface CheckedAs {
  reading?: CoReading;
  verdict?: ReturnType<typeof judgeCheck>;
}

/** The stage that a sweep is in; the same presses, the same stage. */
export function stageOf(session: Session, run: Run = runOf(session)): Stage {
  const { phase } = run;
  if (run.stopped) return { is: "stopped", why: run.stopped };
  if (run.out) return relightAt(session, run);
  if (isEnd(phase)) return sweepAt(session, run, phase);
  if (isCheck(phase)) return checkAt(session, run, phase);
  if (phase === "warm-up") return { is: phase, due_at: (run.lit_at ?? 0) + WARM_UP_s * 1000 };
  return { is: phase };
}

function relightAt({ plan }: Session, run: Run): Stage {
  const { phase, readings, attempts, out } = run;
  const stage = { is: "relight" as const, lighting: out?.lighting ?? false, attempts };
  if (!isEnd(phase)) return stage;
  const answer = nextStep(sweepSetup(plan, run, phase), readings[phase]);
  if (answer.kind === "stopped") return { is: "stopped", why: "flame" };
  return answer.kind === "set" ? { ...stage, richer_Hz: answer.pump_Hz } : stage;
}

function sweepAt({ plan }: Session, run: Run, end: End): Stage {
  const readings = run.readings[end];
  const setup = sweepSetup(plan, run, end);
  const answer = nextStep(setup, readings);
  const at = { end, readings, picture: pictureOf(setup, readings) };
  if (answer.kind === "stopped") return { is: "stopped", why: "flame" };
  if (answer.kind !== "set" && answer.kind !== "wait") {
    const result = resultOf(answer);
    return { is: "ended", answer, ...(result && { result }), ...at };
  }
  const { set, read_at } = run;
  const least_s = answer.kind === "set" && answer.why === "start" ? CHANGE_s : 0;
  const wait_s = Math.max(answer.wait_s, least_s);
  const toSet = answer.kind === "set" && !set?.fresh;
  const from = set?.fresh ? set.at : (read_at ?? 0);
  return {
    is: "sweep",
    answer,
    ...at,
    toSet,
    pump_Hz: answer.pump_Hz,
    wait_s,
    ...(!toSet && { due_at: from + wait_s * 1000 }),
  };
}

function sweepSetup(plan: Plan, run: Run, end: End): SweepSetup {
  return setupOf(plan, end, {
    present_Hz: run.present_Hz[end],
    flame_outs_Hz: run.flame_outs_Hz[end],
    relights_used: run.attempts,
  });
}

/** What an end is left at; undefined where the meter told nothing that could be noted. */
function resultOf(answer: Outcome): EndResult | undefined {
  if (!isFinalCo(answer)) return undefined;
  const { pump_Hz, flame_out_Hz, settled } = answer;
  const shown = coReadingOf(answer);
  const left = { pump_Hz, ...shown, flame_out_Hz, settled, found: foundBy(answer) };
  if (answer.kind !== "found") return left;
  const { minimum_Hz, between_Hz, flat_Hz } = answer;
  const sweep = {
    minimum_Hz,
    lower_Hz: between_Hz.lower,
    upper_Hz: between_Hz.upper,
    flat_lower_Hz: flat_Hz.lower,
    flat_upper_Hz: flat_Hz.upper,
  };
  return { ...left, sweep };
}

function checkAt(session: Session, run: Run, which: "middle" | "full"): Stage {
  const { meter } = session.plan;
  const expected = expectationOf(session, run, which);
  const wait_s = Math.max(CHANGE_s, CHECK_LAGS * meter.lag_s);
  const done = run.checks[which];
  const reading = done === "skipped" ? undefined : done;
  return {
    is: "check",
    which,
    expected,
    pump_Hz: expected.pump_Hz,
    wait_s,
    toSet: !run.set,
    ...(run.set && { due_at: run.set.at + wait_s * 1000 }),
    ...(reading && { reading, verdict: judgeCheck(expected, reading) }),
  };
}

/** What to expect at a check, from the ends as they were left. */
export function expectationOf(
  { plan }: Session,
  { results }: Run,
  which: "middle" | "full",
): CheckExpectation {
  const matched = (end: End): MatchedEnd => {
    const result = results[end] as EndResult;
    const { pump_Hz } = result;
    return { pump_Hz, fan_rpm: plan.ends[end].fan_rpm, ...coReadingOf(result) };
  };
  return which === "middle"
    ? middleOf(matched("low"), matched("high"), plan.meter)
    : fullPowerOf(matched("high"), plan.meter);
}
