import { once } from "node:events";
import type { Server } from "node:http";
import type { AddressInfo } from "node:net";
import { serve } from "@hono/node-server";
import type { Tune } from "../../model/tune.ts";
import { buildMissing } from "../../server/build-missing.ts";
import type { Health } from "../../server/contract.ts";
import { openAtlas } from "../../server/node.ts";
import { settingsFrom } from "../../server/settings.ts";
import { WAIT_ms } from "../limits.ts";

/** A real atlas on a port of its own, over a database of its own in memory. */
export interface RunningAtlas {
  url: string;
  get: <T>(path: string) => Promise<T>;
  /** Submits tunes like anyone and waits until the published fit rests on them. */
  load: (tunes: readonly Tune[]) => Promise<void>;
  /** Waits until another version than this one is published. */
  movedFrom: (version: string) => Promise<string>;
  close: () => Promise<void>;
}

/**
 * Opens an atlas as the server's own command does, in this process: one of its own takes most of a second to read all
 * modules. test/built/killed.test.ts has one.
 */
export async function runAtlas(
  args: readonly string[] = [],
  env: Record<string, string> = {},
): Promise<RunningAtlas> {
  const settings = settingsFrom(
    {
      ATLAS_DB: ":memory:",
      ATLAS_SECRET: "a secret for browser tests only",
      WRITE_LIMIT: "0",
      READ_LIMIT: "0",
      FLOOD_LIMIT: "0",
      NEW_KEY_DAYS: "0",
      ...env,
    },
    args.includes("--demo"),
  );
  await buildMissing(settings);
  const atlas = await openAtlas(settings);
  const server = serve({
    fetch: atlas.app.fetch,
    port: 0,
    // Other tests of this process need Node's own.
    overrideGlobalObjects: false,
  }) as Server;
  if (!server.listening) await once(server, "listening");
  const url = `http://localhost:${(server.address() as AddressInfo).port}`;
  const get = async <T>(path: string): Promise<T> => {
    const response = await fetch(`${url}/api${path}`);
    if (!response.ok) throw new Error(`${path}: ${response.status} ${await response.text()}`);
    return response.json();
  };
  const movedFrom = (version: string) =>
    until(async () => {
      const { fit, fit_pending } = await get<Health>("/health");
      return !fit_pending && fit !== version ? fit : undefined;
    });
  return {
    url,
    get,
    movedFrom,
    load: async (tunes) => {
      await Promise.all(tunes.map((tune) => submit(url, tune)));
      // Pending from the first of them until the version that has all is published.
      await movedFrom("prior");
    },
    close: async () => {
      const ended = once(server, "close");
      server.close();
      server.closeAllConnections();
      await ended;
      await atlas.close();
    },
  };
}

async function submit(url: string, tune: Tune): Promise<void> {
  const response = await fetch(`${url}/api/tunes`, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(tune),
  });
  if (response.status !== 201) throw new Error(`${response.status} ${await response.text()}`);
}

async function until<T>(look: () => Promise<T | undefined>): Promise<T> {
  const end = Date.now() + WAIT_ms;
  for (;;) {
    const found = await look();
    if (found !== undefined) return found;
    if (Date.now() > end) throw new Error("The atlas did not settle in time.");
    await new Promise((done) => setTimeout(done, 20));
  }
}
