import { decimalsOfStep, toStep } from "../../model/rounding.ts";
import { format } from "../units.ts";

/** Decimals that tell one step of the controller from the next. */
export function decimalsOf(step_Hz: number): number {
  return Math.max(1, decimalsOfStep(step_Hz));
}

export function hz(rate: number, decimals: number): string {
  return format(toStep(rate, 10 ** -decimals), decimals);
}
