import { format } from "../units.ts";

/** Decimals that tell one step of the controller from the next. */
export function decimalsOf(step_Hz: number): number {
  return Math.max(1, `${Number(step_Hz.toFixed(6))}`.split(".")[1]?.length ?? 0);
}

export function hz(rate: number, decimals: number): string {
  return format(rate, decimals);
}
