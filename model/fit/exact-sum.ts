/**
 * Sums that do not depend on the order of their terms. Each term is rounded to a multiple of a small power of
 * two; sums of such multiples are exact in double precision while they stay below 2⁵³ steps. So a fit of the
 * same rows is the same to the last bit, whatever their order, and a term can be taken out again without trace.
 */

/** 1.5 · 2²⁰: doubles about it are 2⁻³² apart, so adding it rounds to a multiple of that. */
const ROUNDER = 1.5 * 2 ** 20;

/** A value of less than 2¹⁹ rounded to 2⁻³², so that sums of up to two million units are exact. */
export function exactTerm(value: number): number {
  return value + ROUNDER - ROUNDER;
}
