interface Interval {
  lower: number;
  upper: number;
}

/**
 * Whether the band of the average reaches beyond that of most heaters, as it does with no tunes or few. Filled it would
 * hide the other, so that it is drawn by its edges.
 */
export function averageReachesBeyond(average: Interval, heaters: Interval | undefined): boolean {
  return heaters !== undefined && (average.lower < heaters.lower || average.upper > heaters.upper);
}
