import { type AnyD1Database, drizzle } from "drizzle-orm/d1";
import type { Database } from "../db/database.ts";
import type { ObjectNamespace } from "./durable.ts";
import { FLOOD_LIMIT } from "./flood.ts";
import { type Keys, openKeys } from "./keys.ts";
import { CLIENT_LIMIT } from "./limits.ts";
import { NEW_KEY_DAYS } from "./new-keys.ts";
import { wholeNumber } from "./whole-number.ts";

/** What wrangler.toml binds. */
export interface Bindings {
  ATLAS_DB: AnyD1Database;
  ASSETS: { fetch: (request: Request | string) => Promise<Response> };
  FITTER: ObjectNamespace;
  LIMITS: ObjectNamespace;
  ATLAS_SECRET?: string;
  WRITE_LIMIT?: string;
  READ_LIMIT?: string;
  FLOOD_LIMIT?: string;
  NEW_KEY_DAYS?: string;
  STEWARD_TOKEN?: string;
  ELEVATION_TILES?: string;
  BASEMAP_STYLE?: string;
}

export const databaseOf = ({ ATLAS_DB }: Bindings) => drizzle(ATLAS_DB) as unknown as Database;

/** @throws Error with the remedy when there is no secret */
export async function keysAtEdge({ ATLAS_SECRET }: Bindings): Promise<Keys> {
  if (!ATLAS_SECRET) throw new Error("Set ATLAS_SECRET: wrangler secret put ATLAS_SECRET");
  return openKeys(ATLAS_SECRET);
}

export const newKeyDaysOf = (env: Bindings) => wholeNumber(env, "NEW_KEY_DAYS", NEW_KEY_DAYS);

/** Writes and dear reads a minute of a client, and tunes within five minutes of all. */
export const limitsOf = (env: Bindings) => ({
  writes: wholeNumber(env, "WRITE_LIMIT", CLIENT_LIMIT),
  reads: wholeNumber(env, "READ_LIMIT", CLIENT_LIMIT),
  tunes: wholeNumber(env, "FLOOD_LIMIT", FLOOD_LIMIT),
});
