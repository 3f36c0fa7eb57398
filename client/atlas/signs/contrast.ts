/** Contrast of two colours as WCAG 2.2 defines it, and the pairs that meet on the page. */

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

/** From 1 for two alike to 21 for black on white; colours as "#rrggbb". */
export function contrast(one: string, other: string): number {
  const [lighter, darker] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [
    number,
    number,
  ];
  return (lighter + 0.05) / (darker + 0.05);
}

/** Relative luminance of an sRGB colour, 0 to 1. */
function luminance(colour: string): number {
  const channel = (at: number) => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}
