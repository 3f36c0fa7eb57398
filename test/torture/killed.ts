import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openDatabase } from "../../db/open.ts";
import { countTunes, findTune } from "../../db/tunes.ts";
import { ownServer } from "../built/own-command.ts";
import { goodTune } from "../server/atlas.ts";

const CLIENTS = 8;
const ACKNOWLEDGED_EACH = 100;

/**
 * Kills a server in the middle of submissions, again and again over one file. A client whose answer was lost sends the same
 * again to the next server, as browsers do.
 * @returns tunes acknowledged, those of them that are not there, and how many are there in all
 */
export async function killUnderLoad(
  times: number,
): Promise<{ acknowledged: number; lost: string[]; stored: number; meant: number }> {
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-killed-"));
  const file = join(folder, "atlas.db");
  const acknowledged = new Map<number, string>();
  let meant = 0;
  let unanswered: number[] = [];
  for (let time = 0; time < times; time++) {
    const { url, process: server } = await ownServer(file);
    const until = acknowledged.size + ACKNOWLEDGED_EACH;
    const again = unanswered;
    unanswered = [];
    const send = async (): Promise<void> => {
      const n = again.pop() ?? meant++;
      unanswered.push(n);
      const response = await fetch(`${url}/api/tunes`, {
        method: "POST",
        headers: { "Content-Type": "application/json", "Idempotency-Key": `killed-${n}-0000` },
        body: JSON.stringify(goodTune(n)),
      });
      acknowledged.set(n, (await response.json()).id);
      unanswered = unanswered.filter((one) => one !== n);
      if (acknowledged.size === until) server.kill("SIGKILL");
      return send();
    };
    await Promise.allSettled(Array.from({ length: CLIENTS }, send));
    unanswered.push(...again);
  }
  const { db, close } = await openDatabase(file);
  const lost: string[] = [];
  for (const id of acknowledged.values()) if (!(await findTune(db, id))) lost.push(id);
  const stored = await countTunes(db);
  close();
  rmSync(folder, { recursive: true });
  return { acknowledged: acknowledged.size, lost, stored, meant };
}
