import type { Context } from "hono";
import { fieldErrors, type Tune, tuneSchema } from "../model/tune.ts";
import { invalid, RequestProblem } from "./problem.ts";

/** The body as text, once its type says JSON. */
async function jsonText(c: Context): Promise<string> {
  const type = c.req.header("Content-Type") ?? "";
  if (!/^application\/([a-z0-9.+-]+\+)?json\s*(;|$)/i.test(type)) {
    throw new RequestProblem(415, 'Send the tune as JSON with "Content-Type: application/json".');
  }
  return c.req.text();
}

/** The tune in a request's body: 415, 400 and 422 say what is wrong and how to mend it. */
export async function readTune(c: Context): Promise<Tune> {
  const text = await jsonText(c);
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    const where = error instanceof Error ? error.message : "";
    throw new RequestProblem(400, `The body is not valid JSON (${where}). Nothing was stored.`);
  }
  const result = tuneSchema.safeParse(value, { reportInput: true });
  if (!result.success) throw invalid(fieldErrors(result.error));
  return result.data;
}
