import type { Context } from "hono";
import type { Database, Statement } from "../db/database.ts";
import type { Storage } from "../db/open.ts";
import type { MapConfiguration } from "./contract/about.ts";
import type { ElevationAnswer, FoundPlace } from "./contract/places.ts";
import type { Keys } from "./keys.ts";
import type { Limits } from "./limits.ts";
import type { Prepared } from "./prepared.ts";
import type { FitKeeper } from "./published-fit.ts";
import type { Trouble } from "./trouble.ts";

/** Places and elevations, wherever their files are read from. Throws GeographyMissing when they are not there. */
export interface Gazetteer {
  search(query: string, limit: number): Promise<FoundPlace[]>;
  elevation(lat: number, lon: number): Promise<Omit<ElevationAnswer, "credit">>;
  ready(): Promise<boolean>;
}

/** All that the API stands on. The two entries fill it; nothing in the routes knows which one did. */
export interface Services {
  db: Database;
  /** Writes statements, all or nothing, and answers once they are durable. */
  commit: (statements: Statement[]) => Promise<void>;
  /** Whether the database takes writes; where an engine has no such thing, it always does. */
  storage: Storage;
  /** Whether the server is about to stop, and takes no new connections. */
  stopping: () => boolean;
  keys: Keys;
  fit: FitKeeper;
  /** What is made of all tunes. */
  prepared: Prepared;
  gazetteer: Gazetteer;
  now: () => Date;
  demo: boolean;
  /** Counts what each client and all of them send. */
  limits: Limits;
  /** Days until a new contributor's tunes count; 0 for at once. */
  newKeyDays: number;
  /** Address of the client, for the write limit and for telling crowds of new contributors. */
  clientAddress: (c: Context) => string;
  /** What opens the steward's routes; without it there are none. */
  stewardToken?: string | undefined;
  /** Called after every write: starts a refresh of the fit without making anyone wait. */
  afterWrite: (c: Context) => void;
  /** Told of what whoever runs the atlas should know, however often it is met. It must not fail or take long. */
  onTrouble: (trouble: Trouble) => void;
  /** What the page needs to know of the configuration. */
  map: MapConfiguration;
}
