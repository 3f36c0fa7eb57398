import { z } from "zod";

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
