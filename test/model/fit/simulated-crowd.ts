import type { FitRow } from "../../../model/fit/row.ts";
import { lnRatio } from "../../study/airs.ts";
import { crowd as honestCrowd } from "../../study/crowd.ts";
import { withFakes as withLies } from "../../study/dishonest.ts";
import {
  FIXED,
  heaterOf,
  trueMean as meanOf,
  type Seeded,
  seeded,
  tuned,
} from "../../study/population.ts";
import { type SlipName, withSlips } from "../../study/slips.ts";

export { type Seeded, seeded };

/** The truth behind the simulated crowds: invented, near what the physics prior expects. */
export const TRUTH = FIXED;

export function trueMean(density_kg_m3: number): number {
  return meanOf(TRUTH, lnRatio(density_kg_m3));
}

/** ln(Hz per 1,000 rpm) of one more honest heater. */
export function oneMore(random: Seeded, density_kg_m3: number): number {
  return tuned(random, TRUTH, heaterOf(random, TRUTH), lnRatio(density_kg_m3));
}

/**
 * Honest contributors with one to three tunes each, as the study simulates them; a share of rows can carry a slip:
 * half or double, ten times or a tenth, elevation in feet, junk, in equal parts, if no others are named.
 */
export function crowd(
  random: Seeded,
  contributors: number,
  slips = 0,
  kinds?: readonly SlipName[],
): FitRow[] {
  return withSlips(random, honestCrowd(random, TRUTH, contributors), slips, kinds);
}

/** Adds contributors who agree on one lie: so many times the true pump rate, at 4,000 m or spread over high places. */
export function withFakes(
  random: Seeded,
  rows: FitRow[],
  { share, times, spread }: { share: number; times: number; spread: boolean },
): FitRow[] {
  const at_m = spread ? "high places" : 4000;
  return withLies(random, TRUTH, rows, { share, times, at_m });
}
