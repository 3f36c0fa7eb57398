import { Hono } from "hono";
import { countTunes } from "../../db/tunes.ts";
import type { Services } from "../context.ts";
import type { Health } from "../contract.ts";

/** Liveness, and what the page needs to know of the configuration. */
export function aboutRoutes(services: Services): Hono {
  return new Hono()
    .get("/health", async (c) => {
      const fit = await services.fit.current();
      const published = fit.published_at && new Date(fit.published_at).getTime();
      c.header("Cache-Control", "no-store");
      return c.json({
        ok: true,
        demo: services.demo,
        tunes: await countTunes(services.db),
        fit: fit.version,
        fit_age_s: published ? Math.round((services.now().getTime() - published) / 1000) : null,
        fit_pending: services.fit.pending,
        frozen: services.fit.refusal !== null,
        geography: await services.gazetteer.ready(),
      } satisfies Health);
    })
    .get("/map", (c) => {
      c.header("Cache-Control", "public, max-age=300");
      return c.json(services.map);
    });
}
