import type { OpenAPIHono } from "@hono/zod-openapi";
import type { BlankEnv } from "hono/types";
import { api, declareRoute, media } from "./declare.ts";
import { sendText } from "./json-text.ts";
import { CODE_VERSION } from "./version.ts";

const route = declareRoute({
  method: "get",
  path: "/openapi.json",
  summary: "This description",
  responses: { 200: media("application/json") },
});

/** `summary` and `identifier` came with OpenAPI 3.1, and the library's types know 3.0 alone here. */
const INFO = {
  title: "Hypsotune",
  version: CODE_VERSION,
  summary: "Start tunes for small diesel air heaters by place, with confidence bands",
  description:
    "Every answer that could set a heater carries its cautions: a starting point only; carbon monoxide kills. " +
    "Field names carry their units. A pressure is station pressure; sea-level pressure is qnh_hPa.",
  license: { name: "MIT (code); CC0 1.0 (tunes)", identifier: "MIT" },
};

/** The API's description, OpenAPI 3.1, of all that an app's routes declare. */
export function descriptionRoute(app: OpenAPIHono<BlankEnv>) {
  let text: string | undefined;
  return api().openapi(route, (c) => {
    // Made when first asked for: it is long, and all routes are declared by then.
    text ??= JSON.stringify(
      app.getOpenAPI31Document({
        openapi: "3.1.0",
        info: INFO,
        servers: [{ url: "/" }],
      }),
    );
    return sendText(c, text);
  });
}
