import { type Reason, type ScreenContext, screen } from "../../../model/screen.ts";
import type { HeaterSettings, LogbookEntry } from "../records/entry.ts";

/** What looks mistyped in an entry's tune, by the same screening as a shared one's; its heater's dose is not the entry's to answer for. */
export function slipsOfEntry(
  { site, air, low, high }: Pick<LogbookEntry, "site" | "air" | "low" | "high">,
  heat_kW: number,
  context: ScreenContext,
): Reason[] {
  if (!site || !low || !high) return [];
  return screen({ heater: { heat_kW }, site, air, low, high, contributor: "" }, context).reasons;
}

/** What looks mistyped in settings that no meter found. They belong to no place: makers set heaters for the lowlands. */
export function slipsOfSettings(
  { low, high }: Pick<HeaterSettings, "low" | "high">,
  heat_kW: number,
  context: ScreenContext,
): Reason[] {
  const site = { elevation_m: 0 };
  return screen({ heater: { heat_kW }, site, low, high, contributor: "" }, context).reasons;
}

/** Entries with what looks mistyped left out: of such a tune only what a note would say counts, its fuel and hours among it. */
export function withoutSlips(
  entries: readonly LogbookEntry[],
  heat_kW: number,
  context: ScreenContext,
): LogbookEntry[] {
  return entries.map((entry) => {
    if (slipsOfEntry(entry, heat_kW, context).length === 0) return entry;
    const { site: _, air: __, low: ___, high: ____, ...rest } = entry;
    return { ...rest, kind: "note" };
  });
}
