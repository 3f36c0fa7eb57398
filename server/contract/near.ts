import { z } from "zod";
import { cellTune } from "./cells.ts";
import { byEnd, num } from "./quantities.ts";
import { safety } from "./safety.ts";

const nearTune = cellTune.extend({
  id: z.string(),
  cell: z.string().nullable(),
  against_average_pct: byEnd.describe(
    "Against the average heater in the tune's own air: plus is richer",
  ),
});

/** An accepted tune in air like that asked about. */
export type NearTune = z.infer<typeof nearTune>;

export const near = z.strictObject({
  heat_kW: num,
  density_kg_m3: num,
  fit: z.string(),
  tunes: z
    .array(nearTune)
    .describe("Nearest first, at most 10; those that the fit sets aside are left out"),
  demo: z.boolean(),
  safety,
});

export type NearAnswer = z.infer<typeof near>;
