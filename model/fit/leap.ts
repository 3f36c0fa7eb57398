import type { Joint } from "./joint.ts";

/** A leap goes at most so many times as far as one round … */
const FARTHEST_LEAP = 8;
/** … and none is taken that moves level or slope farther than this: there may be another crowd's line. */
export const LONGEST_LEAP = { a: 0.02, c: 0.06 };

/** a, c, s, within, the shares of feet, never re-tuned, background, that of steps, and the bands' scatter. */
export type Parameters = [number, number, number, number, number, number, number, number, number];

export function parametersOf({
  line,
  s,
  within,
  shares,
  step_background,
  scatter,
}: Joint): Parameters {
  const { feet, never_retuned, background } = shares;
  return [line.a, line.c, s, within, feet, never_retuned, background, step_background, scatter];
}

/**
 * Squared extrapolation of three states that follow each other (SQUAREM, scheme S3 of Varadhan & Roland 2008), for
 * the rounds of a mixture converge slowly. The next round is a plain one again.
 */
export function leap(
  joint: Joint,
  [first, second, third]: [Parameters, Parameters, Parameters],
): void {
  const step = first.map((p, i) => (second[i] as number) - p);
  const bend = step.map((d, i) => (third[i] as number) - (second[i] as number) - d);
  const length = Math.min(FARTHEST_LEAP, Math.max(1, norm(step) / norm(bend)));
  const to = first.map((p, i) => {
    const leapt = p + 2 * length * (step[i] as number) + length ** 2 * (bend[i] as number);
    // Beyond the line's two all are positive, and must stay so.
    return i < 2 ? leapt : Math.max((third[i] as number) / 4, leapt);
  });
  const [a, c, s, within, feet, never_retuned, background, step_background, scatter] =
    to as Parameters;
  const near = Math.abs(a - third[0]) <= LONGEST_LEAP.a && Math.abs(c - third[1]) <= LONGEST_LEAP.c;
  const possible = [feet, background, never_retuned, step_background].every((share) => share < 1);
  if (!near || !possible || !Number.isFinite(length)) return;
  joint.line = { a, c };
  joint.shares = { feet, never_retuned, background };
  Object.assign(joint, { s, within, step_background, scatter });
}

function norm(v: readonly number[]): number {
  return Math.sqrt(v.reduce((sum, d) => sum + d * d, 0));
}
