import { chance, type Seeded } from "./draws.ts";
import { fanSpeed } from "./heater.ts";
import type { Night } from "./nights.ts";
import type { Copies } from "./options.ts";
import type { Owner } from "./owner.ts";
import { ENDS, type End, type Mistake, type TradeRow } from "./row.ts";
import { fanMisread, type Stated, state } from "./stating.ts";
import { onStep } from "./sweeping.ts";
import type { Trade } from "./trade.ts";
import { bestTonight, finalCO, type Manner, type Tuned, tuneEnd } from "./tuning.ts";

/** One owner's tune of one night, from the heater to the rows that the atlas gets. */

export type CopyHow = "outright" | "half-way" | "properly";

export interface Sending {
  trade: Trade;
  random: Seeded;
  owner: Owner;
  key: string;
  night: Night;
  cell: string;
  honest?: boolean;
  /** The mistake made in this tune. */
  slip?: Mistake | undefined;
  /** The tune carried here unchanged by owners who never retune. */
  carried?: Record<End, Tuned> | undefined;
  copy?: { how: CopyHow; copies: Copies } | undefined;
  manner?: Manner;
}

export interface Sent {
  tuned: Record<End, Tuned>;
  /** False when the door would have questioned it, so that nothing was sent. */
  passed: boolean;
}

export function send(rows: TradeRow[], sending: Sending): Sent {
  const { random, owner, slip, night } = sending;
  const stated = state(random, owner.tells, night, slip);
  const low = tuneOrCopy(sending, "low", stated);
  const high = tuneOrCopy(sending, "high", stated);
  const tuned = { low, high };
  const misread =
    slip === "fan doubled or halved" ? fanMisread(random, low.fan_rpm, high.fan_rpm) : 1;
  const passed = stated.passes && misread > 0;
  if (passed) {
    for (const end of ENDS) {
      const from = slip === "ends swapped" ? (end === "low" ? "high" : "low") : end;
      rows.push(row(rows.length, sending, stated, end, from, tuned[from], misread));
    }
  }
  owner.set_Hz = { low: low.pump_Hz, high: high.pump_Hz };
  return { tuned, passed };
}

interface Looked extends Tuned {
  suggested?: number;
  copied?: "copied" | "half-way";
}

function tuneOrCopy(sending: Sending, end: End, stated: Stated): Looked {
  const { random, trade, owner, night, carried, copy, manner } = sending;
  if (carried) {
    const { pump_Hz, fan_rpm } = carried[end];
    const best_Hz = bestTonight(random, trade, owner, end, night, fan_rpm);
    return { pump_Hz, fan_rpm, best_Hz, found: undefined };
  }
  if (!copy || !stated.passes) return tuneEnd(random, trade, owner, end, night, manner);
  const fan_rpm = fanSpeed(owner.heater, end, night.x);
  const { heater, tells } = owner;
  const suggestion = copy.copies.suggest({
    heat_kW: heater.size.heat_kW,
    end,
    density_kg_m3: stated.density_kg_m3,
    ln_density_sd: stated.ln_density_sd,
    fan_rpm,
    ...(tells.dose ? { dose_uL: heater.nominal_uL } : {}),
  });
  if (suggestion === null) return tuneEnd(random, trade, owner, end, night, manner);
  const suggested = (1000 * suggestion) / fan_rpm;
  const admits = chance(random, copy.copies.admitted ?? 0.5);
  if (copy.how === "outright") {
    const best_Hz = bestTonight(random, trade, owner, end, night, fan_rpm);
    const off = suggestion / best_Hz - 1;
    // A heater that smokes or goes out makes even a copier tune.
    if (off > -0.2 && off < 0.45) {
      const found = admits ? "as suggested" : undefined;
      return { pump_Hz: onStep(suggestion), fan_rpm, best_Hz, found, suggested, copied: "copied" };
    }
  }
  const own = tuneEnd(random, trade, owner, end, night, "properly", suggestion);
  if (copy.how !== "half-way") return { ...own, suggested };
  const pump_Hz = onStep(Math.sqrt(own.pump_Hz * suggestion));
  const found = admits ? "stopped early" : undefined;
  return { ...own, pump_Hz, found, suggested, copied: "half-way" };
}

function row(
  n: number,
  { random, owner, key, night, cell, honest = true, slip, carried }: Sending,
  stated: Stated,
  end: End,
  from: End,
  tuned: Looked,
  misread: number,
): TradeRow {
  const { tells, heater, meter } = owner;
  const told: TradeRow = {
    row: `r${n}`,
    contributor: key,
    cell,
    month: night.month,
    heat_kW: heater.size.heat_kW,
    end,
    density_kg_m3: stated.density_kg_m3,
    ln_density_sd: stated.ln_density_sd,
    temperature_given: stated.temperature_given,
    pump_Hz: tuned.pump_Hz,
    fan_rpm: tuned.fan_rpm * misread,
    honest,
    true_density_kg_m3: night.density_kg_m3,
  };
  if (tells.co) {
    const ppm = finalCO(random, owner, from, tuned.pump_Hz, tuned.best_Hz);
    if (ppm <= meter.floor_ppm) told.co_below_ppm = meter.floor_ppm;
    else told.co_ppm = ppm;
  }
  if (tells.dose) told.dose_uL = heater.nominal_uL;
  if (tells.found && tuned.found) told.found = tuned.found;
  if (tuned.copied && tuned.found) told.found = tuned.found;
  if (tuned.suggested !== undefined) told.suggested_Hz_per_krpm = tuned.suggested;
  const wrong = slip ?? (carried ? "never retuned" : tuned.copied);
  if (wrong) told.mistake = wrong;
  return told;
}
