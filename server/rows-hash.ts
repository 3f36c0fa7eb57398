import { createHash } from "node:crypto";
import type { FitRow } from "../model/fit/row.ts";

const MODULUS = 1n << 256n;

/**
 * A hash of the rows behind a fit that does not depend on their order: the sum, modulo 2²⁵⁶, of the SHA-256 of each row.
 * Anyone can tell whether two fits rest on the same data.
 */
export class RowsHash {
  #sum = 0n;

  add(row: FitRow): void {
    const digest = createHash("sha256").update(lineOf(row)).digest("hex");
    this.#sum = (this.#sum + BigInt(`0x${digest}`)) % MODULUS;
  }

  toString(): string {
    return this.#sum.toString(16).padStart(64, "0");
  }
}

/** All that the fit sees of a row; not its name, which differs between the atlas and a file. */
function lineOf(r: FitRow): string {
  return [
    r.contributor,
    r.cell ?? "",
    r.month ?? "",
    r.heat_kW,
    r.end,
    r.density_kg_m3,
    r.ln_density_sd ?? 0,
    r.pump_Hz,
    r.fan_rpm,
    r.co_ppm ?? "",
    r.co_below_ppm ?? "",
    r.temperature_assumed ? 1 : 0,
    r.dose_uL ?? "",
    r.found ?? "",
    r.suggested_Hz_per_krpm ?? "",
  ].join(",");
}
