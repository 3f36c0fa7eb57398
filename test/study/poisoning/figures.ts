import type {
  Attacked,
  AttackId,
  FewOwners,
  PoisoningReport,
  Welcomed,
} from "../../../client/atlas/bands/poisoning-report.ts";
import type { Tune } from "../../../model/tune.ts";
import { seeded } from "../../../seed-demo/random.ts";
import { alarming } from "../../../server/freeze.ts";
import { OWNERS_OF_SIZE } from "../../../server/new-keys.ts";
import { honestCrowd, tuneAt } from "../../server/crowd.ts";
import { bearer } from "../../server/stewards-atlas.ts";
import {
  type Attack,
  averages,
  HOUR_ms,
  type Lie,
  movedFrom,
  openWith,
  sendDue,
  submit,
  suffer,
} from "./attack.ts";

/** Unless an atlas is told otherwise. */
const WAITS_days = 6;
const WEEK_days = 7;

interface Attacking extends Attack {
  id: AttackId;
  honest: number;
  waits_days: number;
  goal_pct: number | null;
  atlases: number;
}

const alone = { honest: 10, clients: 1, days: WEEK_days, waits_days: WAITS_days, atlases: 10 };
const hundred = { ...alone, honest: 200, clients: 100, keys: 100, tunes: 100, atlases: 3 };

/** The goals are those that the waiting and the freezing were made for. */
const ATTACKING: Attacking[] = [
  { ...alone, id: "fresh keys", keys: 29, tunes: 29, goal_pct: 2 },
  { ...alone, id: "one key", keys: 1, tunes: 29, goal_pct: 2 },
  { ...alone, id: "many keys", keys: 300, tunes: 300, goal_pct: 2, atlases: 3 },
  { ...alone, id: "five weeks", keys: 145, tunes: 145, days: 35, goal_pct: null, atlases: 3 },
  {
    ...alone,
    id: "counted at once",
    keys: 29,
    tunes: 29,
    waits_days: 0,
    goal_pct: null,
    atlases: 3,
  },
  { ...alone, id: "three networks", clients: 3, keys: 29, tunes: 29, goal_pct: null, atlases: 3 },
  { ...hundred, id: "hundred", goal_pct: 5 },
];

const LIES: Lie[] = [4000, 300].flatMap((elevation_m) =>
  [0.65, 0.75, 0.85, 0.9, 1.1, 1.15, 1.25, 1.35].map((times) => ({ times, elevation_m })),
);
const SAMPLED: readonly AttackId[] = ["fresh keys", "many keys", "counted at once", "hundred"];
/** For a report's sample: one that is near enough to the truth to be published. */
const SAMPLE_LIE: Lie = { times: 0.9, elevation_m: 4000 };
/** While newcomers wait. */
const TOLD_MEANWHILE: Lie = { times: 0.75, elevation_m: 4000 };

async function attackOnce(attacking: Attacking, lie: Lie, seed: number) {
  const atlas = await openWith(attacking.honest, attacking.waits_days, seed);
  const suffered = await suffer(atlas, attacking, lie);
  await atlas.close();
  return suffered;
}

async function attacked(attacking: Attacking, seed: number): Promise<Attacked> {
  const all: { lie: Lie; moved_pct: number; held_back: boolean }[] = [];
  for (let k = 0; k < attacking.atlases; k++)
    for (const lie of LIES) all.push({ lie, ...(await attackOnce(attacking, lie, seed + k)) });
  all.sort((a, b) => a.moved_pct - b.moved_pct);
  const most = all.at(-1);
  const { id, honest, clients, keys, tunes, days, waits_days, atlases, goal_pct } = attacking;
  return {
    ...{ id, honest, clients, keys, tunes, days, waits_days, atlases },
    median_pct: hundredths(all[Math.floor(all.length / 2)]?.moved_pct ?? 0),
    most_pct: hundredths(most?.moved_pct ?? 0),
    worst: most?.lie ?? SAMPLE_LIE,
    held_back: all.filter(({ held_back }) => held_back).length,
    attacks: all.length,
    goal_pct,
  };
}

/** Newcomers over so many weeks. */
const WEEKS = 4;
/** Who is not in after so long is given up; so many are told of as such, days. */
const GIVEN_UP_days = 150;

interface Arriving {
  honest: number;
  a_week: number;
  attackers: number;
  atlases: number;
}

const ARRIVING: Arriving[] = [
  { honest: 10, a_week: 1, attackers: 0, atlases: 10 },
  { honest: 10, a_week: 3, attackers: 0, atlases: 5 },
  { honest: 30, a_week: 3, attackers: 0, atlases: 5 },
  { honest: 200, a_week: 10, attackers: 0, atlases: 1 },
  { honest: 10, a_week: 1, attackers: 1, atlases: 3 },
  { honest: 200, a_week: 10, attackers: 100, atlases: 1 },
];

/** @returns the days that each newcomer waited until the published fit knew the tune */
async function waits({ honest, a_week, attackers }: Arriving, seed: number): Promise<number[]> {
  const atlas = await openWith(honest, WAITS_days, seed);
  const { uniform } = seeded(seed);
  const tunes = honestCrowd(honest + a_week * WEEKS, seed + 1000).slice(honest);
  // Evenly, each at some hour of a turn.
  const turn_h = (WEEK_days * 24) / a_week;
  const at_h = tunes.map((_, n) => Math.floor(turn_h * (n + uniform())));
  const attack: Attack = {
    days: WEEK_days,
    clients: Math.max(1, attackers),
    ...(attackers > 1 ? { keys: attackers, tunes: attackers } : { keys: 300, tunes: 300 }),
  };
  const waiting: { id: string; receipt: string; since_h: number }[] = [];
  const days: number[] = [];
  let [sent, came] = [0, 0];
  for (let hour = 0; came < tunes.length || waiting.length > 0; hour++) {
    if (attackers > 0) sent = await sendDue(atlas, attack, TOLD_MEANWHILE, sent, hour);
    for (; came < tunes.length && (at_h[came] as number) <= hour; came++) {
      const tune = { ...tunes[came], contributor: `newcomer-number-${1000 + came}` };
      const one = await submit(atlas, tune as never, `192.0.${came}.1`);
      // Whoever looks mistyped is a steward's business.
      if (one.verdict === "accepted") waiting.push({ ...one, since_h: hour });
    }
    // Days end at midnight, and what is held back is published within six hours.
    if (hour % 6 === 0) {
      await atlas.fit.refresh();
      for (const one of [...waiting]) {
        const waited = (hour - one.since_h) / 24;
        if (!(await isIn(atlas.app, one)) && waited < GIVEN_UP_days) continue;
        days.push(waited);
        waiting.splice(waiting.indexOf(one), 1);
      }
    }
    atlas.pass(HOUR_ms);
  }
  await atlas.close();
  return days;
}

async function isIn(
  app: Awaited<ReturnType<typeof openWith>>["app"],
  { id, receipt }: { id: string; receipt: string },
): Promise<boolean> {
  const response = await app.request(`/api/tunes/${id}`, { headers: bearer(receipt) });
  const { counts_from, fit } = await response.json();
  return counts_from === null && fit.low !== "not in it";
}

async function welcomed(arriving: Arriving, seed: number): Promise<Welcomed> {
  const days: number[] = [];
  for (let k = 0; k < arriving.atlases; k++) days.push(...(await waits(arriving, seed + k)));
  days.sort((a, b) => a - b);
  const { honest, a_week, attackers } = arriving;
  return {
    ...{ honest, a_week, attackers },
    newcomers: days.length,
    median_days: tenths(days[Math.floor(days.length / 2)] ?? 0),
    most_days: tenths(days.at(-1) ?? 0),
    within_a_week: days.filter((one) => one <= WEEK_days).length,
  };
}

/** A size that few own, beside ten owners of another. */
const RARE_kW = 8;
const FEW_CROWDS = 12;
/** Of the smallest crowd to which one honest owner more is added, and of the largest. */
const [FEWEST_MORE, MOST_MORE] = [OWNERS_OF_SIZE, 7];

const rare = (tune: Tune, owner: string): Tune => ({
  ...tune,
  heater: { heat_kW: RARE_kW },
  contributor: `owner-of-a-rare-size-${owner}`,
});
const rareCrowd = (size: number, seed: number) =>
  honestCrowd(size, seed + 1000).map((tune, n) => rare(tune, String(n)));

/** What an atlas says of the rare size once all of these count. */
async function saysOfRare(crowd: readonly Tune[], seed: number) {
  const atlas = await openWith(alone.honest, 0, seed, crowd);
  const said = { rates: await averages(atlas, RARE_kW), fit: await atlas.fit.current() };
  await atlas.close();
  return said;
}

/** What the rare size's atlas says with a third owner who tells so many times the right rate. */
const withThird = (seed: number, { times, elevation_m }: Lie) =>
  saysOfRare(
    [...rareCrowd(OWNERS_OF_SIZE - 1, seed), rare(tuneAt(elevation_m, times, ""), "third")],
    seed,
  );

/** How far lies from one elevation move the average from where an honest third owner leaves it, and whether its band leaves that out. */
async function firstMoved(seed: number, elevation_m: number, lies: readonly Lie[]) {
  const honest = await withThird(seed, { times: 1, elevation_m });
  const moved: { pct: number; outside: boolean }[] = [];
  for (const lie of lies) {
    const { rates } = await withThird(seed, lie);
    const outside = rates.some(({ lower, upper }, n) => !within(honest.rates[n]?.Hz, lower, upper));
    moved.push({ pct: movedFrom(honest.rates, rates), outside });
  }
  return moved;
}

/** Of honest owners who come one by one, in how many cases the average moves so far that the version would be held back. */
async function oneMore(seed: number): Promise<boolean[]> {
  const crowd = rareCrowd(MOST_MORE + 1, seed);
  const held_back: boolean[] = [];
  let before = await saysOfRare(crowd.slice(0, FEWEST_MORE), seed);
  for (let size = FEWEST_MORE + 1; size <= crowd.length; size++) {
    const now = await saysOfRare(crowd.slice(0, size), seed);
    const alarms = alarming(now.fit, [{ fit: before.fit, let_through: false }], new Date());
    held_back.push(alarms.some(({ code, heat_kW }) => code === "moved" && heat_kW === RARE_kW));
    before = now;
  }
  return held_back;
}

/** What a size with few owners gets from a liar among its first ones, and from an honest owner more. */
export async function fewOwnersOf(seed: number): Promise<FewOwners> {
  const moved: Awaited<ReturnType<typeof firstMoved>> = [];
  const more: boolean[] = [];
  for (let k = 0; k < FEW_CROWDS; k++) {
    for (const [elevation_m, lies] of Map.groupBy(LIES, (lie) => lie.elevation_m))
      moved.push(...(await firstMoved(seed + k, elevation_m, lies)));
    more.push(...(await oneMore(seed + k)));
  }
  moved.sort((a, b) => a.pct - b.pct);
  return {
    first: OWNERS_OF_SIZE,
    lies: moved.length,
    median_pct: hundredths(moved[Math.floor(moved.length / 2)]?.pct ?? 0),
    most_pct: hundredths(moved.at(-1)?.pct ?? 0),
    outside_band: moved.filter(({ outside }) => outside).length,
    from: FEWEST_MORE,
    to: MOST_MORE,
    more: more.length,
    held_back: more.filter(Boolean).length,
  };
}

const within = (value = Number.NaN, lower: number, upper: number) =>
  lower <= value && value <= upper;

const tenths = (value: number) => Number(value.toFixed(1));
const hundredths = (value: number) => Number(value.toFixed(2));

/** What the first atlas alone says: enough to tell a report of other code. */
export async function sampleOf(seed: number): Promise<PoisoningReport["sample"]> {
  const attacks: number[] = [];
  for (const attacking of ATTACKING.filter(({ id }) => SAMPLED.includes(id)))
    attacks.push(hundredths((await attackOnce(attacking, SAMPLE_LIE, seed)).moved_pct));
  const newcomers = await waits(ARRIVING[0] as Arriving, seed);
  const few = await firstMoved(seed, SAMPLE_LIE.elevation_m, [SAMPLE_LIE]);
  return {
    attacks,
    newcomers: newcomers.map(tenths),
    few_owners: few.map(({ pct }) => hundredths(pct)),
  };
}

export async function attacksOf(seed: number, progress: (of: string) => void): Promise<Attacked[]> {
  const attacks: Attacked[] = [];
  for (const attacking of ATTACKING) {
    attacks.push(await attacked(attacking, seed));
    progress(JSON.stringify(attacks.at(-1)));
  }
  return attacks;
}

export async function newcomersOf(
  seed: number,
  progress: (of: string) => void,
): Promise<Welcomed[]> {
  const newcomers: Welcomed[] = [];
  for (const arriving of ARRIVING) {
    newcomers.push(await welcomed(arriving, seed));
    progress(JSON.stringify(newcomers.at(-1)));
  }
  return newcomers;
}
