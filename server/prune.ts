import type { Database } from "../db/database.ts";
import { findAnswersEmptied, keepAnswersEmptied } from "../db/facts.ts";
import { dropVersions, versionNames } from "../db/fits.ts";
import { emptyKeptAnswers } from "../db/kept-answers.ts";
import { LOOKED_BACK } from "../model/alarms.ts";

/** What grows for ever and is asked for ever less is thinned out by age. */

const DAY_ms = 86_400_000;
/** All versions of so many days are kept … */
const ALL_days = 2;
/** … then each day's last for so long, and each week's last for good. */
const DAILY_days = 60;
/** Answers kept for repeated submissions stay for so long at least. */
const ANSWERS_days = 31;

/**
 * Versions that need not be kept for their age. The newest ones, which alarms look back over, are kept at any age.
 * @param all oldest first, each named by its day and running number
 */
export function tooMany(all: readonly { number: number; version: string }[], now: Date): number[] {
  const lastOf = new Map<string, number>();
  const named = all.slice(0, Math.max(0, all.length - LOOKED_BACK)).map(({ number, version }) => {
    const period = periodOf(version, now);
    lastOf.set(period, number);
    return { number, period };
  });
  return named
    .filter(({ number, period }) => lastOf.get(period) !== number)
    .map(({ number }) => number);
}

/** Of each such period the last version is kept. */
function periodOf(version: string, now: Date): string {
  const day = version.slice(0, 10);
  const age_days = (now.getTime() - Date.parse(day)) / DAY_ms;
  if (age_days < ALL_days + 1) return version;
  return age_days < DAILY_days ? day : `week ${Math.floor(Date.parse(day) / (7 * DAY_ms))}`;
}

/** Thins out versions of the fit and answers kept for repeated submissions; done often it has little to do. */
export async function prune(db: Database, now: Date): Promise<void> {
  await dropVersions(db, tooMany(await versionNames(db), now));
  const before = new Date(now.getTime() - ANSWERS_days * DAY_ms).toISOString().slice(0, 7);
  // It passes over all keys, so it is done once a month.
  if ((await findAnswersEmptied(db)) === before) return;
  await emptyKeptAnswers(db, before);
  await keepAnswersEmptied(db, before);
}
