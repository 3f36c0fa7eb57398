import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openDatabase } from "../../db/open.ts";
import { findTune } from "../../db/tunes.ts";
import { goodTune } from "../server/atlas.ts";
import { ownServer } from "./own-command.ts";

test("killed in the middle of submissions, every acknowledged one is there", async () => {
  const file = join(mkdtempSync(join(tmpdir(), "hypsotune-killed-")), "atlas.db");
  const { url, process: server } = await ownServer(file);
  const acknowledged: string[] = [];
  let sent = 0;
  const send = async (): Promise<void> => {
    const response = await fetch(`${url}/api/tunes`, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(goodTune(sent++)),
    });
    acknowledged.push((await response.json()).id);
    if (acknowledged.length === 100) server.kill("SIGKILL");
    return send();
  };
  await Promise.allSettled(Array.from({ length: 8 }, send));
  expect(acknowledged.length).toBeGreaterThanOrEqual(100);
  const { db, close } = await openDatabase(file);
  for (const id of acknowledged) expect(await findTune(db, id)).toBeDefined();
  close();
});
