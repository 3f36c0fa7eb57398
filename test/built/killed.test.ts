import { spawn } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openDatabase } from "../../db/open.ts";
import { findTune } from "../../db/tunes.ts";
import { ensureGeography } from "../../server/geography/build.ts";
import { goodTune } from "../server/atlas.ts";

test("killed in the middle of submissions, every acknowledged one is there", async () => {
  await ensureGeography("data/geography", { log: () => {} });
  const file = join(mkdtempSync(join(tmpdir(), "hypsotune-killed-")), "atlas.db");
  const server = spawn("node_modules/.bin/node", ["server/node.ts"], {
    env: { ...process.env, PORT: "0", ATLAS_DB: file, WRITE_LIMIT: "0", NEW_KEY_DAYS: "0" },
    stdio: ["ignore", "pipe", "inherit"],
  });
  let said = "";
  const url = await new Promise<string>((open) => {
    server.stdout.on("data", (text) => {
      said += text;
      const [, address] = /open at (http:\/\/\S+:\d+)\s/.exec(said) ?? [];
      if (address) open(address);
    });
  });
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
