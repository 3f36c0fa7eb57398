import { ENDS } from "../../../model/end.ts";
import type { Tune } from "../../../model/tune.ts";
import { startTune } from "../../../server/contract.ts";
import { openTestAtlas, post, type TestAtlas } from "../../server/atlas.ts";
import { honestCrowd, tuneAt } from "../../server/crowd.ts";
import { TOKEN } from "../../server/stewards-atlas.ts";

export const HOUR_ms = 3_600_000;
const DAY_h = 24;
/** Writes a minute per client, as an atlas has it unless told otherwise. */
const WRITE_LIMIT = 30;
/** Where the average tune is looked at, m: lies told high up move it most there. */
const LOOKED_AT_m = [0, 1500, 3000, 4500, 6000];

/**
 * An atlas whose honest owners count already, longer ago than a week, so that it is used to them.
 * @param others tunes of further ones, of other heater sizes perhaps
 */
export async function openWith(
  honest: number,
  newKeyDays = 6,
  seed = 1,
  others: readonly Tune[] = [],
): Promise<TestAtlas> {
  const before = await openTestAtlas({ opened: "2026-11-10T12:00:00Z" });
  for (const tune of [...honestCrowd(honest, seed), ...others]) await post(before.app, tune);
  await before.stop();
  const { file } = before;
  const atlas = await openTestAtlas({
    ...{ file, newKeyDays },
    stewardToken: TOKEN,
    writeLimit: WRITE_LIMIT,
  });
  await atlas.fit.refresh();
  return atlas;
}

/** @throws when it is not taken */
export async function submit({ app }: TestAtlas, tune: Tune, client: string) {
  const response = await post(app, tune, { "X-Test-Client": client });
  const sent = await response.json();
  if (response.status !== 201) throw new Error(`${response.status}: ${sent.detail}`);
  return sent as { id: string; receipt: string; verdict: string; counts_from: string | null };
}

const SIZE_kW = 5;

/** The average heater at each elevation, both powers: its pump rate, and the band that should hold it in 95 of 100 cases, Hz. */
export async function averages(
  { app }: TestAtlas,
  heat_kW: number,
): Promise<{ Hz: number; lower: number; upper: number }[]> {
  const rates: { Hz: number; lower: number; upper: number }[] = [];
  for (const elevation_m of LOOKED_AT_m) {
    const response = await app.request(`/api/start?heat_kW=${heat_kW}&elevation_m=${elevation_m}`);
    const answer = startTune.parse(await response.json());
    for (const end of ENDS) {
      const { pump_Hz_exact: Hz, mean_band_Hz } = answer[end];
      rates.push({ Hz, lower: mean_band_Hz.lower, upper: mean_band_Hz.upper });
    }
  }
  return rates;
}

/** The furthest that an average has moved, %. */
export function movedFrom(
  before: readonly { Hz: number }[],
  now: readonly { Hz: number }[],
): number {
  const moves = now.map(({ Hz }, k) => Math.abs(100 * (Hz / (before[k]?.Hz ?? Hz) - 1)));
  return Math.max(...moves);
}

export interface Attack {
  days: number;
  tunes: number;
  keys: number;
  /** Each of a network of its own, in turn. */
  clients: number;
  /** The heater size that is lied about, and looked at; the honest crowd's otherwise. */
  heat_kW?: number;
}

/** What is told: so many times the right pump rate, from that elevation on. */
export interface Lie {
  times: number;
  elevation_m: number;
}

const lieOf = (
  n: number,
  { keys, heat_kW = SIZE_kW }: Attack,
  { times, elevation_m }: Lie,
): Tune => ({
  ...tuneAt(elevation_m + 10 * (n % 20), times, `attacker-key-${1000 + (n % keys)}`),
  heater: { heat_kW },
});

/** The tunes of an attack that are due by an hour of it: evenly over its days. */
export async function sendDue(
  atlas: TestAtlas,
  attack: Attack,
  lie: Lie,
  sent: number,
  hour: number,
): Promise<number> {
  const { tunes, clients, days } = attack;
  let n = sent;
  for (; n < tunes && n <= (hour * tunes) / (days * DAY_h); n++)
    await submit(atlas, lieOf(n, attack, lie), `10.0.${n % clients}.1`);
  return n;
}

/**
 * Attacks an atlas, whose fit is made again every hour.
 * @returns the furthest that an average moved at any time, %, and whether a version was held back
 */
export async function suffer(
  atlas: TestAtlas,
  attack: Attack,
  lie: Lie,
): Promise<{ moved_pct: number; held_back: boolean }> {
  const { heat_kW = SIZE_kW } = attack;
  const before = await averages(atlas, heat_kW);
  let [version, sent, moved_pct, held_back] = ["", 0, 0, false];
  for (let hour = 0; hour <= attack.days * DAY_h; hour++) {
    sent = await sendDue(atlas, attack, lie, sent, hour);
    await atlas.fit.refresh();
    held_back ||= atlas.fit.refusal !== null;
    const now = await atlas.fit.current();
    if (now.version !== version) {
      version = now.version;
      moved_pct = Math.max(moved_pct, movedFrom(before, await averages(atlas, heat_kW)));
    }
    atlas.pass(HOUR_ms);
  }
  return { moved_pct, held_back };
}
