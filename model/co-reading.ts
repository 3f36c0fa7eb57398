/**
 * What a CO meter showed, ppm: a figure, or only that it lies below the least or above the most that the meter can show.
 * One of the three, or none. Meters dilute by an unknown amount, so only readings of one meter at one spot compare.
 */
export interface CoReading {
  co_ppm?: number | undefined;
  /** Nothing was shown: below this. "Below 30" is not 0. */
  co_below_ppm?: number | undefined;
  /** Off the scale: above this. */
  co_above_ppm?: number | undefined;
}

/** What a tune can be left at: off its scale no meter has found a lowest reading. */
export const FINAL_CO = ["co_ppm", "co_below_ppm"] as const;
export type FinalCo = Pick<CoReading, (typeof FINAL_CO)[number]>;

export const CO_READINGS = [...FINAL_CO, "co_above_ppm"] as const;
export type CoReadingKind = (typeof CO_READINGS)[number];

/** Those of the three, or of some of them, that are given. */
export const kindsGiven = (
  reading: CoReading,
  among: readonly CoReadingKind[] = CO_READINGS,
): CoReadingKind[] => among.filter((kind) => reading[kind] !== undefined);

/** The one of the three that is given. */
export const kindOfReading = (reading: CoReading): CoReadingKind | undefined =>
  kindsGiven(reading)[0];

/** The reading alone, of what holds more. */
export function coReadingOf(reading: CoReading): CoReading {
  const kind = kindOfReading(reading);
  return kind ? { [kind]: reading[kind] } : {};
}

/** Whether it is a figure, or below what the meter can show. */
export const isFinalCo = (reading: CoReading): boolean => kindsGiven(reading, FINAL_CO).length > 0;

/** The final CO alone, of what holds more; nothing where it is none. */
export function finalCoOf(reading: CoReading): FinalCo {
  const { co_above_ppm: _, ...final } = coReadingOf(reading);
  return final;
}
