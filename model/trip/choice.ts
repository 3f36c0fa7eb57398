import { onStep, stepsUpTo, withoutDust } from "../rounding.ts";
import {
  type ExpectedAt,
  type MixtureWindow,
  roomNeeded,
  type Span,
  type Steps,
  stepsWithRoom,
  worstShift,
} from "./window.ts";

/** Between which steps the pump may be set over some stops, at one end. */
export interface Choice {
  /** The pump's smallest step. */
  step_Hz: number;
  span: Span;
  /** Within the window at every stop with room. */
  roomy: Steps;
  /** Within it at every stop; where the steps are too coarse for that at a stop, the nearest one there. */
  allowed: Steps;
  /** Whether the steps are too coarse somewhere: no one of them is within the window at some stop. */
  too_coarse: boolean;
}

/** At one stop. */
export function choiceAt(expected: ExpectedAt, window: MixtureWindow, step_Hz: number): Choice {
  // Two computations of one rate must not part at half a step.
  const at = { ...expected, pump_Hz: withoutDust(expected.pump_Hz) };
  const within = stepsWithRoom(at, window, 0, step_Hz);
  const too_coarse = isNone(within);
  const span = { least_Hz: at.pump_Hz, most_Hz: at.pump_Hz };
  const nearest = leastShift(span, ANY, step_Hz);
  return {
    step_Hz,
    span,
    roomy: stepsWithRoom(at, window, roomNeeded(at.unsure_pct), step_Hz),
    allowed: too_coarse ? { from: nearest, to: nearest } : within,
    too_coarse,
  };
}

/** Over the stops of both. */
export function together(a: Choice, b: Choice): Choice {
  return {
    step_Hz: a.step_Hz,
    span: {
      least_Hz: Math.min(a.span.least_Hz, b.span.least_Hz),
      most_Hz: Math.max(a.span.most_Hz, b.span.most_Hz),
    },
    roomy: common(a.roomy, b.roomy),
    allowed: common(a.allowed, b.allowed),
    too_coarse: a.too_coarse || b.too_coarse,
  };
}

/** Whether no pump rate serves all the stops. */
export function isEmpty({ allowed }: Choice): boolean {
  return isNone(allowed);
}

/**
 * The pump rate, Hz, to be set. Where all stops expect the same it is the one that is set there alone, the nearest, so that
 * no stop has two start rates. Else one with room in the window, or one within it, and of these the one whose worst shift is
 * the least; where none is within, the least worst shift of all.
 */
export function settableIn(choice: Choice): number {
  return onStep(stepsChosen(choice), choice.step_Hz);
}

/** How a plan with that rate ranks, from better to worse. A start rate where all stops expect the same is as good as can be. */
export function rankOf(choice: Choice): number {
  const steps = stepsChosen(choice);
  if (choice.too_coarse || !isAmong(steps, choice.allowed)) return 2;
  return isAlike(choice) || isAmong(steps, choice.roomy) ? 0 : 1;
}

function stepsChosen(choice: Choice): number {
  const { span, roomy, allowed, step_Hz } = choice;
  const among = [roomy, allowed].find((steps) => !isNone(steps)) ?? ANY;
  const least = leastShift(span, among, step_Hz);
  if (!isAlike(choice)) return least;
  const nearest = leastShift(span, ANY, step_Hz);
  return isAmong(nearest, allowed) ? nearest : least;
}

const ANY: Steps = { from: 1, to: Number.POSITIVE_INFINITY };

/**
 * Of some steps the one whose worst shift over a span is the least; the leaner where two shift alike. Only the two
 * outermost stops count: rich by as much where least is expected as lean where most is, p/least − 1 = 1 − p/most, is their
 * harmonic mean, and the worst shift falls towards it from both sides.
 */
function leastShift(span: Span, { from, to }: Steps, step_Hz: number): number {
  const best_Hz = 2 / (1 / span.least_Hz + 1 / span.most_Hz);
  const below = stepsUpTo(best_Hz, step_Hz);
  const [a, b] = [below, below + 1].map((steps) => Math.min(to, Math.max(from, steps))) as [
    number,
    number,
  ];
  const worst = (steps: number) => worstShift(onStep(steps, step_Hz), span);
  return withoutDust(worst(b)) < withoutDust(worst(a)) ? b : a;
}

function common(a: Steps, b: Steps): Steps {
  return { from: Math.max(a.from, b.from), to: Math.min(a.to, b.to) };
}

function isAlike({ span }: Choice): boolean {
  return span.least_Hz === span.most_Hz;
}

function isAmong(steps: number, { from, to }: Steps): boolean {
  return steps >= from && steps <= to;
}

function isNone({ from, to }: Steps): boolean {
  return from > to;
}
