import { STANDARD_DENSITY_kg_m3 } from "../air.ts";
import { ln } from "../ln-exp.ts";
import type { End } from "./group.ts";

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
