import type { End } from "../model/end.ts";

/** What is true in the demo's invented world: ln(Hz per 1,000 rpm) = intercept + slope · ln(density/1.225). */
export interface Truth {
  intercept: number;
  slope: number;
}

export const TRUTH: Record<2 | 5 | 8, Record<End, Truth>> = {
  2: {
    low: { intercept: Math.log(0.7), slope: 0.88 },
    high: { intercept: Math.log(0.98), slope: 0.9 },
  },
  5: {
    low: { intercept: Math.log(0.66), slope: 0.86 },
    high: { intercept: Math.log(0.95), slope: 0.89 },
  },
  8: {
    low: { intercept: Math.log(0.62), slope: 0.9 },
    high: { intercept: Math.log(0.9), slope: 0.87 },
  },
};

/** Spread between heaters and within one, in ln. */
export const BETWEEN = 0.08;
export const WITHIN = 0.05;
