/** Tukey's bisquare: full voice near zero, none beyond c scales (Beaton & Tukey 1974). */
export function bisquareWeight(scaled: number, c: number): number {
  const u = (scaled / c) ** 2;
  return u < 1 ? (1 - u) ** 2 : 0;
}

/** Loss of the bisquare, ½r² near zero and flat at c²/6 beyond c scales. */
export function bisquareLoss(scaled: number, c: number): number {
  const u = (scaled / c) ** 2;
  return (c * c * (u < 1 ? 1 - (1 - u) * (1 - u) * (1 - u) : 1)) / 6;
}
