import type { Hono } from "hono";
import type { Database } from "../db/database.ts";
import { createApp } from "./app.ts";
import { type Bindings, databaseOf, keysAtEdge, limitsOf, newKeyDaysOf } from "./edge-settings.ts";
import { openGeography } from "./geography/geography.ts";
import { limitsHere } from "./limits.ts";
import { mapSources } from "./map-sources.ts";
import { pageCaching } from "./page-caching.ts";
import { preparedHere } from "./prepared.ts";
import { FitKeeper } from "./published-fit.ts";
import { requireOwnSecret } from "./secret-check.ts";
import { pageSecurity } from "./security.ts";
import { sharedLimits } from "./shared-limits.ts";

/** One object publishes: a version read from the database is believed so long, ms. */
const BELIEVE_ms = 5000;

/** The same app as on Node, over D1 and static assets. One app per isolate. */
export async function openAtEdge(env: Bindings): Promise<{ app: Hono; db: Database }> {
  const db = databaseOf(env);
  const keys = await keysAtEdge(env);
  await requireOwnSecret(db, keys);
  const now = () => new Date();
  const newKeyDays = newKeyDaysOf(env);
  const { map, origins, tiles } = mapSources(env.ELEVATION_TILES, env.BASEMAP_STYLE);
  const readAsset = async (path: string) => {
    const response = await env.ASSETS.fetch(`https://assets.local/geography/${path}`);
    return response.ok ? new Uint8Array(await response.arrayBuffer()) : null;
  };
  const app = createApp({
    db,
    // Requests do not share I/O at the edge: each commits its own.
    commit: async ([first, ...rest]) => void (first && (await db.batch([first, ...rest]))),
    storage: {
      isShort: async () => false,
      canWrite: () => true,
      findRoomFor: (write) => write(),
      forget: async () => {},
    },
    stopping: () => false,
    keys,
    // It reads what the fitter publishes, and makes a steward's trials.
    fit: new FitKeeper({ db, now, demo: false, believe_ms: BELIEVE_ms, newKeyDays }),
    prepared: preparedHere(db, false, true),
    gazetteer: openGeography(readAsset, tiles),
    now,
    demo: false,
    // It tells nobody.
    onTrouble: () => {},
    limits: sharedLimits(env.LIMITS, limitsHere(limitsOf(env), keys, now)),
    newKeyDays,
    stewardToken: env.STEWARD_TOKEN,
    clientAddress: (c) => c.req.header("CF-Connecting-IP") ?? "unknown",
    // The fitter comes by itself.
    afterWrite: () => {},
    map,
  });
  app.use("*", pageSecurity(origins));
  app.get("*", async (c) => {
    const asset = await env.ASSETS.fetch(c.req.raw);
    const headers = Object.fromEntries(asset.headers);
    if (asset.ok) headers["cache-control"] = pageCaching(c.req.path);
    return c.newResponse(asset.body, asset.status as 200, headers);
  });
  return { app, db };
}
