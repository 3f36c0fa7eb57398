import type { OpenAPIHono } from "@hono/zod-openapi";
import { expect, test } from "vitest";
import { z } from "zod";
import { openTestAtlas } from "./atlas.ts";
import { TOKEN } from "./stewards-atlas.ts";

type Json = Record<string, unknown>;

// The library that describes the API turns schemas into JSON Schema by code of its own. zod's own is by other authors.

/** What zod says of a whole number and of a date although nobody asked for it; and that keys are text, as all are. */
const saysNothing = (key: string, value: unknown, of: Json) =>
  key === "$schema" ||
  key === "propertyNames" ||
  Math.abs(Number(value)) === Number.MAX_SAFE_INTEGER ||
  (key === "pattern" && of.format === "date");

/** Two ways to say the same: that it may be null, and that it is one value alone. */
function inOneWay(schema: Json): Json {
  const { anyOf, const: only, ...rest } = schema;
  if (only !== undefined) return { ...rest, enum: [only] };
  const [one, none, ...more] = (anyOf ?? []) as Json[];
  if (!one || none?.type !== "null" || more.length > 0) return schema;
  return {
    ...one,
    ...rest,
    type: [one.type, "null"],
    ...(Array.isArray(one.enum) && { enum: [...one.enum, null] }),
  };
}

/** What one schema says and another does not, by where it stands; and a field that must be there though it may be left out. */
function lost(own: unknown, said: unknown, path = ""): string[] {
  if (Array.isArray(own)) {
    const set = new Set(Array.isArray(said) ? said : []);
    return own.flatMap((one, i) =>
      typeof one === "object" && one !== null
        ? lost(one, (said as unknown[])?.[i], `${path}/${i}`)
        : set.has(one)
          ? []
          : [`${path} ${one}`],
    );
  }
  if (typeof own !== "object" || own === null) return own === said ? [] : [`${path} ${own}`];
  const [from, to] = [own, said ?? {}].map((schema) => inOneWay(schema as Json)) as [Json, Json];
  const names = ({ required = [] }: Json) => required as string[];
  const more = names(to).filter((name) => !names(from).includes(name));
  return [
    ...more.map((name) => `${path}/required ${name} in vain`),
    ...Object.entries(from)
      .filter(([key, value]) => !saysNothing(key, value, from))
      .flatMap(([key, value]) => lost(value, to[key], `${path}/${key}`)),
  ];
}

const differences = (schema: z.ZodType, said: Json) =>
  lost(z.toJSONSchema(schema, { io: "output" }), said);

test("the description says of each schema all that zod itself says of it", async () => {
  const { app, close } = await openTestAtlas({ stewardToken: TOKEN });
  const { paths } = await (await app.request("/api/openapi.json")).json();
  await close();
  let compared = 0;
  const found: string[] = [];
  for (const definition of (app as unknown as OpenAPIHono).openAPIRegistry.definitions) {
    if (definition.type !== "route") continue;
    const { method, path, request, responses } = definition.route;
    const described = paths[path][method];
    const compare = (schema: unknown, said: { schema: Json } | undefined) => {
      if (!(schema instanceof z.ZodType) || !said || said.schema.$ref) return;
      compared += 1;
      found.push(...differences(schema, said.schema).map((at) => `${method} ${path} ${at}`));
    };
    const bodyOf = ({ content = {} }: { content?: object | undefined } = {}) =>
      Object.entries(content) as [string, { schema?: unknown }][];
    for (const [type, { schema }] of bodyOf(request?.body))
      compare(schema, described.requestBody.content[type]);
    for (const [status, answer] of Object.entries(responses))
      for (const [type, { schema }] of bodyOf(answer as object))
        compare(schema, described.responses[status].content[type]);
    for (const fields of [request?.query, request?.params])
      if (fields instanceof z.ZodObject)
        for (const [name, schema] of Object.entries(fields.shape))
          compare(
            schema,
            described.parameters.find((parameter: { name: string }) => parameter.name === name),
          );
  }
  expect(compared).toBeGreaterThan(80);
  expect(found).toEqual([]);
});

test("what is lost or made up would be found", () => {
  const step = z.object({ heat_kW: z.number().multipleOf(0.5), dose_uL: z.number().optional() });
  const properties = { heat_kW: { type: "number" }, dose_uL: { type: "number" } };
  const said = { type: "object", properties, required: ["heat_kW", "dose_uL"] };
  expect(differences(step, said)).toEqual([
    "/required dose_uL in vain",
    "/properties/heat_kW/multipleOf 0.5",
    "/additionalProperties false",
  ]);
});
