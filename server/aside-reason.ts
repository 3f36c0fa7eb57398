import type { FitRow } from "../model/fit/row.ts";
import type { Aside } from "../model/fit/standing.ts";
import type { AsideReason } from "./contract/scaling.ts";

/** Of a tune that screening held: what it was held for is its contributor's to know. */
export const HELD_AT_THE_DOOR: AsideReason = { code: "held_at_the_door", figures: {} };

/** Why a row that the published fit sets aside is: how far and which way it lies from the average, among how many other owners. */
export function farOff({ code, times, others }: Aside, row: FitRow): AsideReason {
  const rate = (row.pump_Hz * 1000) / row.fan_rpm;
  return {
    code,
    figures: {
      off_pct: 100 * (times - 1),
      others,
      density_kg_m3: row.density_kg_m3,
      pump_Hz_per_krpm: rate,
      average_Hz_per_krpm: rate / times,
    },
  };
}
