import stdlibExp from "@stdlib/math-base-special-exp";
import stdlibLn from "@stdlib/math-base-special-ln";

/**
 * Logarithm, exponential and powers with the same digits on every engine. The language leaves the last digit of its
 * own Math.log, Math.exp and ** to the engine, and engines use that: one version of V8 differs from the next in about
 * one logarithm in ten. These are made of +, −, × and ÷ alone, which IEEE 754 fixes to the last bit, so a fit made
 * again elsewhere can be compared digit by digit.
 */
export const ln: (x: number) => number = stdlibLn;
export const exp: (x: number) => number = stdlibExp;

/** A positive base to any power. */
export function power(base: number, exponent: number): number {
  return exp(exponent * ln(base));
}
