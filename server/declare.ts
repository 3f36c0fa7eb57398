import { createRoute, OpenAPIHono, type RouteConfig } from "@hono/zod-openapi";
import type { Context } from "hono";
import type { z } from "zod";
import { type FieldError, fieldErrors } from "../model/tune.ts";
import { problem } from "./contract/problem.ts";
import { invalid, RequestProblem } from "./problem.ts";

/** How a route is declared once, for its checks, its types and the API's description. */

const PROBLEM = {
  description: "RFC 9457 problem details; errors name every bad field",
  content: { "application/problem+json": { schema: problem } },
};

/** What a route needs besides the library's own: the statuses of what may be wrong with a request, which its handler throws. */
type Declared<Path extends string> = Omit<RouteConfig, "path"> & {
  path: Path;
  summary: string;
  problems?: readonly number[];
};

/** A route as `api().openapi` takes it, named by its method and path, as generated clients call it. */
export function declareRoute<Path extends string, Route extends Declared<Path>>(
  route: Route & Declared<Path>,
) {
  const { problems = [], ...rest } = route;
  // A question may be longer than an address.
  const statuses = [...problems, ...(rest.request?.query ? [414] : [])];
  const { method, path } = rest;
  return createRoute<Path, Route>({
    operationId: `${method}${path.replaceAll(/\W+(\w)?/g, (_, letter?: string) => letter?.toUpperCase() ?? "")}`,
    ...rest,
    responses: {
      ...rest.responses,
      ...Object.fromEntries(statuses.map((status) => [status, PROBLEM])),
    },
  } as unknown as Route);
}

/** An answer in JSON. */
export const json = <Schema extends z.ZodType>(schema: Schema) => ({
  description: "Done",
  content: { "application/json": { schema } },
});

/** JSON of which the description says no more than that it is an object, or some other type of media. */
export const media = (...types: string[]) => ({
  description: "Done",
  content: Object.fromEntries(types.map((type) => [type, { schema: schemaOf(type) }])),
});

function schemaOf(type: string) {
  if (type.endsWith("json")) return { type: "object" as const };
  if (type.endsWith("parquet")) return { type: "string" as const, format: "binary" };
  return { type: "string" as const };
}

/** A request's body in JSON. */
export const jsonBody = <Schema extends z.ZodType>(schema: Schema) => ({
  required: true as const,
  content: { "application/json": { schema } },
});

/** What the bearer must show. */
export const bearer = {
  receipt: [{ receipt: [] }],
  steward: [{ steward: [] }],
};

/**
 * Some routes. What comes in against their declarations is refused, every bad field named at once.
 * @param whole names a mistake in all of a body
 */
export const api = (whole = "tune") =>
  new OpenAPIHono({
    defaultHook: (result, c) => {
      if (!result.success) throw refusal(result, c, whole);
    },
  });

function refusal(
  { target, error }: { target: string; error: z.ZodError },
  c: Context,
  whole: string,
): RequestProblem {
  const errors = fieldErrors(error);
  if (target === "header") return new RequestProblem(400, errors[0]?.message ?? "");
  if (target === "query") return invalid(withRepeated(errors, c));
  return invalid(errors.map((e) => (e.field === "tune" ? { ...e, field: whole } : e)));
}

/** A parameter given twice is a list to the schema, which no question takes. */
function withRepeated(errors: readonly FieldError[], c: Context): FieldError[] {
  const repeated = Object.entries(c.req.queries())
    .filter(([, all]) => all.length > 1)
    .map(([field]) => field);
  return [
    ...repeated.map((field) => ({
      field,
      code: "repeated",
      message: "Give this parameter once.",
    })),
    ...errors.filter((e) => e.code === "unknown_field" || !repeated.includes(e.field)),
  ];
}
