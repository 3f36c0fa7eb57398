import { z } from "zod";
import type { Advice } from "../../model/advice.ts";
import type { Air } from "../../model/air.ts";
import type { Compared } from "../../model/compare.ts";
import type { Reason, Verdict } from "../../model/screen.ts";
import { STEWARD_VERDICTS } from "../../model/steward-reasons.ts";
import { tuneSchema } from "../../model/tune.ts";
import { end, num } from "./quantities.ts";
import { safety } from "./safety.ts";

export const air = z.strictObject({
  density_kg_m3: num,
  density_ratio: num.describe("Against 1.225 kg/m³"),
  pressure_hPa: num.describe("Station pressure"),
  temperature_C: num,
  humidity_pct: num,
  density_altitude_m: num,
  assumed: z.array(z.enum(["temperature", "pressure", "humidity"])),
  ln_density_sd: num.describe("Standard deviation of ln density that the assumptions bring"),
}) satisfies z.ZodType<Air>;

const reason = z.strictObject({
  code: z.string(),
  field: z.string(),
  sentence: z.string(),
  suggestion: num.optional(),
}) satisfies z.ZodType<Reason>;

const advice = z.strictObject({
  code: z.enum(["final_co_high"]),
  field: z.enum(["low.co_ppm", "high.co_ppm"]),
  value: num.describe("The figure it is about"),
  sentence: z.string(),
}) satisfies z.ZodType<Advice>;

const adviceList = z
  .array(advice)
  .describe(
    "What the owner should know of the heater, whatever the verdict: never a reason to hold",
  );

const compared = z.strictObject({
  end,
  mixture_shift_pct: num.describe("Plus is rich, minus is lean"),
  inside_band: z.boolean(),
  sentence: z.string(),
}) satisfies z.ZodType<Compared>;

const verdict = z.enum(["accepted", "held"]) satisfies z.ZodType<Verdict>;

const countsFrom = z.iso
  .date()
  .nullable()
  .describe(
    "A new contributor's tunes wait: the day from which they are expected to count if accepted. Null: at once",
  );

const ownersNeeded = z
  .int()
  .nullable()
  .describe(
    "Tunes of a heater size wait until so many owners of it count, or a steward lets one of them; its starting settings rest on physics until then. Null: they do not wait",
  );

export const submitted = z.strictObject({
  id: z.string(),
  receipt: z
    .string()
    .optional()
    .describe("Shown once: reading, revising and withdrawing need nothing else"),
  verdict,
  reasons: z.array(reason),
  counts_from: countsFrom,
  owners_needed: ownersNeeded,
  advice: adviceList,
  air,
  compared: z.array(compared),
  accepted_means: z.string(),
  safety,
});

/** Answer to POST and PUT of a tune. */
export type Submitted = z.infer<typeof submitted>;

const standing = z
  .enum(["kept", "rejected", "not in it"])
  .describe("What the newest published fit makes of it");

export const decision = z.strictObject({
  decided_on: z.string().describe("Month of a decision on a tune, day of what is about none"),
  by: z.string().describe("screening, fit, waiting (days that passed), steward or contributor"),
  verdict: z.enum([...STEWARD_VERDICTS, "rejected", "withdrawn"]),
  reasons: z.array(reason),
});

export const keptTune = z.strictObject({
  id: z.string(),
  tune: tuneSchema.omit({ contributor: true }),
  cell: z.string().nullable(),
  verdict: z
    .enum(STEWARD_VERDICTS)
    .describe("Removed by a steward: nobody else sees it; revised, it is looked at again"),
  reasons: z.array(reason),
  counts_from: countsFrom,
  owners_needed: ownersNeeded,
  advice: adviceList,
  fit: z.strictObject({ version: z.string(), low: standing, high: standing }),
  air,
  compared: z.array(compared),
  accepted_means: z.string(),
  decisions: z.array(decision),
  safety,
});

/** Answer to GET of a tune with its receipt: as kept, and what became of it. */
export type KeptTune = z.infer<typeof keptTune>;
