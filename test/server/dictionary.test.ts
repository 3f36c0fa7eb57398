import { expect, test } from "vitest";
import { z } from "zod";
import { tuneSchema } from "../../model/tune.ts";
import { COLUMNS } from "../../server/dictionary.ts";

/** Names of all leaves of the tune schema as the export writes them: low.pump_Hz is low_pump_Hz. */
function leaves(schema: z.core.JSONSchema.BaseSchema, path: string[] = []): string[] {
  const { properties } = schema;
  if (!properties) return [path.join("_")];
  return Object.entries(properties).flatMap(([name, part]) =>
    leaves(part as z.core.JSONSchema.BaseSchema, [...path, name]),
  );
}

test("every field of the tune schema has its column; a position is its cell", () => {
  const columns = new Set(COLUMNS.map(({ name }) => name));
  const fields = leaves(z.toJSONSchema(tuneSchema))
    .map((name) => name.replace(/^(heater|site|air)_/, ""))
    .map((name) => (name === "lat" || name === "lon" ? "cell" : name));
  expect(fields.length).toBeGreaterThan(20);
  expect(fields.filter((name) => !columns.has(name))).toEqual([]);
});
