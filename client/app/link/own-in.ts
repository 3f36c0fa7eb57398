import { z } from "zod";
import { ownTuneSchema } from "../../../model/tune.ts";
import { MOST_OWN_TUNES, type MyHeater } from "../heater/my-heater.ts";
import type { LogbookHeater } from "../records/entry.ts";

/** Own tunes as a link holds them, each with the day it was found; none twice. */
export const ownTunes = z
  .object({
    bracketed: z.int().min(0).max(MOST_OWN_TUNES),
    tunes: z
      .array(z.tuple([ownTuneSchema, z.iso.date()]))
      .min(1)
      .max(MOST_OWN_TUNES),
  })
  .refine(({ tunes }) => new Set(tunes.map((one) => JSON.stringify(one))).size === tunes.length);

/** The heater that a link tells of, with its own tunes where it holds any. */
export function linkedHeater(
  facts: Omit<LogbookHeater, "id" | "name" | "changed_at">,
  own: z.infer<typeof ownTunes> | undefined,
): MyHeater {
  const tunes = own?.tunes ?? [];
  return {
    heater: { id: "linked", name: "", ...facts, changed_at: "" },
    own_tunes: tunes.map(([tune]) => tune),
    found_at: tunes.map(([, day]) => day),
    bracketed: own?.bracketed ?? 0,
    settings: undefined,
  };
}
