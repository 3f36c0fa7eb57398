import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Tune } from "../../model/tune.ts";
import type { Health } from "../../server/contract.ts";

const START_WITHIN_ms = 170_000;
const SETTLE_WITHIN_ms = 30_000;

/** A real atlas in a process of its own, on a port of its own, over a database of its own. */
export interface RunningAtlas {
  url: string;
  get: <T>(path: string) => Promise<T>;
  /** Submits tunes like anyone and waits until the published fit rests on them. */
  load: (tunes: readonly Tune[]) => Promise<void>;
  /** Waits until another version than this one is published. */
  movedFrom: (version: string) => Promise<string>;
  close: () => Promise<void>;
}

/** Starts the server as its own command does; the first start builds what is missing. */
export async function runAtlas(
  args: readonly string[] = [],
  settings: Record<string, string> = {},
): Promise<RunningAtlas> {
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-browser-"));
  const server = spawn(process.execPath, ["server/node.ts", ...args], {
    env: {
      ...process.env,
      PORT: "0",
      ATLAS_DB: join(folder, "atlas.db"),
      ATLAS_SECRET: "a secret for browser tests only",
      WRITE_LIMIT: "0",
      ...settings,
    },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const url = await addressOf(server);
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
      // Sent at once, they may still be published in more than one version.
      await until(async () => {
        const { fit } = await get<Health>("/health");
        await new Promise((done) => setTimeout(done, 500));
        const later = await get<Health>("/health");
        return fit !== "prior" && later.fit === fit && !later.fit_pending ? fit : undefined;
      });
    },
    close: async () => {
      const ended = new Promise((done) => server.once("exit", done));
      server.kill("SIGTERM");
      await ended;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function addressOf(server: ChildProcess): Promise<string> {
  return new Promise((found, failed) => {
    let said = "";
    const give = setTimeout(() => failed(new Error(`No start in time:\n${said}`)), START_WITHIN_ms);
    const listen = (chunk: Buffer) => {
      said += chunk;
      const url = /http:\/\/localhost:\d+/.exec(said)?.[0];
      if (!url) return;
      clearTimeout(give);
      found(url);
    };
    server.stdout?.on("data", listen);
    server.stderr?.on("data", listen);
    server.once("exit", () => failed(new Error(`The server ended:\n${said}`)));
  });
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
  const end = Date.now() + SETTLE_WITHIN_ms;
  for (;;) {
    const found = await look();
    if (found !== undefined) return found;
    if (Date.now() > end) throw new Error("The atlas did not settle in time.");
    await new Promise((done) => setTimeout(done, 100));
  }
}
