import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { quantile } from "simple-statistics";
import { openDatabase } from "../../db/open.ts";
import { acceptedTunes } from "../../db/shown-tunes.ts";
import type { TuneRow } from "../../db/tunes.ts";
import { ownServer } from "../built/own-command.ts";
import { goodTune, openTestAtlas, post } from "../server/atlas.ts";
import { putTunes } from "./many-tunes.ts";

const READERS = 8;
const ASKED = 2000;
const DEAR = ["/api/tunes.csv", "/api/tunes.geojson", "/api/cells/world"];

/** Readers are a process of their own, so that what they unpack does not slow who measures; a line for each answer. */
const READ = `
const [url, readers, ...paths] = process.argv.slice(1);
const read = async (k) => {
  for (let n = k; ; n++) {
    const response = await fetch(url + paths[n % paths.length]);
    if (!response.ok) throw new Error(response.url + ": " + response.status);
    await response.arrayBuffer();
    console.log(response.url);
  }
};
for (let k = 0; k < Number(readers); k++) read(k);
`;

/**
 * Reads exports and cells of so many tunes with eight clients, while another asks for start tunes.
 * @returns how long 99 in 100 of those took at most, ms: idle, while what is read is prepared, and once it is
 */
export async function readMany(
  tunes: number,
): Promise<{ idle_ms: number; preparing_ms: number; reading_ms: number; read: number }> {
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-readers-"));
  const file = join(folder, "atlas.db");
  const model = await openTestAtlas();
  await post(model.app, goodTune());
  const { value } = await acceptedTunes(model.db).next();
  await model.close();
  const { db, close } = await openDatabase(file);
  await putTunes(db, (value as TuneRow[])[0] as TuneRow, tunes);
  close();
  const server = await ownServer(file, { ATLAS_SECRET: "a secret for tests only" });
  const get = async (path: string) => {
    const response = await fetch(`${server.url}${path}`);
    if (!response.ok) throw new Error(`${path}: ${response.status}`);
    await response.arrayBuffer();
  };
  const started = async () => {
    const took: number[] = [];
    for (let n = 0; n < ASKED; n++) {
      const began = performance.now();
      await get(`/api/start?heat_kW=5&elevation_m=${n % 4000}`);
      took.push(performance.now() - began);
    }
    return quantile(took, 0.99);
  };
  const idle_ms = await started();
  const readers = spawn(process.execPath, ["-e", READ, server.url, String(READERS), ...DEAR], {
    stdio: ["pipe", "pipe", "inherit"],
  });
  let read = 0;
  readers.stdout.on("data", (lines: Buffer) => {
    read += lines.toString().split("\n").length - 1;
  });
  const preparing_ms = await started();
  for (const path of DEAR) await get(path);
  const before = read;
  // For as long as each of them takes to read something twice.
  let reading_ms = 0;
  do {
    if (readers.exitCode !== null) throw new Error("The readers broke off.");
    reading_ms = Math.max(reading_ms, await started());
  } while (read - before < 2 * READERS);
  read -= before;
  readers.kill();
  await once(readers, "exit");
  server.process.kill("SIGTERM");
  await server.ended;
  rmSync(folder, { recursive: true });
  return { idle_ms, preparing_ms, reading_ms, read };
}
