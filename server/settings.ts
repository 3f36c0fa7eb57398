import { join } from "node:path";
import type { Room } from "../db/open.ts";
import { FLOOD_LIMIT } from "./flood.ts";
import { CLIENT_LIMIT } from "./limits.ts";
import { NEW_KEY_DAYS } from "./new-keys.ts";
import { wholeNumber } from "./whole-number.ts";

/** How an atlas is run on Node. */
export interface Settings {
  database: string;
  /** What the database may take of the disk. */
  room: Room;
  secret?: string | undefined;
  demo: boolean;
  writeLimit: number;
  /** Questions and downloads that are dear to answer, a minute per client; 0 for any number. */
  readLimit: number;
  /** Tunes within five minutes, by all together, from which on each needs a proof of work; 0 for never. */
  floodLimit: number;
  /** Days until a new contributor's tunes count; 0 for at once. */
  newKeyDays: number;
  /** Proxies of one's own between the world and this server. */
  proxies: number;
  /** Opens the steward's routes; without it there are none. */
  stewardToken?: string | undefined;
  /** Told of alarms and troubles by POST; nobody is without it. */
  alarmWebhook?: string | undefined;
  elevationTiles?: string | undefined;
  basemapStyle?: string | undefined;
  geographyDir: string;
  pageDir: string;
}

/** This machine alone, unless told otherwise: a proxy is to stand in front. */
export const LOOPBACK = "127.0.0.1";
const MB_bytes = 1024 * 1024;
/** Left on the disk for withdrawals and for whatever else lives there, unless told otherwise. */
const DISK_RESERVE_MB = 100;

/** Settings from the environment; `--demo` marks everything as invented and keeps it in a file of its own. */
export function settingsFrom(
  env: NodeJS.ProcessEnv,
  demo: boolean,
): Settings & { port: number; host: string } {
  return {
    port: wholeNumber(env, "PORT", 8787),
    // Invented data are nobody else's to see.
    host: (!demo && env.HOST) || LOOPBACK,
    database: env.ATLAS_DB || join("data", demo ? "demo.db" : "atlas.db"),
    room: {
      most_bytes: env.DATABASE_MOST_MB
        ? wholeNumber(env, "DATABASE_MOST_MB", 0) * MB_bytes
        : undefined,
      disk_reserve_bytes: wholeNumber(env, "DISK_RESERVE_MB", DISK_RESERVE_MB) * MB_bytes,
    },
    secret: env.ATLAS_SECRET,
    demo,
    writeLimit: wholeNumber(env, "WRITE_LIMIT", demo ? 0 : CLIENT_LIMIT),
    readLimit: wholeNumber(env, "READ_LIMIT", demo ? 0 : CLIENT_LIMIT),
    floodLimit: wholeNumber(env, "FLOOD_LIMIT", demo ? 0 : FLOOD_LIMIT),
    newKeyDays: wholeNumber(env, "NEW_KEY_DAYS", demo ? 0 : NEW_KEY_DAYS),
    proxies: wholeNumber(env, "PROXIES", 0),
    stewardToken: env.STEWARD_TOKEN,
    alarmWebhook: env.ALARM_WEBHOOK,
    elevationTiles: env.ELEVATION_TILES,
    basemapStyle: env.BASEMAP_STYLE,
    geographyDir: join("data", "geography"),
    pageDir: "dist",
  };
}
