import type { Context } from "hono";
import type { z } from "zod";
import { fieldErrors, type Tune, tuneSchema } from "../model/tune.ts";
import { invalid, RequestProblem } from "./problem.ts";

/** The body as text, once its type says JSON. */
async function jsonText(c: Context, what: string): Promise<string> {
  const type = c.req.header("Content-Type") ?? "";
  if (!/^application\/([a-z0-9.+-]+\+)?json\s*(;|$)/i.test(type)) {
    throw new RequestProblem(
      415,
      `Send the ${what} as JSON with "Content-Type: application/json".`,
    );
  }
  return c.req.text();
}

/**
 * What a request's body holds: 415, 400 and 422 say what is wrong and how to mend it.
 * @param what the word for it, which also names a mistake in the whole of it
 */
export async function readBody<T>(c: Context, what: string, schema: z.ZodType<T>): Promise<T> {
  const text = await jsonText(c, what);
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    const where = error instanceof Error ? error.message : "";
    throw new RequestProblem(400, `The body is not valid JSON (${where}). Nothing was stored.`);
  }
  const result = schema.safeParse(value, { reportInput: true });
  if (result.success) return result.data;
  const errors = fieldErrors(result.error);
  throw invalid(errors.map((e) => (e.field === "tune" ? { ...e, field: what } : e)));
}

export const readTune = (c: Context): Promise<Tune> => readBody(c, "tune", tuneSchema);
