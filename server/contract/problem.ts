// From where it gives schemas names in the API's description: only those made after it was loaded can have one.
import { z } from "@hono/zod-openapi";
import { challenge, HOW_TO_SOLVE } from "./proof-of-work.ts";
import { num } from "./quantities.ts";

export const problem = z
  .strictObject({
    type: z.string(),
    title: z.string(),
    status: num,
    detail: z.string().optional(),
    errors: z
      .array(z.strictObject({ field: z.string(), code: z.string(), message: z.string() }))
      .optional()
      .describe("Every bad field at once"),
    challenge: challenge.optional().describe(HOW_TO_SOLVE),
  })
  .openapi("Problem");

/** RFC 9457. */
export type Problem = z.infer<typeof problem>;
