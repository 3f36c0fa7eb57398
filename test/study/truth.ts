import { heaterOf, type Population, type Seeded, trueMean, tuned } from "./population.ts";

/** What errors and bands are judged against, whatever generator made the rows. */
export interface KnownTruth {
  /** The average tune at x = ln(density/1.225). */
  mean(x: number): number;
  /** One more heater, tuned once in each air. */
  another(random: Seeded, xs: readonly number[]): number[];
  /** One more heater tuned once, with its dose where the owner states it; missing where doses play no part. */
  one?(random: Seeded, x: number): { y: number; dose_uL?: number | undefined };
}

export function truthOf(of: Population | KnownTruth): KnownTruth {
  if ("another" in of) return of;
  return {
    mean: (x) => trueMean(of, x),
    another: (random, xs) => {
      const heater = heaterOf(random, of);
      return xs.map((x) => tuned(random, of, heater, x));
    },
  };
}
