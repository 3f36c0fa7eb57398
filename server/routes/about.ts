import { countTunes } from "../../db/tunes.ts";
import type { FieldError } from "../../model/tune.ts";
import type { Services } from "../context.ts";
import { health, map, ready } from "../contract/about.ts";
import { api, declareRoute, json } from "../declare.ts";
import { RequestProblem } from "../problem.ts";

const readyRoute = declareRoute({
  method: "get",
  path: "/ready",
  summary: "Readiness: whether new tunes are taken at this moment; 503 says what keeps them out",
  responses: { 200: json(ready) },
  problems: [503],
});

const healthRoute = declareRoute({
  method: "get",
  path: "/health",
  summary: "Liveness, and the age of the fit",
  responses: { 200: json(health) },
});

const mapRoute = declareRoute({
  method: "get",
  path: "/map",
  summary: "Map sources set by the configuration",
  responses: { 200: json(map) },
});

/** Liveness, readiness, and what the page needs to know of the configuration. */
export function aboutRoutes(services: Services) {
  const { db, storage, stopping } = services;

  /** Why new tunes would be refused at this moment. */
  async function obstacles(): Promise<FieldError[]> {
    const found: FieldError[] = [];
    const say = (field: string, code: string, message: string) =>
      found.push({ field, code, message });
    if (stopping()) say("server", "stopping", "It is about to stop and finishes what it began.");
    if (!storage.canWrite()) {
      say("database", "database_busy", "Another program holds it, or the disk takes nothing.");
    }
    if (await storage.isShort()) {
      say("storage", "storage_short", "No room for new tunes. Make some; withdrawing still works.");
    }
    return found;
  }

  return api()
    .openapi(readyRoute, async (c) => {
      const errors = await obstacles();
      if (errors.length > 0) {
        throw new RequestProblem(503, "The atlas takes no new tunes at this moment.", {
          errors,
          headers: { "Retry-After": "5" },
        });
      }
      c.header("Cache-Control", "no-store");
      return c.json({ ready: true as const }, 200);
    })
    .openapi(healthRoute, async (c) => {
      const fit = await services.fit.current();
      const published = fit.published_at && new Date(fit.published_at).getTime();
      c.header("Cache-Control", "no-store");
      return c.json(
        {
          ok: true,
          demo: services.demo,
          tunes: await countTunes(db),
          fit: fit.version,
          // Never below 0, whatever the clock was when it was published.
          fit_age_s: published
            ? Math.max(0, Math.round((services.now().getTime() - published) / 1000))
            : null,
          fit_pending: services.fit.pending,
          frozen: services.fit.refusal !== null,
          geography: await services.gazetteer.ready(),
        },
        200,
      );
    })
    .openapi(mapRoute, (c) => {
      c.header("Cache-Control", "public, max-age=300");
      return c.json(services.map, 200);
    });
}
