/**
 * Sums that do not depend on the order of their terms. Each term is rounded to a multiple of a small power of
 * two; sums of such multiples are exact in double precision while they stay below 2⁵³ steps. So a fit of the
 * same rows is the same to the last bit, whatever their order, and a term can be taken out again without trace.
 */

/** 2⁻³²: far below what any of these quantities is known by, room for two million units. */
const STEP = 2 ** -32;
const STEPS_PER_UNIT = 2 ** 32;

/** A value rounded so that sums of many such values are exact. */
export function exactTerm(value: number): number {
  return Math.round(value * STEPS_PER_UNIT) * STEP;
}

/** Terms a sum must have room for without rounding. */
const ROOM_BITS = 24;

/**
 * Order-free sum of values of any magnitude: each is rounded to 2⁻²⁹ of the largest, which leaves exact room
 * for 2²⁴ terms.
 */
export function exactSum(values: Float64Array): number {
  let largest = 0;
  for (const value of values) largest = Math.max(largest, Math.abs(value));
  if (largest === 0) return 0;
  const step = 2 ** (Math.ceil(Math.log2(largest)) - (53 - ROOM_BITS));
  let steps = 0;
  for (const value of values) steps += Math.round(value / step);
  return steps * step;
}
