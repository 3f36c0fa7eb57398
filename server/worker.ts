import { type AnyD1Database, drizzle } from "drizzle-orm/d1";
import type { Hono } from "hono";
import type { Database } from "../db/database.ts";
import { createApp } from "./app.ts";
import { FLOOD_LIMIT } from "./flood.ts";
import { openGeography } from "./geography/geography.ts";
import { openKeys } from "./keys.ts";
import { mapSources } from "./map-sources.ts";
import { NEW_KEY_DAYS } from "./new-keys.ts";
import { pageCaching } from "./page-caching.ts";
import { preparedHere } from "./prepared.ts";
import { prune } from "./prune.ts";
import { FitKeeper } from "./published-fit.ts";
import { requireOwnSecret } from "./secret-check.ts";
import { pageSecurity } from "./security.ts";

/** What wrangler.toml binds. */
interface Bindings {
  ATLAS_DB: AnyD1Database;
  ASSETS: { fetch: (request: Request | string) => Promise<Response> };
  ATLAS_SECRET?: string;
  WRITE_LIMIT?: string;
  FLOOD_LIMIT?: string;
  NEW_KEY_DAYS?: string;
  STEWARD_TOKEN?: string;
  ELEVATION_TILES?: string;
  BASEMAP_STYLE?: string;
}

/** Several isolates publish at the edge: a version read from the database is believed so long, ms. */
const BELIEVE_ms = 5000;

interface Opened {
  app: Hono;
  db: Database;
  fit: FitKeeper;
}

let opened: Promise<Opened> | undefined;

/** The same app as on Node, over D1 and static assets. One app per isolate. */
async function open(env: Bindings): Promise<Opened> {
  if (!env.ATLAS_SECRET) throw new Error("Set ATLAS_SECRET: wrangler secret put ATLAS_SECRET");
  const db = drizzle(env.ATLAS_DB) as unknown as Database;
  const keys = await openKeys(env.ATLAS_SECRET);
  await requireOwnSecret(db, keys);
  const now = () => new Date();
  const newKeyDays = Number(env.NEW_KEY_DAYS ?? NEW_KEY_DAYS);
  const fit = new FitKeeper({ db, now, demo: false, believe_ms: BELIEVE_ms, newKeyDays });
  const { map, origins, tiles } = mapSources(env.ELEVATION_TILES, env.BASEMAP_STYLE);
  const readAsset = async (path: string) => {
    const response = await env.ASSETS.fetch(`https://assets.local/geography/${path}`);
    return response.ok ? new Uint8Array(await response.arrayBuffer()) : null;
  };
  const app = createApp({
    db,
    // Requests do not share I/O at the edge: each commits its own.
    commit: async ([first, ...rest]) => void (first && (await db.batch([first, ...rest]))),
    storage: { isShort: async () => false, canWrite: () => true, forget: async () => {} },
    stopping: () => false,
    keys,
    fit,
    prepared: preparedHere(db, false),
    gazetteer: openGeography(readAsset, tiles),
    now,
    demo: false,
    writeLimit: Number(env.WRITE_LIMIT ?? 30),
    floodLimit: Number(env.FLOOD_LIMIT ?? FLOOD_LIMIT),
    newKeyDays,
    stewardToken: env.STEWARD_TOKEN,
    clientAddress: (c) => c.req.header("CF-Connecting-IP") ?? "unknown",
    afterWrite: (c) => c.executionCtx.waitUntil(fit.refresh()),
    map,
  });
  app.use("*", pageSecurity(origins));
  app.get("*", async (c) => {
    const asset = await env.ASSETS.fetch(c.req.raw);
    const headers = Object.fromEntries(asset.headers);
    if (asset.ok) headers["cache-control"] = pageCaching(c.req.path);
    return c.newResponse(asset.body, asset.status as 200, headers);
  });
  return { app, db, fit };
}

function openOnce(env: Bindings): Promise<Opened> {
  opened ??= open(env).catch((error) => {
    opened = undefined;
    throw error;
  });
  return opened;
}

export default {
  async fetch(request: Request, env: Bindings, context: unknown): Promise<Response> {
    const { app } = await openOnce(env);
    return app.fetch(request, env, context as never);
  },
  /** Once an hour: days pass without a write, too. */
  async scheduled(_: unknown, env: Bindings): Promise<void> {
    const { db, fit } = await openOnce(env);
    await fit.refresh();
    await prune(db, new Date());
  },
};
