import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { ownServer } from "../built/own-command.ts";
import { goodTune } from "../server/atlas.ts";
import { holdDatabase } from "./holding-process.ts";

const CLIENTS = 4;

/**
 * Holds the database of a server under load by another process.
 * @returns statuses of the submissions while it is held and after its release, and how long the first success took after it
 */
export async function lockUnderLoad(held_ms: number) {
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-locked-"));
  const file = join(folder, "atlas.db");
  const server = await ownServer(file);
  const seen = { during: new Map<number, number>(), after: new Map<number, number>() };
  let [n, isSending, released_at, recovered_ms] = [0, true, 0, Number.NaN];
  const send = async () => {
    while (isSending) {
      const response = await fetch(`${server.url}/api/tunes`, {
        method: "POST",
        headers: { "Content-Type": "application/json" },
        body: JSON.stringify(goodTune(n++)),
      });
      const when = released_at === 0 ? seen.during : seen.after;
      when.set(response.status, (when.get(response.status) ?? 0) + 1);
      if (released_at > 0 && response.ok && Number.isNaN(recovered_ms)) {
        recovered_ms = performance.now() - released_at;
      }
    }
  };
  const other = await holdDatabase(file);
  const sending = Array.from({ length: CLIENTS }, send);
  await setTimeout(held_ms);
  const read = await fetch(`${server.url}/api/start?heat_kW=5&elevation_m=2000`);
  const ready = await fetch(`${server.url}/api/ready`);
  await other.release();
  released_at = performance.now();
  // Until each client has an answer that it asked for after the release.
  for (const from = n; n < from + 20 * CLIENTS; ) await setTimeout(50);
  isSending = false;
  await Promise.all(sending);
  server.process.kill("SIGTERM");
  await server.ended;
  rmSync(folder, { recursive: true });
  return { ...seen, read: read.status, ready: ready.status, recovered_ms };
}
