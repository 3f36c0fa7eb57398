import stdlibLn from "@stdlib/math-base-special-ln";

/**
 * Logarithm, exponential and powers with the same digits on every engine. The language leaves the last digit of its
 * own Math.log, Math.exp and ** to the engine, and engines use that: one version of V8 differs from the next in about
 * one logarithm in ten. These are made of +, −, × and ÷ alone, which IEEE 754 fixes to the last bit, so a fit made
 * again elsewhere can be compared digit by digit.
 */
export const ln: (x: number) => number = stdlibLn;

/** log₂ e, and ln 2 in two parts of which the first times a whole number is exact. */
const LOG2_E = Math.LOG2E;
const LN2_HIGH = 0.693_145_751_953_125;
const LN2_LOW = 0.000_001_428_606_820_309_417_3;
/** Powers of two from 2^−1075 (which is 0) to 2^1023, by exponent + 1075. */
const POWERS_OF_TWO = Float64Array.from({ length: 2099 }, (_, i) => {
  let power = 1;
  for (let k = 0; k < Math.abs(i - 1075); k++) power *= i < 1075 ? 0.5 : 2;
  return power;
});

/**
 * e^x, within two units of the last digit, by the rational approximation of Moshier's Cephes library (exp.c): the
 * estimator's likelihood spends most of its time here, and this takes a third of the time of a general library's.
 */
export function exp(x: number): number {
  if (!(x > -744 && x < 709)) return x < 0 ? 0 : x > 0 ? Number.POSITIVE_INFINITY : x + 1;
  const n = Math.floor(LOG2_E * x + 0.5);
  const r = x - n * LN2_HIGH - n * LN2_LOW;
  const rr = r * r;
  const p = r * ((0.000_126_177_193_074_810_58 * rr + 0.030_299_440_770_744_195) * rr + 1);
  const q =
    ((0.000_003_001_985_051_386_644_6 * rr + 0.002_524_483_403_496_841) * rr +
      0.227_265_548_208_155_03) *
      rr +
    2;
  return (1 + (2 * p) / (q - p)) * (POWERS_OF_TWO[n + 1075] as number);
}

/** A positive base to any power. */
export function power(base: number, exponent: number): number {
  return exp(exponent * ln(base));
}
