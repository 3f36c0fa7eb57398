import { OpenAPIHono } from "@hono/zod-openapi";
import type { Context, Hono, MiddlewareHandler } from "hono";
import { bodyLimit } from "hono/body-limit";
import { cors } from "hono/cors";
import { HTTPException } from "hono/http-exception";
import type { BlankEnv } from "hono/types";
import { causesOf, troubleOf } from "../db/storage-trouble.ts";
import type { Services } from "./context.ts";
import { descriptionRoute } from "./description.ts";
import { GeographyMissing } from "./geography/geography.ts";
import { busy, DiskFails, full, RequestProblem, renderProblem, STORAGE_SHORT } from "./problem.ts";
import { aboutRoutes } from "./routes/about.ts";
import { cellRoutes } from "./routes/cells.ts";
import { dataRoutes } from "./routes/data.ts";
import { fitRoutes } from "./routes/fit.ts";
import { nearRoutes } from "./routes/near.ts";
import { openDataRoutes } from "./routes/open-data.ts";
import { placeRoutes } from "./routes/places.ts";
import { scalingRoutes } from "./routes/scaling.ts";
import { startRoutes } from "./routes/start.ts";
import { stewardRoutes } from "./routes/steward.ts";
import { tuneRoutes } from "./routes/tunes.ts";
import { apiSecurity } from "./security.ts";

/** A tune is under 2 KB; this leaves room for spaces and mistakes. */
const BODY_MOST_BYTES = 64 * 1024;

/** The longest question has a dozen numbers; a browser's own limit is far beyond. */
const ADDRESS_MOST = 2048;

const limitAddress: MiddlewareHandler = (c, next) => {
  if (c.req.url.length <= ADDRESS_MOST) return next();
  throw new RequestProblem(414, `An address is at most ${ADDRESS_MOST} characters long.`);
};

/** What a page of another origin may send. */
const preflight = cors({
  origin: "*",
  allowMethods: ["GET", "POST", "PUT", "DELETE"],
  allowHeaders: [
    "Authorization",
    "Content-Type",
    "Idempotency-Key",
    "If-None-Match",
    "Proof-Of-Work",
  ],
});

const limitBody = bodyLimit({
  maxSize: BODY_MOST_BYTES,
  onError: () => {
    const most = `A body is at most ${BODY_MOST_BYTES / 1024} KB. Nothing was stored.`;
    throw new RequestProblem(413, most);
  },
});

/** The whole API over some services. No sockets, files or environment: the entries bring those. */
export function createApp(services: Services): Hono {
  const app = new OpenAPIHono<BlankEnv>();
  app.use("/api/*", apiSecurity());
  app.use("/api/*", limitAddress);
  app.options("/api/*", preflight);
  app.on(["POST", "PUT"], "/api/*", limitBody);
  for (const routes of [
    nearRoutes,
    tuneRoutes,
    startRoutes,
    fitRoutes,
    scalingRoutes,
    cellRoutes,
    placeRoutes,
    openDataRoutes,
    dataRoutes,
    aboutRoutes,
    stewardRoutes,
  ]) {
    app.route("/api", routes(services));
  }
  app.route("/api", descriptionRoute(app));
  const known = knownPaths(app);
  app.all("/api/*", (c) => {
    // Each step on a route's way stands for it.
    const steps = known.filter(({ pattern }) => pattern.test(c.req.path));
    const methods = [...new Set(steps.map(({ method }) => method))];
    if (methods.length === 0) {
      throw new RequestProblem(
        404,
        "The API has no such address. GET /api/openapi.json lists them.",
      );
    }
    throw new RequestProblem(405, `This address takes ${methods.join(", ")}.`, {
      headers: { Allow: methods.join(", ") },
    });
  });
  app.onError(async (error, c) => {
    const problem = await asProblem(error, c.req);
    if (problem.status === STORAGE_SHORT) {
      services.prepared.makeRoom();
      services.onTrouble("storage short");
    }
    if (problem instanceof DiskFails) services.onTrouble("storage failing");
    return renderProblem(c, problem);
  });
  return app;
}

function knownPaths(app: Hono): { method: string; pattern: RegExp }[] {
  return app.routes
    .filter(
      ({ method, path }) => method !== "ALL" && path.startsWith("/api/") && !path.includes("*"),
    )
    .map(({ method, path }) => ({
      method,
      pattern: new RegExp(`^${path.replaceAll(".", "\\.").replaceAll(/:\w+/g, "[^/]+")}$`),
    }));
}

/** Whoever sends a body is gone: nothing of the atlas's failed, and nobody reads the answer. */
const isBrokenOff = ({ code }: NodeJS.ErrnoException) => code === "ECONNRESET";

async function asProblem(error: Error, request: Context["req"]): Promise<RequestProblem> {
  if (error instanceof RequestProblem) return error;
  if (error instanceof GeographyMissing) {
    return new RequestProblem(
      404,
      "This atlas has no elevations of its own. Give elevation_m instead.",
    );
  }
  if (error instanceof HTTPException) return unread(error, request);
  if (isBrokenOff(error)) {
    return new RequestProblem(400, "The body broke off. Nothing was stored; send it again.");
  }
  const trouble = troubleOf(error);
  if (trouble === "busy") return busy();
  if (trouble === "full") return full(request);
  // What wraps a cause may repeat a tune's figures, which belong in no log.
  console.error(causesOf(error).at(-1));
  if (trouble === "failing") return new DiskFails(request);
  return new RequestProblem(500, "The atlas failed on this request. It is not your mistake.");
}

/** What the library says of a body that it cannot read, with what is wrong and how to mend it. */
async function unread(
  { status, message }: HTTPException,
  request: Context["req"],
): Promise<RequestProblem> {
  if (status === 415) {
    return new RequestProblem(415, 'Send the body as JSON with "Content-Type: application/json".');
  }
  if (status !== 400) return new RequestProblem(status, message);
  const where = whereBroken(await request.text());
  return new RequestProblem(400, `The body is not valid JSON${where}. Nothing was stored.`);
}

function whereBroken(text: string): string {
  try {
    JSON.parse(text);
    return "";
  } catch (error) {
    return error instanceof Error ? ` (${error.message})` : "";
  }
}
