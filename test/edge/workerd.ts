import { spawn } from "node:child_process";
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { assembleEdge } from "../../server/edge.ts";
import { wrangler } from "../../server/wrangler.ts";

/** The atlas on workerd with D1, as wrangler runs it on this machine. */
export interface Workerd {
  ask: (path: string, init?: RequestInit) => Promise<Response>;
  /** What the cron does every five minutes. */
  everyFiveMinutes: () => Promise<void>;
  close: () => Promise<void>;
}

/** A folder with the schema in an empty database, once made: applying it takes longer than most of the tests. */
let emptyState: string | undefined;

function madeEmptyState(): string {
  const state = mkdtempSync(join(tmpdir(), "hypsotune-edge-"));
  wrangler(["d1", "migrations", "apply", "ATLAS_DB", "--local", "--persist-to", state]);
  process.once("exit", () => rmSync(state, { recursive: true }));
  return state;
}

/**
 * @param script another entry than the atlas's own
 * @param sql what is in the database first
 */
export async function openWorkerd(
  vars: Record<string, string | number>,
  { script, sql }: { script?: string; sql?: string } = {},
): Promise<Workerd> {
  await assembleEdge();
  const state = mkdtempSync(join(tmpdir(), "hypsotune-edge-"));
  emptyState ??= madeEmptyState();
  cpSync(emptyState, state, { recursive: true });
  const where = ["--local", "--persist-to", state];
  if (sql) wrangler(["d1", "execute", "ATLAS_DB", ...where, "--command", sql]);
  const child = spawn(
    process.execPath,
    [
      ...["node_modules/wrangler/bin/wrangler.js", "dev", ...(script ? [script] : [])],
      ...["--port", "0", "--inspector-port", "0", ...where],
      ...Object.entries(vars).flatMap(([name, value]) => ["--var", `${name}:${value}`]),
    ],
    {
      env: { ...process.env, CI: "true", WRANGLER_SEND_METRICS: "false" },
      detached: true,
      stdio: ["ignore", "pipe", "pipe"],
    },
  );
  let said = "";
  // A port that the system gives is nobody else's.
  const url = await new Promise<string>((ready, failed) => {
    const listen = (chunk: Buffer) => {
      said += chunk;
      const [, address] = /Ready on (http:\/\/\S+:\d+)\s/.exec(said) ?? [];
      if (address) ready(address);
    };
    child.stdout.on("data", listen);
    child.stderr.on("data", listen);
    child.once("exit", () => failed(new Error(said)));
  });
  return {
    ask: (path, init) => fetch(`${url}${path}`, init),
    everyFiveMinutes: async () => {
      const answer = await fetch(`${url}/cdn-cgi/local/scheduled`);
      if (!answer.ok) throw new Error(`${answer.status} ${await answer.text()}\n${said}`);
    },
    close: async () => {
      // The whole group: wrangler runs workerd as a process of its own.
      process.kill(-(child.pid as number), "SIGKILL");
      rmSync(state, { recursive: true, force: true });
    },
  };
}
