import { serve } from "@hono/node-server";
import { Hono } from "hono";
import { goodTune, openTestAtlas, post } from "../server/atlas.ts";

/**
 * Serves an atlas with some tunes, or a bare Hono route that answers one start tune made beforehand as JSON, on a
 * free port; prints the port. For the bench: the two differ by all that the atlas does for an answer.
 */
async function atlas(): Promise<Hono> {
  const { app, fit } = await openTestAtlas();
  for (let n = 0; n < 30; n++) await post(app, goodTune(n));
  await fit.refresh();
  return app;
}

async function bare(): Promise<Hono> {
  const made = await (await atlas()).request(
    "/api/start?heat_kW=5&elevation_m=1200&temperature_C=-5",
  );
  const answer = await made.json();
  return new Hono().get("/api/start", (c) => c.json(answer));
}

const app = await (process.argv[2] === "bare" ? bare() : atlas());
serve({ fetch: app.fetch, port: 0 }, ({ port }) => console.log(port));
