import { execFile } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, test } from "vitest";
import { sumsOf, TABLES } from "../../db/contents.ts";
import { appendDecisions } from "../../db/decisions.ts";
import { publishFit } from "../../db/fits.ts";
import { openDatabase } from "../../db/open.ts";
import { keepRefusal } from "../../db/refusal.ts";
import { judgedBeside } from "../../db/schema.ts";
import { openKeys } from "../../server/keys.ts";
import { moveFromEdge, moveToEdge } from "../../server/move.ts";
import { requireOwnSecret } from "../../server/secret-check.ts";
import { goodTune, openTestAtlas, post } from "../server/atlas.ts";
import { putEmptyDatabase } from "./workerd.ts";

const SECRET = "a secret for tests only";
const STEWARD_TOKEN = "steward-token-for-tests-only";

let folder: string;
let edge: { local: true; config: string };
let filled: { file: string; sent: { id: string; receipt: string }[] };
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "hypsotune-move-test-"));
  const config = join(folder, "wrangler.toml");
  writeFileSync(
    config,
    `name = "hypsotune"
compatibility_date = "2026-07-01"
[[d1_databases]]
binding = "ATLAS_DB"
database_name = "another name"
database_id = "00000000-0000-0000-0000-000000000000"
migrations_dir = "${resolve("db/migrations")}"
`,
  );
  // Beside its configuration wrangler keeps what it holds on this machine.
  putEmptyDatabase(join(folder, ".wrangler", "state"));
  edge = { local: true, config };
  filled = await filledAtlas();
});
afterAll(() => {
  rmSync(folder, { recursive: true });
  rmSync(dirname(filled.file), { recursive: true });
});

const sumsIn = (file: string) => {
  const database = new DatabaseSync(file);
  const sums = sumsOf(database);
  database.close();
  return sums;
};

/** A stopped atlas with something in every table, and what its owner holds. */
async function filledAtlas() {
  const atlas = await openTestAtlas({ newKeyDays: 6, stewardToken: STEWARD_TOKEN });
  await requireOwnSecret(atlas.db, await openKeys(SECRET));
  const sent: { id: string; receipt: string }[] = [];
  for (let n = 0; n < 40; n++) {
    const key = { "Idempotency-Key": `key-of-tune-${n}` };
    // Digits that no double has exactly.
    const tune = { ...goodTune(n), meter: { kind: "portable meter", distance_m: 0.1 * (n + 1) } };
    const response = await post(atlas.app, tune, key);
    expect(response.status).toBe(201);
    sent.push(await response.json());
  }
  await post(atlas.app, { ...goodTune(50), tuned_on: "2099-01" });
  const sentence = 'He said: "it\'s fine";\n-- BEGIN, é 測 \\n';
  const reasons = JSON.stringify([{ code: "own_words", field: "", sentence }]);
  const decision = {
    tune: sent[0]?.id ?? "",
    by: "steward",
    verdict: "accepted",
    reasons,
  } as const;
  await appendDecisions(atlas.db, [{ ...decision, decided_on: "2026-11" }]);
  // The last number of a decision goes with its tune, and must not be given again.
  const [gone] = [sent.pop()];
  const headers = { Authorization: `Bearer ${gone?.receipt}` };
  await atlas.app.request(`/api/tunes/${gone?.id}`, { method: "DELETE", headers });
  const fit = await atlas.fit.current();
  await publishFit(atlas.db, {
    ...fit,
    version: "2026-11-25.1",
    rows_sha256: "'é測;\n".repeat(30_000),
  });
  const groups = JSON.stringify(fit.groups);
  await atlas.db.insert(judgedBeside).values({ version: "2026-10-01.1", groups });
  await atlas.stop();
  // Stopping makes a fit, which would end it.
  const { db, close } = await openDatabase(atlas.file);
  await keepRefusal(db, "2026-11-25", JSON.stringify([{ code: "moved" }]));
  close();
  return { file: atlas.file, sent };
}

test("an atlas goes to D1 and back with nothing lost, and its receipts open their tunes there", async () => {
  const { file, sent } = filled;
  const before = sumsIn(file);
  for (const { name } of TABLES) expect([name, before[name]?.rows]).not.toEqual([name, 0]);

  const moved = await moveToEdge(file, SECRET, edge);
  expect(moved).toEqual(before);
  expect(sumsIn(file)).toEqual(before);

  const back = join(folder, "back", "atlas.db");
  expect(await moveFromEdge(edge, back)).toEqual(before);
  const again = await openTestAtlas({ file: back, newKeyDays: 6 });
  for (const { id, receipt } of sent) {
    const headers = { Authorization: `Bearer ${receipt}` };
    expect((await again.app.request(`/api/tunes/${id}`, { headers })).status).toBe(200);
  }
  const repeated = await post(again.app, goodTune(0), {
    "Idempotency-Key": "key-1000",
  });
  expect(repeated.status).toBe(201);
  await again.stop();

  // The database is taken now.
  await expect(moveToEdge(file, SECRET, edge)).rejects.toThrow(/not empty/);
});

test("tables are those of a database, every column of them", async () => {
  const file = join(folder, "empty.db");
  (await openDatabase(file)).close();
  const database = new DatabaseSync(file);
  const names = database.prepare("SELECT name FROM sqlite_master WHERE type = 'table'").all();
  expect(TABLES.map(({ name }) => name).toSorted()).toEqual(
    names
      .map(({ name }) => String(name))
      .filter((name) => !/^(sqlite_|__drizzle_)/.test(name))
      .toSorted(),
  );
  for (const { name, columns } of TABLES) {
    const found = database.prepare("SELECT name, pk FROM pragma_table_info(?)").all(name);
    expect(columns.toSorted()).toEqual(found.map((c) => String(c.name)).toSorted());
    expect(found.find(({ pk }) => pk)?.name).toBe(columns[0]);
  }
  database.close();
});

test("a move that must not be is refused with the remedy, and changes nothing", async () => {
  const { file } = filled;
  const before = sumsIn(file);
  await expect(moveToEdge(file, "another secret for tests", edge)).rejects.toThrow(
    /secret is not the one/,
  );
  await expect(moveFromEdge(edge, file)).rejects.toThrow(/is there already/);
  await expect(moveToEdge(join(folder, "none.db"), SECRET, edge)).rejects.toThrow(/no database/);
  expect(sumsIn(file)).toEqual(before);
  const named = [["d1"], ["a.db", "b.db"]];
  const refused = named.map((names) =>
    promisify(execFile)(process.execPath, ["server/move-command.ts", ...names]),
  );
  const usage = { code: 1, stderr: expect.stringContaining("npm run move") };
  await Promise.all(refused.map((one) => expect(one).rejects.toMatchObject(usage)));
});
