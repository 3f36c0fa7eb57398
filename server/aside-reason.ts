import type { GroupFit } from "../model/fit/group.ts";
import type { FitRow } from "../model/fit/row.ts";
import { residual_pct } from "../model/residual.ts";
import type { AsideReason } from "./contract.ts";

/** Of a tune that screening held: what it was held for is its contributor's to know. */
export const HELD_AT_THE_DOOR: AsideReason = { code: "held_at_the_door", figures: {} };

/** Why a row that the published fit sets aside is: how far and which way it lies from the average, among how many other tunes. */
export function farOff(group: GroupFit, row: FitRow): AsideReason {
  const rate = (row.pump_Hz * 1000) / row.fan_rpm;
  const off_pct = residual_pct(group, row.density_kg_m3, rate);
  return {
    code: off_pct > 0 ? "far_richer" : "far_leaner",
    figures: {
      off_pct,
      others: group.tunes - 1,
      density_kg_m3: row.density_kg_m3,
      pump_Hz_per_krpm: rate,
      average_Hz_per_krpm: rate / (1 + off_pct / 100),
    },
  };
}
