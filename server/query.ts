import type { Context } from "hono";
import { z } from "zod";
import { type FieldError, fieldErrors } from "../model/tune.ts";
import { invalid } from "./problem.ts";

/** No two parts of it can take the same digit, so that a long text is refused in one pass. */
const NUMBER = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;

/** A number schema for a query parameter: strict decimal text in, anything else left for the schema to refuse. */
export function fromText<S extends z.ZodType>(schema: S) {
  return z.preprocess(
    (value) => (typeof value === "string" && NUMBER.test(value.trim()) ? Number(value) : value),
    schema,
  );
}

/** The same of every field of a shape. */
export function fromTexts<S extends Record<string, z.ZodType>>(shape: S) {
  return Object.fromEntries(
    Object.entries(shape).map(([name, schema]) => [name, fromText(schema)]),
  ) as { [Name in keyof S]: ReturnType<typeof fromText<S[Name]>> };
}

/** Query parameters by a strict schema; unknown, repeated and bad ones are all named in one 422. */
export function readQuery<S extends z.ZodObject>(c: Context, schema: S): z.infer<S> {
  const values: Record<string, string> = {};
  const repeated: FieldError[] = [];
  for (const [name, all] of Object.entries(c.req.queries())) {
    if (all.length > 1) {
      repeated.push({ field: name, code: "repeated", message: "Give this parameter once." });
    }
    values[name] = all[0] as string;
  }
  const result = schema.safeParse(values, { reportInput: true });
  if (result.success && repeated.length === 0) return result.data;
  throw invalid([...repeated, ...(result.success ? [] : fieldErrors(result.error))]);
}
