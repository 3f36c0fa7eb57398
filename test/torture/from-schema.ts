import fc from "fast-check";

/** As much of JSON Schema as the API's description uses for what comes in. */
export interface Schema {
  $ref?: string;
  type?: "object" | "array" | "string" | "number" | "integer" | "boolean" | "null";
  properties?: Record<string, Schema>;
  required?: readonly string[];
  items?: Schema;
  minItems?: number;
  maxItems?: number;
  minLength?: number;
  maxLength?: number;
  pattern?: string;
  minimum?: number;
  maximum?: number;
  multipleOf?: number;
  enum?: readonly unknown[];
}

/** Names that stand for something the atlas has, by the property or parameter that takes them. */
export type Names = Record<string, readonly unknown[]>;

/** Values that a schema lets in; of what it asks by name, often something that is there. */
export function inside(schema: Schema, names: Names, name = ""): fc.Arbitrary<unknown> {
  if (schema.enum) return fc.constantFrom(...schema.enum);
  switch (schema.type) {
    case "object": {
      const { properties = {}, required = [] } = schema;
      const fields = Object.entries(properties);
      const each = fields.map(([key, of]) => [key, inside(of, names, key)] as const);
      return fc.record(Object.fromEntries(each), {
        requiredKeys: [...required],
        noNullPrototype: true,
      });
    }
    case "array": {
      const { items = {}, minItems = 0, maxItems = 5 } = schema;
      const most = Math.max(minItems, Math.min(maxItems, 5));
      return fc.array(inside(items, names, name), { minLength: minItems, maxLength: most });
    }
    case "integer":
      return often(names[name], wholeNumber(schema));
    case "number":
      return decimal(schema);
    case "string":
      return often(names[name], text(schema));
    case "boolean":
      return fc.boolean();
    default:
      throw new Error(`Nothing is made of ${JSON.stringify(schema)} yet.`);
  }
}

/** What is there, or anything. */
function often(there: readonly unknown[] = [], any: fc.Arbitrary<unknown>) {
  if (there.length === 0) return any;
  // Picked when it is asked for: more may be there by then.
  const one = fc.nat().map((n) => there[n % there.length]);
  return fc.oneof({ weight: 3, arbitrary: one }, any);
}

const MOST = 1e6;

function wholeNumber({ minimum = -MOST, maximum = MOST }: Schema) {
  // Where no bound is meant, the description says the largest whole number there is.
  const max = Math.min(maximum, MOST);
  return fc.oneof(fc.constantFrom(minimum, max), fc.integer({ min: minimum, max }));
}

function decimal({ minimum = -MOST, maximum = MOST, multipleOf }: Schema) {
  if (multipleOf)
    return fc
      .integer({ min: Math.ceil(minimum / multipleOf), max: Math.floor(maximum / multipleOf) })
      .map((n) => n * multipleOf);
  const any = fc.double({ min: minimum, max: maximum, noNaN: true });
  return fc.oneof(
    { weight: 1, arbitrary: fc.constantFrom(minimum, maximum) },
    { weight: 4, arbitrary: any },
  );
}

function text({ pattern, minLength = 0, maxLength = 40 }: Schema) {
  if (pattern) return fc.stringMatching(new RegExp(pattern));
  const most = fc.string({ minLength: maxLength, maxLength });
  return fc.oneof(
    { weight: 4, arbitrary: fc.string({ unit: "grapheme", minLength, maxLength }) },
    { weight: 1, arbitrary: most },
  );
}

/** Values that a schema lets in but for one thing. */
export function slightlyOff(schema: Schema, names: Names, name = ""): fc.Arbitrary<unknown> {
  const otherKind = fc.constantFrom<unknown>(null, true, [], {}, "", "ten", "1e999", "NaN", -0);
  if (schema.type === "object") {
    const { properties = {}, required = [] } = schema;
    const whole = inside(schema, names) as fc.Arbitrary<Record<string, unknown>>;
    const unknown = whole.map((value) => ({ ...value, nobody_asked: 1 }));
    const without = required.map((key) => whole.map(({ [key]: _, ...rest }) => rest));
    const wrong = Object.entries(properties).map(([key, of]) =>
      fc
        .tuple(whole, slightlyOff(of, names, key))
        .map(([value, off]) => ({ ...value, [key]: off })),
    );
    return fc.oneof(unknown, ...without, ...wrong);
  }
  if (schema.type === "array") {
    const { items = {}, maxItems = 5 } = schema;
    const item = inside(items, names, name);
    const many = fc.array(item, { minLength: maxItems + 1, maxLength: maxItems + 1 });
    return fc.oneof(
      otherKind,
      many,
      slightlyOff(items, names, name).map((off) => [off]),
    );
  }
  const { minimum, maximum, minLength, maxLength } = schema;
  const beyond = [
    ...(minimum === undefined ? [] : [minimum - 1e-6, minimum - 1, -1e300]),
    ...(maximum === undefined ? [] : [maximum + 1e-6, maximum + 1, 1e300]),
    ...(minLength ? ["x".repeat(minLength - 1), " ".repeat(minLength)] : []),
    ...(maxLength === undefined ? [] : ["x".repeat(maxLength + 1)]),
  ];
  return beyond.length > 0 ? fc.oneof(otherKind, fc.constantFrom(...beyond)) : otherKind;
}

/** A value with one field, however deep, made anew by `make`, or all of it where it has none. */
export function oneFieldAnew(
  value: unknown,
  schema: Schema,
  make: typeof inside,
  names: Names,
  name = "",
): fc.Arbitrary<unknown> {
  if (Array.isArray(value)) {
    const [first, ...rest] = value;
    return oneFieldAnew(first, schema.items ?? {}, make, names, name).map((made) => [
      made,
      ...rest,
    ]);
  }
  const { properties = {} } = schema;
  if (Object.keys(properties).length === 0 || typeof value !== "object" || value === null)
    return make(schema, names, name);
  const of = value as Record<string, unknown>;
  return fc.oneof(
    ...Object.entries(properties).map(([key, field]) =>
      oneFieldAnew(of[key], field, make, names, key).map((made) => ({ ...of, [key]: made })),
    ),
  );
}

/** A value as an address says it. */
export const textOf = (value: unknown): string =>
  typeof value === "string" ? value : JSON.stringify(value);
