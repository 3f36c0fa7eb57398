import type { GivenAir } from "../../model/air.ts";
import { recall, remember } from "../base/remember.ts";

const KEPT_AS = "onsite.air";
/** Air that was typed so long ago is not the air of now (our own working value). */
const STALE_ms = 2 * 60 * 60 * 1000;

/** The air at the heater as it was typed last; nothing once that is a while ago. */
export function airNow(now: number): GivenAir {
  const kept = recall<{ air: GivenAir; at: number }>(KEPT_AS);
  return kept && now - kept.at < STALE_ms ? kept.air : {};
}

export function keepAirNow(air: GivenAir, at: number): void {
  remember(KEPT_AS, { air, at });
}
