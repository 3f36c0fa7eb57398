import { type Seeded, seeded } from "../../../seed-demo/random.ts";

export type { Seeded };

/** A seed or a generator that already runs. Seeds beside each other must not give crowds that resemble each other. */
export function generator(seed: number | Seeded): Seeded {
  return typeof seed === "number" ? seeded(Math.imul(seed + 1, 0x9e3779b1) ^ 0x5bd1e995) : seed;
}

/** A generator of its own, so that what it is asked does not change what comes after elsewhere. */
export const offshoot = (random: Seeded): Seeded => seeded((random.uniform() * 4294967296) | 0);

export const between = (random: Seeded, [low, high]: readonly [number, number]): number =>
  low + (high - low) * random.uniform();

export const chance = (random: Seeded, share: number): boolean =>
  share > 0 && random.uniform() < share;

/** One of a list of shares (summing to 1), by index. */
export function pick(random: Seeded, shares: readonly number[]): number {
  let left = random.uniform();
  for (let i = 0; i < shares.length - 1; i++) {
    left -= shares[i] as number;
    if (left < 0) return i;
  }
  return shares.length - 1;
}

/**
 * Marks exactly round(share × n) of n places, every choice equally likely, for several exclusive kinds at once;
 * −1 elsewhere. Places before `from` stay free.
 */
export function assign(random: Seeded, n: number, shares: readonly number[], from = 0): Int8Array {
  const marks = new Int8Array(n).fill(-1);
  let at = n;
  // Fill from the end, then shuffle what may be marked.
  shares.forEach((share, kind) => {
    const count = Math.min(Math.round(share * (n - from)), at - from);
    marks.fill(kind, at - count, at);
    at -= count;
  });
  if (at === n) return marks;
  for (let i = n - 1; i > from; i--) {
    const j = from + Math.floor(random.uniform() * (i - from + 1));
    const kept = marks[i] as number;
    marks[i] = marks[j] as number;
    marks[j] = kept;
  }
  return marks;
}
