import { modeLrgb, modeRgb, useMode, wcagContrast } from "culori/fn";

/** Contrast of two colours, and the pairs that meet on the page. */

useMode(modeRgb);
useMode(modeLrgb);

/** From 1 for two alike to 21 for black on white, as WCAG 2.2 defines it. */
export const contrast = wcagContrast;

/** What must be told apart: text needs 4.5, marks and edges of controls need 3 (WCAG 2.2, 1.4.3 and 1.4.11). */
export const TEXT = 4.5;
export const MARK = 3;
/** What is said beside, in smaller or softer letters, is to be read outdoors: the enhanced contrast (WCAG 2.2, 1.4.6). */
export const ENHANCED = 7;

/** Custom properties without their dashes: what is drawn, on what, and the least contrast it needs. */
export const PAIRS: readonly [drawn: string, on: string, least: number][] = [
  ["ink", "paper", TEXT],
  ["ink", "sheet", TEXT],
  ["soft", "paper", ENHANCED],
  ["soft", "sheet", ENHANCED],
  ["green", "sheet", TEXT],
  ["sheet", "green", TEXT],
  ["ink", "band-outer", TEXT],
  ["warn-ink", "warn-paper", TEXT],
  ["warn-ink", "sheet", TEXT],
  ["alarm-ink", "alarm-paper", TEXT],
  ["focus", "paper", MARK],
  ["focus", "sheet", MARK],
  ["value", "sheet", MARK],
  ["band-mean", "sheet", MARK],
  ["line-2", "sheet", MARK],
  ["line-3", "sheet", MARK],
  ["line-4", "sheet", MARK],
  ["line-5", "sheet", MARK],
];
