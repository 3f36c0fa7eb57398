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

export const CO_READINGS = ["co_ppm", "co_below_ppm", "co_above_ppm"] as const;
export type CoReadingKind = (typeof CO_READINGS)[number];

/** The one of the three that is given. */
export const kindOfReading = (reading: CoReading): CoReadingKind | undefined =>
  CO_READINGS.find((kind) => reading[kind] !== undefined);

/** The reading alone, of what holds more. */
export function coReadingOf(reading: CoReading): CoReading {
  const kind = kindOfReading(reading);
  return kind ? { [kind]: reading[kind] } : {};
}
