import { errorFunction } from "simple-statistics";
import { ENDS, type End } from "./end.ts";

/**
 * Tunes that agree more than heaters do. Heaters of one size differ by some percent even in the same air, so several owners who
 * agree to a percent at both powers are one hand as a rule, or people who copied the same answer.
 */

/** A tune as it is looked at here. */
export interface AlikeTune {
  id: string;
  contributor: string;
  /** Where votes are shared; null without a place. */
  place: string | null;
  /** Month in which it came in. */
  month: string;
  heat_kW: number;
  /** ln of its pump rate per fan speed against the average heater's in its air. */
  shift: Record<End, number>;
  /** The step in which its pump is set against its rate: rates that are set in coarse steps are alike more often. */
  step: Record<End, number>;
  /** Whether its contributor has waited for nothing yet: waits, or came this month. */
  isNew: boolean;
  /** Set as the atlas suggested: then it agrees with others who did the same. */
  as_suggested: boolean;
}

/** Tunes of one place, month and heater size that lie within {@link ALIKE} of one of them. */
export interface Cluster {
  place: string | null;
  month: string;
  heat_kW: number;
  /** Of the tune in the middle, ln. */
  shift: Record<End, number>;
  contributors: number;
  new_contributors: number;
  as_suggested: number;
  /** At most the probability that chance alone makes such a cluster among the owners of this place, month and size. */
  chance: number;
  /** Ids. */
  tunes: string[];
}

/** Alike is within so much at both powers, ln. */
export const ALIKE = 0.01;
/** Fewer owners that agree are a coincidence whatever the figures say. */
const OWNERS_LEAST = 3;
/** Shown where chance would make it less often than this in a place and month; at least so many of its owners are new. */
const CHANCE_MOST = 0.05;
const NEW_LEAST = 0.5;

/**
 * Clusters among tunes, the least probable first; each tune is in one at most.
 * @param sdOf standard deviation between heaters of a size at an end, ln
 */
export function clustersOf(
  tunes: readonly AlikeTune[],
  sdOf: (heat_kW: number, end: End) => number,
): Cluster[] {
  const together = new Map<string, AlikeTune[]>();
  for (const tune of tunes) {
    const key = `${tune.place} ${tune.month} ${tune.heat_kW}`;
    const group = together.get(key);
    if (group) group.push(tune);
    else together.set(key, [tune]);
  }
  return [...together.values()]
    .flatMap((group) => clustersTogether(group, sdOf))
    .toSorted((a, b) => a.chance - b.chance || b.contributors - a.contributors);
}

function clustersTogether(
  group: readonly AlikeTune[],
  sdOf: (heat_kW: number, end: End) => number,
): Cluster[] {
  const owners = ownersOf(group);
  if (owners < OWNERS_LEAST) return [];
  const { place, month, heat_kW } = group[0] as AlikeTune;
  const chanceAt = (near: number, { step }: AlikeTune) =>
    Math.min(...ENDS.map((end) => chanceOf(near, owners, sdOf(heat_kW, end), step[end])));
  const found: Cluster[] = [];
  let left = group.toSorted((a, b) => a.shift.low - b.shift.low);
  for (;;) {
    const { middle, near } = densest(left);
    const contributors = ownersOf(near);
    if (!middle || contributors < OWNERS_LEAST) return found;
    // At one end alone, whichever tells more: what makes a heater rich at one power makes it rich at the other.
    const chance = chanceAt(contributors, middle);
    if (chance > CHANCE_MOST) return found;
    const new_contributors = ownersOf(near.filter(({ isNew }) => isNew));
    if (new_contributors >= NEW_LEAST * contributors) {
      found.push({
        ...{ place, month, heat_kW, contributors, new_contributors, chance },
        shift: middle.shift,
        as_suggested: near.filter(({ as_suggested }) => as_suggested).length,
        tunes: near.map(({ id }) => id),
      });
    }
    const taken = new Set(near);
    left = left.filter((tune) => !taken.has(tune));
  }
}

const ownersOf = (tunes: readonly AlikeTune[]) =>
  new Set(tunes.map(({ contributor }) => contributor)).size;

/** The tune that most owners are near to, and the tunes near it. By the lowest power in order, so that few are looked at. */
function densest(sorted: readonly AlikeTune[]): { middle?: AlikeTune; near: AlikeTune[] } {
  let best: { middle?: AlikeTune; near: AlikeTune[] } = { near: [] };
  let most = 0;
  let first = 0;
  for (const middle of sorted) {
    while (((sorted[first] as AlikeTune).shift.low ?? 0) < middle.shift.low - ALIKE) first++;
    const near: AlikeTune[] = [];
    for (let k = first; k < sorted.length; k++) {
      const tune = sorted[k] as AlikeTune;
      if (tune.shift.low > middle.shift.low + ALIKE) break;
      if (Math.abs(tune.shift.high - middle.shift.high) <= ALIKE) near.push(tune);
    }
    const owners = near.length > most ? ownersOf(near) : 0;
    if (owners > most) [most, best] = [owners, { middle, near }];
  }
  return best;
}

/**
 * A bound on how often chance puts so many of these owners near one of them: each is within ALIKE of any point with at most
 * the probability p of being that near to the mean of a normal distribution, half a step further where rates are set in steps; the
 * others are independent (binomial), and any of the owners may be the one in the middle (Boole's inequality).
 */
export function chanceOf(near: number, owners: number, sd: number, step = 0): number {
  const p = errorFunction((ALIKE + step / 2) / (sd * Math.SQRT2));
  return Math.min(1, owners * atLeast(near - 1, owners - 1, p));
}

/** P(X ≥ k) of a binomial distribution. */
export function atLeast(k: number, n: number, p: number): number {
  if (k <= 0) return 1;
  if (p >= 1) return k <= n ? 1 : 0;
  // From the term at k on: each next one follows from the one before.
  let term = 1;
  for (let i = 1; i <= k; i++) term *= ((n - k + i) / i) * p;
  term *= (1 - p) ** (n - k);
  let sum = 0;
  for (let i = k; i <= n; i++) {
    sum += term;
    term *= ((n - i) / (i + 1)) * (p / (1 - p));
  }
  return Math.min(1, sum);
}
