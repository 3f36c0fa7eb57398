import { between, pick, type Seeded } from "./draws.ts";

/**
 * How high people tune: homes mostly near the sea, some on plains and plateaux; trips over passes and up to high camps.
 * Common practice, no source; drawn per run.
 */
export interface Travel {
  homes: readonly [sea: number, plains: number, plateau: number];
  /** Share of tunes after the first that are made on a trip. */
  away: number;
  /** Of the trips: hills 300–1,500, passes 1,500–3,000, high camps to 4,800. */
  trips: readonly [number, number, number];
}

export const SEA_m = 300;
export const UP_HIGH_m = 1500;
const HIGHEST_m = 4800;

export function drawTravel(random: Seeded): Travel {
  const sea = between(random, [0.5, 0.7]);
  const high = between(random, [0.08, 0.2]);
  const hills = between(random, [0.25, 0.45]);
  return {
    homes: [sea, 0.9 - sea, 0.1],
    away: between(random, [0.55, 0.8]),
    trips: [hills, 1 - hills - high, high],
  };
}

export function homeElevation(random: Seeded, travel: Travel): number {
  const kind = pick(random, travel.homes);
  if (kind === 0) return seaElevation(random);
  return between(random, kind === 1 ? [SEA_m, 1200] : [1200, 2500]);
}

/** Crowded towards the shore. */
export const seaElevation = (random: Seeded): number => SEA_m * random.uniform() ** 2;

export function tripElevation(random: Seeded, travel: Travel): number {
  const kind = pick(random, travel.trips);
  if (kind === 0) return between(random, [SEA_m, UP_HIGH_m]);
  return kind === 1 ? between(random, [UP_HIGH_m, 3000]) : between(random, [3000, HIGHEST_m]);
}

export const highElevation = (random: Seeded, travel: Travel): number => {
  const [, passes, camps] = travel.trips;
  return random.uniform() * (passes + camps) < passes
    ? between(random, [UP_HIGH_m, 3000])
    : between(random, [3000, HIGHEST_m]);
};
