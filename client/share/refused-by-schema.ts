import type { z } from "zod";
import { fieldErrors } from "../../model/tune.ts";
import type { BeyondLimit } from "../ui/went-wrong.tsx";

/** Every field that the schema refuses, with the bound that it lies beyond. */
export function refusedBySchema(error: z.ZodError): BeyondLimit[] {
  const limits = new Map(error.issues.map((issue) => [issue.path.join("."), limitOf(issue)]));
  return fieldErrors(error).map((one) => ({ ...one, limit: limits.get(one.field) }));
}

function limitOf(issue: z.core.$ZodIssue): number | undefined {
  if (issue.code === "too_big") return Number(issue.maximum);
  if (issue.code === "too_small") return Number(issue.minimum);
  return issue.code === "not_multiple_of" ? issue.divisor : undefined;
}
