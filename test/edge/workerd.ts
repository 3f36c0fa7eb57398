import { spawn } from "node:child_process";
import { cpSync, globSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { wrangler } from "../../server/wrangler.ts";

/** The atlas on workerd with D1, as wrangler runs it on this machine. */
export interface Workerd {
  ask: (path: string, init?: RequestInit) => Promise<Response>;
  /** What the cron does every five minutes. */
  everyFiveMinutes: () => Promise<void>;
  /** The processes that it runs as, all of one group. */
  group: number;
  close: () => Promise<void>;
}

const migrations = globSync("db/migrations/*.sql").toSorted();

/** SQL that brings a database up to date, and writes it down as wrangler does, which starts a workerd for each file. */
const applying = (files: string[]): string =>
  files
    .flatMap((file) => [
      readFileSync(file, "utf8"),
      `INSERT INTO d1_migrations (name) VALUES ('${basename(file)}');`,
    ])
    .join("\n");

/** A folder with an empty database, once made: a command takes longer than most of the tests. */
let emptyState: string | undefined;

/** Puts an empty database, all but up to date, where wrangler keeps what it has on this machine. */
export function putEmptyDatabase(state: string): void {
  emptyState ??= madeEmptyState();
  cpSync(emptyState, state, { recursive: true });
}

function madeEmptyState(): string {
  const state = mkdtempSync(join(tmpdir(), "hypsotune-edge-"));
  process.once("exit", () => rmSync(state, { recursive: true }));
  const schema = join(state, "schema.sql");
  writeFileSync(
    schema,
    `CREATE TABLE d1_migrations (id INTEGER PRIMARY KEY AUTOINCREMENT, name TEXT UNIQUE, applied_at TIMESTAMP DEFAULT CURRENT_TIMESTAMP NOT NULL);
${applying(migrations.slice(0, -1))}`,
  );
  wrangler(["d1", "execute", "ATLAS_DB", "--local", "--persist-to", state, "--file", schema]);
  return state;
}

/** Runs SQL in the database of a folder, which nothing else has open. */
function inDatabase(state: string, sql: string): void {
  const [file = ""] = globSync(`${state}/v3/d1/*/*.sqlite`, {
    exclude: ["**/metadata.sqlite"],
  });
  const database = new DatabaseSync(file);
  database.exec(sql);
  database.close();
}

/**
 * @param script another entry than the atlas's own
 * @param sql what is in the database first
 */
export async function openWorkerd(
  vars: Record<string, string | number>,
  { script, sql }: { script?: string; sql?: string } = {},
): Promise<Workerd> {
  const state = mkdtempSync(join(tmpdir(), "hypsotune-edge-"));
  putEmptyDatabase(state);
  inDatabase(state, `${applying(migrations.slice(-1))}${sql ?? ""}`);
  const child = spawn(
    process.execPath,
    [
      ...["node_modules/wrangler/bin/wrangler.js", "dev", ...(script ? [script] : [])],
      ...["--port", "0", "--inspector-port", "0", "--local", "--persist-to", state],
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
    group: child.pid as number,
    close: async () => {
      // The whole group: wrangler runs workerd as a process of its own.
      process.kill(-(child.pid as number), "SIGKILL");
      rmSync(state, { recursive: true, force: true });
    },
  };
}
