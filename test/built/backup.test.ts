import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import {
  chmodSync,
  copyFileSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { backUp, restore } from "../../server/backup.ts";
import { openAtlas } from "../../server/node.ts";
import { settingsFrom } from "../../server/settings.ts";
import { WAIT_ms } from "../limits.ts";
import { goodTune } from "../server/atlas.ts";
import { type OwnServer, ownServer } from "./own-command.ts";

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "hypsotune-backup-"));
  file = join(folder, "old", "atlas.db");
});
afterEach(() => rmSync(folder, { recursive: true }));

interface Sent {
  id: string;
  receipt: string;
}

async function submit(url: string, n: number): Promise<Sent> {
  const response = await fetch(`${url}/api/tunes`, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(goodTune(n)),
  });
  expect(response.status).toBe(201);
  return response.json();
}

const command = (name: "backup" | "restore", dir: string, database: string) =>
  new Promise<{ code: number; said: string }>((done) => {
    const env = { ...process.env, ATLAS_DB: database };
    execFile("npm", ["run", "--silent", name, "--", dir], { env }, (error, out, complaints) =>
      done({ code: Number(error?.code ?? 0), said: out + complaints }),
    );
  });

const opened = (database: string, ATLAS_SECRET?: string) =>
  openAtlas(settingsFrom({ ATLAS_DB: database, ATLAS_SECRET }, false));

async function stop({ process: server, ended }: OwnServer): Promise<void> {
  server.kill("SIGTERM");
  expect(await ended).toBe(0);
}

/** That an atlas opens on the file, and the receipts of all those tunes open them there. */
async function allThere(database: string, sent: readonly Sent[]): Promise<void> {
  const atlas = await opened(database);
  for (const { id, receipt } of sent) {
    const headers = { Authorization: `Bearer ${receipt}` };
    expect((await atlas.app.request(`/api/tunes/${id}`, { headers })).status).toBe(200);
  }
  await atlas.close();
}

test("backed up while tunes pour in, and restored elsewhere: every tune acknowledged before it is there, and its receipt opens it; stopped, the file and its secret copied are all of it, as the README says", async () => {
  const server = await ownServer(file);
  const acknowledged: Sent[] = [];
  let [n, isPouring] = [0, true];
  const pour = async () => {
    while (isPouring) acknowledged.push(await submit(server.url, n++));
  };
  const pouring = [pour(), pour(), pour(), pour()];
  await vi.waitFor(() => expect(acknowledged.length).toBeGreaterThan(100), { timeout: WAIT_ms });
  const before = [...acknowledged];
  const copy = join(folder, "copy");
  const made = await command("backup", copy, file);
  const during = acknowledged.length - before.length;
  isPouring = false;
  await Promise.all(pouring);
  expect(made, made.said).toMatchObject({ code: 0 });
  expect(during).toBeGreaterThan(0);
  await stop(server);

  // Its owner's alone, and the sums are those that the system's own tool finds.
  for (const name of readdirSync(copy)) expect(statSync(join(copy, name)).mode & 0o77).toBe(0);
  const sums = await new Promise<string>((done, failed) =>
    execFile("sha256sum", ["-c", "SHA256SUMS"], { cwd: copy }, (error, out) =>
      error ? failed(error) : done(out),
    ),
  );
  expect(sums).toBe("atlas.db: OK\natlas.db.secret: OK\n");

  const elsewhere = join(folder, "new", "atlas.db");
  const restored = await command("restore", copy, elsewhere);
  expect(restored, restored.said).toMatchObject({ code: 0 });
  const [, tunes] = /holds (\d+) tunes/.exec(restored.said) ?? [];
  expect(Number(tunes)).toBeGreaterThanOrEqual(before.length);
  await allThere(elsewhere, before);

  const copied = join(folder, "copied.db");
  copyFileSync(file, copied);
  copyFileSync(`${file}.secret`, `${copied}.secret`);
  await allThere(copied, acknowledged);
});

test("a backup into a folder with something in it, of nothing, or tampered with, and a restore onto something, are refused in a sentence", async () => {
  const atlas = await opened(file);
  const copy = join(folder, "copy");
  await backUp(file, undefined, copy);
  expect(await command("backup", copy, file)).toMatchObject({
    code: 1,
    said: expect.stringMatching(/^\S+ is not empty\. .*\n$/),
  });
  const none = backUp(join(folder, "none.db"), undefined, join(folder, "x"));
  await expect(none).rejects.toThrow("There is no database");
  expect(await command("restore", copy, file)).toMatchObject({
    code: 1,
    said: expect.stringMatching(/^Another atlas is open .*\n$/),
  });
  await atlas.close();
  await expect(restore(copy, undefined, file)).rejects.toThrow("is not overwritten");
  const bytes = readFileSync(join(copy, "atlas.db"));
  bytes[5000] = (bytes[5000] ?? 0) ^ 1;
  writeFileSync(join(copy, "atlas.db"), bytes);
  const tampered = restore(copy, undefined, join(folder, "new.db"));
  await expect(tampered).rejects.toThrow("is not as it was backed up");
});

test("a secret that is not the database's own gets into no backup, and a backup with one into no place", async () => {
  await (await opened(file)).close();
  const [copy, place] = [join(folder, "copy"), join(folder, "new.db")];
  const other = "some other secret of the right length";
  const notOwn = "not the one this database was made with";
  await expect(backUp(file, other, copy)).rejects.toThrow(notOwn);
  const own = readFileSync(`${file}.secret`, "utf8");
  writeFileSync(`${file}.secret`, other);
  await expect(backUp(file, undefined, copy)).rejects.toThrow(notOwn);
  expect(readdirSync(folder)).toEqual(["old"]);
  await backUp(file, own, copy);

  await expect(restore(copy, other, place)).rejects.toThrow(notOwn);
  const sums = readFileSync(join(copy, "SHA256SUMS"), "utf8");
  const sumOf = (text: string) => createHash("sha256").update(text).digest("hex");
  writeFileSync(join(copy, "SHA256SUMS"), sums.replace(sumOf(`${own}\n`), sumOf(`${other}\n`)));
  writeFileSync(join(copy, "atlas.db.secret"), `${other}\n`);
  await expect(restore(copy, undefined, place)).rejects.toThrow(notOwn);
  expect(readdirSync(folder).toSorted()).toEqual(["copy", "new.db.lock", "old"]);
  await restore(copy, own, place);
  await (await opened(place)).close();
});

test("what must not be opened is refused at the start, with the remedy, and left as it is", async () => {
  const server = await ownServer(file);
  await submit(server.url, 1);
  await stop(server);
  const secret = readFileSync(`${file}.secret`);
  const whole = readFileSync(file);
  const refused = (database: string, why: RegExp, ATLAS_SECRET?: string) =>
    expect(opened(database, ATLAS_SECRET)).rejects.toThrow(why);
  rmSync(`${file}.secret`);
  const refusing = await ownServer(file);
  expect(await refusing.ended).toBe(1);
  expect(refusing.complaints()).toMatch(/secret of .* is missing/);
  expect(refusing.complaints()).not.toMatch(/\n\s+at /);
  await refused(file, /secret of .* is missing.* Put .*atlas\.db\.secret back/);
  writeFileSync(`${file}.secret`, "some other secret of the right length");
  await refused(file, /not the one this database was made with.* Put the secret file of the same/);
  await refused(
    file,
    /not the one this database was made with/,
    "a third secret of the right length",
  );
  writeFileSync(`${file}.secret`, secret);
  chmodSync(file, 0o400);
  await refused(file, /cannot be written.*chmod u\+w/);
  chmodSync(file, 0o600);
  const odd = join(folder, "odd");
  mkdirSync(odd);
  writeFileSync(join(odd, "empty.db"), "");
  await refused(join(odd, "empty.db"), /is empty \(0 bytes\).*Restore a backup/);
  writeFileSync(join(odd, "text.db"), "id,heat_kW\n".repeat(1000));
  await refused(join(odd, "text.db"), /is no database of an atlas.*Restore a backup/);
  linkSync(file, join(odd, "linked.db"));
  await refused(join(odd, "linked.db"), /another name.*Delete the other name/);
  await refused(file, /another name.*Delete the other name/);
  rmSync(join(odd, "linked.db"));
  expect(readFileSync(file).equals(whole)).toBe(true);
  const again = await opened(file);
  expect((await (await again.app.request("/api/health")).json()).tunes).toBe(1);
  await again.close();
});
