import { between, type Seeded } from "./draws.ts";
import { anyMonth, type Night, night } from "./nights.ts";
import type { Lies } from "./options.ts";
import type { Owner } from "./owner.ts";
import { ENDS, type TradeRow } from "./row.ts";
import { state } from "./stating.ts";
import { onStep } from "./sweeping.ts";
import type { Trade } from "./trade.ts";
import { highElevation, seaElevation } from "./travel.ts";

/** How the liars of a run lie: where they are, which of their tunes are false, and by how much. */
export interface Lying {
  /** The n-th tune's elevation, given where an honest owner would be. */
  elevation(random: Seeded, tune: number, usual_m: number): number;
  isFalse(tune: number): boolean;
  /** The factor on the pump rate that one liar tells. */
  drawFactor(random: Seeded): number;
  atLeastTwo: boolean;
  /** Set where rows are invented rather than bent: the camp they all name. */
  invented?: { night: Night; cell: string };
}

export function liarNights(random: Seeded, trade: Trade, { where, factor }: Lies): Lying {
  const { travel, climate } = trade;
  const lying: Lying = {
    elevation: (r, tune, usual_m) => {
      if (where === "everywhere") return usual_m;
      if (where === "sea" || (where === "sea true, high false" && tune === 0)) {
        return seaElevation(r);
      }
      return highElevation(r, travel);
    },
    isFalse: (tune) => where !== "sea true, high false" || tune > 0,
    drawFactor: (r) => (typeof factor === "number" ? factor : between(r, factor)),
    atLeastTwo: where === "sea true, high false",
  };
  if (where !== "one place") return lying;
  const camp = night(random, climate, highElevation(random, travel), anyMonth(random), false);
  return { ...lying, invented: { night: camp, cell: "camp-0" } };
}

/** One tune that nobody made: round fan speeds, an agreed ratio at an agreed camp, a fine CO. */
export function invented(
  rows: TradeRow[],
  trade: Trade,
  random: Seeded,
  owner: Owner,
  key: string,
  lying: Lying,
): void {
  const camp = lying.invented;
  if (!camp) return;
  const { size, nominal_uL } = owner.heater;
  const stated = state(random, owner.tells, camp.night);
  const typical = trade.typical_Hz(size, nominal_uL);
  const factor = lying.drawFactor(random) * (camp.night.density_kg_m3 / 1.225);
  for (const end of ENDS) {
    const fan_rpm = Math.round(size.usual_rpm[end] / 100) * 100;
    const pump_Hz = (typical[end] * factor * fan_rpm) / size.usual_rpm[end];
    rows.push({
      row: `r${rows.length}`,
      contributor: key,
      cell: camp.cell,
      month: camp.night.month,
      heat_kW: size.heat_kW,
      end,
      density_kg_m3: stated.density_kg_m3,
      ln_density_sd: stated.ln_density_sd,
      temperature_given: stated.temperature_given,
      pump_Hz: onStep(pump_Hz * Math.exp(0.01 * random.normal())),
      fan_rpm,
      co_ppm: Math.round(between(random, [7, 16])),
      found: "bracketed",
      honest: false,
      true_density_kg_m3: camp.night.density_kg_m3,
    });
  }
}
