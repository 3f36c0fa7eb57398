import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readlinkSync,
  renameSync,
  rmSync,
  statfsSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { problem } from "../../server/contract/problem.ts";
import { UnnamedFile } from "../../server/unnamed-file.ts";
import { goodTune, openTestAtlas, post } from "./atlas.ts";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "hypsotune-unnamed-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

const BYTES = Buffer.from("0123456789".repeat(100_000));

function written(): UnnamedFile {
  const file = new UnnamedFile(join(folder, "atlas.db"));
  writeSync(file.descriptor, BYTES);
  return Object.assign(file, { length: BYTES.length });
}

/** What a descriptor is of; empty where it was closed meanwhile. */
function linkOf(descriptor: string): string {
  try {
    return readlinkSync(`/proc/self/fd/${descriptor}`);
  } catch {
    return "";
  }
}

const bytesOf = async (stream: ReadableStream) =>
  Buffer.from(await new Response(stream).arrayBuffer());

test("it never has a name, also where a process that was killed left one; many read it at once, each their part", async () => {
  writeFileSync(join(folder, "atlas.db.open-data"), "left behind");
  const file = written();
  expect(readdirSync(folder)).toEqual([]);
  const parts = [
    [0, BYTES.length],
    [3, 300_000],
    [BYTES.length - 1, BYTES.length],
    [5, 5],
  ] as const;
  const read = await Promise.all(parts.map(([from, to]) => bytesOf(file.body(from, to))));
  for (const [n, [from, to]] of parts.entries())
    expect(read[n]?.equals(BYTES.subarray(from, to))).toBe(true);
  file.drop();
});

test("dropped, it is there for whoever reads it and for nobody else, and gone with the last of them, also with one who breaks off", async () => {
  const file = written();
  const [one, other] = [file.body(0, BYTES.length), file.body(0, BYTES.length).getReader()];
  const reading = bytesOf(one);
  await other.read();
  const late = file.body(0, 10);
  file.drop();
  file.drop();
  expect((await reading).equals(BYTES)).toBe(true);
  await expect(bytesOf(late)).rejects.toThrow(/dropped/);
  expect(() => writeSync(file.descriptor, "")).not.toThrow();
  await other.cancel();
  expect(() => writeSync(file.descriptor, "")).toThrow(/EBADF/);
});

test("a withdrawn tune is in no file beside the database, named or held open", async () => {
  const atlas = await openTestAtlas({ prepared: true });
  const { id, receipt } = await (await post(atlas.app, goodTune())).json();
  await post(atlas.app, goodTune(1));
  const exported = async () => await (await atlas.app.request("/api/tunes.csv")).text();
  expect(await exported()).toContain(id);
  /** Where the system tells what a process holds open. */
  const open = () =>
    existsSync("/proc/self/fd")
      ? readdirSync("/proc/self/fd").filter((n) => linkOf(n).includes("atlas.db.open-data")).length
      : 0;
  if (existsSync("/proc/self/fd")) expect(open()).toBe(3);
  const names = readdirSync(dirname(atlas.file)).filter((name) => !/-(wal|shm)$/.test(name));
  expect(names).toEqual(["atlas.db"]);
  const headers = { Authorization: `Bearer ${receipt}` };
  await atlas.app.request(`/api/tunes/${id}`, { method: "DELETE", headers });
  expect(open()).toBe(0);
  expect(await exported()).not.toContain(id);
  await atlas.close();
});

test("where the disk makes and opens no file open data and cells are a 503 with the remedy, and whoever runs the atlas is told", async () => {
  const told: string[] = [];
  const onTrouble = ({ event }: { event: string }) => void told.push(event);
  const atlas = await openTestAtlas({ prepared: true, onTrouble });
  await post(atlas.app, goodTune());
  const [there, away] = [dirname(atlas.file), `${dirname(atlas.file)}-away`];
  renameSync(there, away);
  for (const path of ["/api/tunes.csv", "/api/data", "/api/cells/world"]) {
    const answer = await atlas.app.request(path);
    expect(answer.status, path).toBe(503);
    expect(problem.parse(await answer.json()).detail).toMatch(/disk fails.*Ask again/);
  }
  expect(told).toEqual(["storage failing"]);
  renameSync(away, there);
  expect((await atlas.app.request("/api/tunes.csv")).status).toBe(200);
  await atlas.close();
});

test("on a disk without room to spare the open data are a 507, and tunes are taken and withdrawn", async () => {
  const { bavail, bsize } = statfsSync(folder);
  const left_bytes = bavail * bsize;
  // Tunes find this much left; files would have to leave twice as much.
  const atlas = await openTestAtlas({ prepared: true, disk_reserve_bytes: left_bytes * 0.75 });
  const { id, receipt } = await (await post(atlas.app, goodTune())).json();
  for (const path of ["/api/tunes.csv", "/api/data"]) {
    const answer = await atlas.app.request(path);
    expect(answer.status).toBe(507);
    expect(problem.parse(await answer.json()).detail).toMatch(/files of the open data/);
  }
  expect((await atlas.app.request("/api/cells/world")).status).toBe(200);
  expect((await post(atlas.app, goodTune(1))).status).toBe(201);
  const headers = { Authorization: `Bearer ${receipt}` };
  const gone = await atlas.app.request(`/api/tunes/${id}`, { method: "DELETE", headers });
  expect(gone.status).toBe(204);
  await atlas.close();
});
