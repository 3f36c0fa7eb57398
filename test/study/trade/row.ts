/** What the trade sends to the atlas, and what only the simulation knows about it. */

export type End = "low" | "high";
export const ENDS: readonly End[] = ["low", "high"];

export type Found = "bracketed" | "stopped early" | "as suggested";

/** What went wrong with a row although its owner meant well. See mistakes.ts for each. */
export const MISTAKES = [
  "feet as metres",
  "ends swapped",
  "fan doubled or halved",
  "Fahrenheit as Celsius",
  "QNH as station pressure",
  "never retuned",
  "careless",
] as const;
export type Mistake = (typeof MISTAKES)[number];

/** One end of one tune as the atlas would hold it. */
export interface TradeRow {
  row: string;
  contributor: string;
  cell?: string;
  /** YYYY-MM */
  month?: string;
  heat_kW: number;
  end: End;
  /** As the atlas computes it from what was stated: it carries the owner's mistakes and the weather nobody measured. */
  density_kg_m3: number;
  ln_density_sd: number;
  temperature_given: boolean;
  pump_Hz: number;
  /** As shown by the controller. */
  fan_rpm: number;
  co_ppm?: number;
  co_below_ppm?: number;
  /** The pump's nominal dose, where the owner knows and states it. */
  dose_uL?: number;
  found?: Found;
  /** What the atlas suggested, Hz per 1,000 rpm, if the owner looked it up. */
  suggested_Hz_per_krpm?: number;
  /** False for a lie or an invented row; true for everything that was meant well, mistaken or not. */
  honest: boolean;
  /** A mistake's name, or "copied" where the suggestion was set without a sweep and "half-way" where it pulled the owner. */
  mistake?: Mistake | "copied" | "half-way";
  /** The real density at the intake: never told to the atlas. */
  true_density_kg_m3: number;
}

/** ln of pump rate per 1,000 rpm: what the atlas compares. */
export const lnRatio = (row: { pump_Hz: number; fan_rpm: number }): number =>
  Math.log((1000 * row.pump_Hz) / row.fan_rpm);
