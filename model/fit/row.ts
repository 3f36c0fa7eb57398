import { STANDARD_DENSITY_kg_m3 } from "../air.ts";
import type { End } from "../end.ts";
import { ln } from "../numerics/ln-exp.ts";
import { SETTINGS } from "./settings.ts";

/** How a tune was found: its minimum bracketed by a sweep, stopped before that, or left as the atlas suggested. */
export const FOUND = ["bracketed", "stopped early", "as suggested"] as const;
export type Found = (typeof FOUND)[number];

/** One end of one accepted tune, as the fit sees it. */
export interface FitRow {
  /** Whatever names the row to its reader: a tune's id, or the row number in a file. */
  row: string | number;
  /** Pseudonym of the owner: the unit of the model. */
  contributor: string;
  /** H3 cell of the site (any resolution), or any other name of a place; owners of one place and month are alike. */
  cell?: string | undefined;
  /** When it was tuned, or shared, "YYYY-MM". */
  month?: string | undefined;
  /** Heater size, kW. */
  heat_kW: number;
  end: End;
  /** Moist air density at the intake, kg/m³. */
  density_kg_m3: number;
  /** Standard deviation of its logarithm: no temperature, a vague elevation; 0 when all is given. */
  ln_density_sd?: number | undefined;
  /** Whether the temperature is the standard atmosphere's because nobody stated one. */
  temperature_assumed?: boolean | undefined;
  /** Pump pulses per second, Hz. */
  pump_Hz: number;
  /** Combustion fan speed, rpm. */
  fan_rpm: number;
  /** Fuel per pulse, µL. */
  dose_uL?: number | undefined;
  /** Final CO at this end, ppm, or the meter's floor when it showed nothing. */
  co_ppm?: number | undefined;
  co_below_ppm?: number | undefined;
  found?: Found | undefined;
  /** What the atlas suggested when the tune was sent, Hz per 1,000 rpm; none where the atlas had none to give. */
  suggested_Hz_per_krpm?: number | undefined;
}

/** In what steps a rate was set, as its digits tell: the usual one, a tenth of it, or none to speak of. */
export function stepOf(pump_Hz: number): number {
  const usual = SETTINGS.step_Hz;
  const isIn = (step: number) => Math.abs(pump_Hz / step - Math.round(pump_Hz / step)) < ROUNDING;
  return isIn(usual) ? usual : isIn(usual / 10) ? usual / 10 : 0;
}

/** A rate that was set in steps is a whole number of them but for the last bits. */
const ROUNDING = 1e-6;

/** Variance of ln(pump rate) that comes of setting it in steps: that of a rounding error, evenly spread over one (Sheppard 1898). */
export function stepVariance(pump_Hz: number, step_Hz = stepOf(pump_Hz)): number {
  return (step_Hz / pump_Hz) ** 2 / 12;
}

/** A row that cannot be read, with a reason a person can act on. */
export interface RejectedRow {
  row: string | number;
  heat_kW: number;
  end: End;
  reason: string;
}

/** x = ln(density/1.225). */
export function xOf(density_kg_m3: number): number {
  return ln(density_kg_m3 / STANDARD_DENSITY_kg_m3);
}

/** y = ln(Hz per 1,000 rpm). */
export function yOf({ pump_Hz, fan_rpm }: Pick<FitRow, "pump_Hz" | "fan_rpm">): number {
  return ln((pump_Hz * 1000) / fan_rpm);
}
