import type { Version } from "../db/fits.ts";
import type { Refusal } from "../db/refusal.ts";
import { STANDARD_DENSITY_kg_m3 } from "../model/air.ts";
import { averageAt } from "../model/fit/bands.ts";
import type { Alarm as AlarmCode, GroupFit, PublishedFit } from "../model/fit/group.ts";
import { exp, ln } from "../model/numerics/ln-exp.ts";
import { DENSEST_kg_m3, THINNEST_kg_m3 } from "../model/scaling-curve.ts";
import type { Alarm } from "./contract/steward-answers.ts";

/**
 * Whether a new version may be published. What somebody told the atlas may be wrong together with much else; then the last
 * good version answers until a steward has looked, or a week has passed.
 */

/** Alarms that somebody's doing may set off; a curve that bends is the model's own trouble as often. */
const FREEZING: readonly AlarmCode["code"][] = ["drift", "second_crowd", "copies"];
/**
 * An average of ten owners moves no further in a week by itself: a patient liar among them moves it by more. Among fewer owners an
 * honest one may move it by more as well, and a liar by much more.
 */
const MOST_MOVED = 0.02;
/** Where in x = ln(density/1.225): the average is a line, so it moves most at one end of what is published. */
const LOOKED_AT = [DENSEST_kg_m3, THINNEST_kg_m3].map((density_kg_m3) =>
  ln(density_kg_m3 / STANDARD_DENSITY_kg_m3),
);
const WEEK_ms = 7 * 86_400_000;

/**
 * Why a version is not published by itself; empty when it is.
 * @param before published ones that it is measured against, oldest first
 */
export function alarming(fit: PublishedFit, before: readonly Version[], now: Date): Alarm[] {
  const published = before.at(-1);
  if (!published) return [];
  const known = new Set(published.fit.alarms.map(nameOf));
  const news = fit.alarms.filter(
    (alarm) => FREEZING.includes(alarm.code) && !known.has(nameOf(alarm)),
  );
  return [...news, ...moved(fit, ofTheWeek(before, now))];
}

/** What an alarm is about: the same one in the next version is no news. */
export const nameOf = ({ code, heat_kW, end }: Alarm) => `${code} ${heat_kW} ${end}`;

/** From the version that answered a week ago on, or from the last one that was let through, if that is younger. */
function ofTheWeek(before: readonly Version[], now: Date): PublishedFit[] {
  const first = before.findLastIndex(({ let_through }) => let_through);
  const since = before.slice(Math.max(0, first)).map(({ fit }) => fit);
  const age_ms = ({ published_at }: PublishedFit) => now.getTime() - Date.parse(published_at ?? "");
  return since.slice(
    Math.max(
      0,
      since.findLastIndex((fit) => age_ms(fit) >= WEEK_ms),
    ),
  );
}

function moved(fit: PublishedFit, week: readonly PublishedFit[]): Alarm[] {
  return fit.groups.flatMap((group) => {
    const { heat_kW, end } = group;
    const before = week
      .flatMap(({ groups }) => groups)
      .find((g) => g.heat_kW === heat_kW && g.end === end);
    // Its size has just left the prior: whatever its owners found is far from that.
    if (!before) return [];
    const change = mostMoved(before, group);
    if (Math.abs(change) < MOST_MOVED) return [];
    const sentence = `The average tune would be ${(100 * Math.abs(change)).toFixed(1)} % ${change > 0 ? "richer" : "leaner"} than a week ago.`;
    return [
      { code: "moved", heat_kW, end, sentence, value: Math.abs(change), threshold: MOST_MOVED },
    ];
  });
}

/** The larger of the average's relative changes in the densest and in the thinnest air. */
function mostMoved(before: GroupFit, now: GroupFit): number {
  return LOOKED_AT.map(
    (x) => exp(averageAt(now, x).centre - averageAt(before, x).centre) - 1,
  ).reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
}

/** Whether a refusal is over: a steward said so, or nobody said anything in a week. */
export function isOver({ since, allowed, kept_back_on }: Refusal, now: Date): boolean {
  return allowed || now.getTime() - Date.parse(kept_back_on ?? since) >= WEEK_ms;
}
