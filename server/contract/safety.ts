import { z } from "zod";
import type { Safety } from "../../model/safety.ts";

export const safety = z.strictObject({
  notice: z.string(),
  not_for: z.array(z.string()),
  defer_to: z.array(z.string()),
}) satisfies z.ZodType<Safety>;

export const cautions = { accepted_means: z.string(), safety };
