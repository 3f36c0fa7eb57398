import { copyFileSync, existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { setTimeout } from "node:timers/promises";
import { eq } from "drizzle-orm";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { openDatabase } from "../../db/open.ts";
import { tunes } from "../../db/schema.ts";
import { seeded } from "../../seed-demo/random.ts";
import { sha256 } from "../../server/keys.ts";
import { WAIT_ms } from "../limits.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "../server/atlas.ts";

let atlas: TestAtlas;
beforeEach(async () => {
  atlas = await openTestAtlas({ newKeyDays: 6 });
});
afterEach(() => atlas.close());

/** Everything that the files of a database hold, whether the database would still show it or not. */
const bytes = (database = atlas.file) =>
  Buffer.concat(
    ["", "-wal", "-journal"]
      .map((end) => `${database}${end}`)
      .filter(existsSync)
      .map((file) => readFileSync(file)),
  ).toString("latin1");

interface Traces {
  id: string;
  receipt: string;
  /** Texts that this tune alone has. */
  traces: string[];
}

async function share(n: number): Promise<Traces> {
  const { uniform } = seeded(n);
  // Figures that no other tune has tell it by its own JSON.
  const tune = { ...goodTune(n), low: { ...goodTune(n).low, pump_Hz: 1 + uniform() / 10 } };
  const contributor = `a key of its own ${n}`.replaceAll(" ", "-");
  const sent = { ...tune, contributor };
  const response = await post(atlas.app, sent, { "Idempotency-Key": `gone-${n}-000000` });
  const { id, receipt } = await response.json();
  const [row] = await atlas.db.select().from(tunes).where(eq(tunes.id, id));
  return {
    id,
    receipt,
    traces: [
      id,
      row?.contributor as string,
      row?.receipt_sha256 as string,
      await sha256(JSON.stringify(sent)),
      `"pump_Hz":${sent.low.pump_Hz}`,
      contributor,
    ],
  };
}

const withdraw = ({ id, receipt }: Traces) =>
  atlas.app.request(`/api/tunes/${id}`, {
    method: "DELETE",
    headers: { Authorization: `Bearer ${receipt}` },
  });

test("withdrawn tunes have left no byte in the file or its WAL, nor in the tables; the others are whole", async () => {
  const shared: Traces[] = [];
  // Enough that pages split, so that rows were moved between them before they went.
  for (let n = 0; n < 300; n++) shared.push(await share(n));
  await atlas.fit.settle();
  const kept = shared.filter((_, n) => n % 3 > 0);
  const gone = shared.filter((_, n) => n % 3 === 0);
  // The test sees what is there.
  const before = bytes();
  for (const { traces } of gone) {
    for (const trace of traces.slice(0, 5)) expect(before.includes(trace)).toBe(true);
  }
  for (const one of gone) expect((await withdraw(one)).status).toBe(204);
  await atlas.fit.settle();
  const left = bytes();
  const found = gone.flatMap(({ traces }) => traces.filter((trace) => left.includes(trace)));
  expect(found).toEqual([]);
  for (const { traces } of kept)
    for (const trace of traces.slice(0, 5)) expect(left.includes(trace)).toBe(true);
  // Its key still tells that it was used.
  const again = await post(
    atlas.app,
    { ...goodTune(0), contributor: "a-key-of-its-own-0" },
    {
      "Idempotency-Key": "gone-0-000000",
    },
  );
  expect(again.status).toBe(409);
  const { title, detail } = await again.json();
  expect(title).toMatch(/withdrawn/);
  expect(detail).toMatch(/withdrawn/);
});

test("while a backup reads the file, what is withdrawn is gone as soon as the backup is done", async () => {
  const one = await share(1);
  const reader = new DatabaseSync(atlas.file);
  reader.exec("BEGIN");
  reader.prepare("SELECT count(*) FROM tunes").get();
  expect((await withdraw(one)).status).toBe(204);
  await setTimeout(10);
  reader.exec("ROLLBACK");
  reader.close();
  await vi.waitFor(
    () => {
      const left = bytes();
      expect(one.traces.filter((trace) => left.includes(trace))).toEqual([]);
    },
    { timeout: WAIT_ms, interval: 100 },
  );
});

test("killed between a withdrawal's commit and the emptying of the WAL: the next start empties it before anything else", async () => {
  const one = await share(1);
  const reader = new DatabaseSync(atlas.file);
  reader.exec("BEGIN");
  reader.prepare("SELECT count(*) FROM tunes").get();
  expect((await withdraw(one)).status).toBe(204);
  // What a kill would leave: the reader has kept the WAL from being emptied.
  const left = join(dirname(atlas.file), "left.db");
  for (const end of ["", "-wal"]) copyFileSync(`${atlas.file}${end}`, `${left}${end}`);
  reader.close();
  const found = () => one.traces.filter((trace) => bytes(left).includes(trace));
  expect(found()).not.toEqual([]);
  const { close } = await openDatabase(left);
  expect(found()).toEqual([]);
  close();
});
