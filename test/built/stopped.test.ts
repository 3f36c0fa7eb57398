import { once } from "node:events";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { openDatabase } from "../../db/open.ts";
import { findTune } from "../../db/tunes.ts";
import { openAtlas } from "../../server/node.ts";
import { settingsFrom } from "../../server/settings.ts";
import { WAIT_ms } from "../limits.ts";
import { goodTune } from "../server/atlas.ts";
import { ownServer } from "./own-command.ts";

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "hypsotune-stopped-"));
  file = join(folder, "atlas.db");
});
afterEach(() => rmSync(folder, { recursive: true }));

test("told to stop in the middle of a submission: it is taken and answered, nobody new is let in, and the file alone holds everything", async () => {
  const server = await ownServer(file);
  const { port } = new URL(server.url);
  // Connections without a request do not hold it open: one that never had one, and one kept alive after its own.
  await once(connect(Number(port), "localhost"), "connect");
  expect((await fetch(`${server.url}/api/health`)).status).toBe(200);
  const body = JSON.stringify(goodTune());
  const socket = connect(Number(port), "localhost");
  let answer = "";
  socket.on("data", (text) => {
    answer += text;
  });
  const closed = once(socket, "close");
  socket.write(
    `POST /api/tunes HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: ${Buffer.byteLength(body)}\r\nExpect: 100-continue\r\n\r\n${body.slice(0, 50)}`,
  );
  // The server says that it has begun with this one.
  await vi.waitFor(() => expect(answer).toContain("100 Continue"), { timeout: WAIT_ms });
  server.process.kill("SIGTERM");
  await vi.waitFor(
    () => expect(fetch(`${server.url}/api/health`)).rejects.toThrow("fetch failed"),
    { timeout: WAIT_ms, interval: 50 },
  );
  socket.write(body.slice(50));
  await closed;
  expect(answer).toContain("HTTP/1.1 201");
  expect(await server.ended).toBe(0);
  expect(existsSync(`${file}-wal`)).toBe(false);
  const { db, close } = await openDatabase(file);
  const [, id = ""] = /"id":"(\w+)"/.exec(answer) ?? [];
  expect(await findTune(db, id)).toBeDefined();
  close();
});

test("a second server on the same file is refused by name, the first goes on, and once it has ended the file is free", async () => {
  const first = await ownServer(file);
  const second = await ownServer(file);
  expect(await second.ended).toBe(1);
  expect(second.url).toBe("");
  expect(second.complaints()).toMatch(/Another atlas is open on .*atlas\.db\. Stop that one first/);
  expect((await fetch(`${first.url}/api/ready`)).status).toBe(200);
  // However it ends: nothing of it keeps the next one out.
  first.process.kill("SIGKILL");
  expect(await first.ended).toBe("SIGKILL");
  const third = await openAtlas(settingsFrom({ ATLAS_DB: file }, false));
  expect((await third.app.request("/api/ready")).status).toBe(200);
  await third.close();
});
