import { mkdirSync, mkdtempSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { sql } from "drizzle-orm";
import { expect, test } from "vitest";
import { claimDatabase, DatabaseTaken } from "../../db/claim.ts";
import { NewerDatabase, openDatabase } from "../../db/open.ts";
import { countTunes } from "../../db/tunes.ts";
import { goodTune, openTestAtlas, post } from "../server/atlas.ts";

const fresh = () => join(mkdtempSync(join(tmpdir(), "hypsotune-db-")), "deep", "atlas.db");

test("a new file gets its folder, its schema, WAL and full synchronisation", async () => {
  const { db, close } = await openDatabase(fresh());
  expect(await countTunes(db)).toBe(0);
  expect(await db.values(sql`PRAGMA journal_mode`)).toEqual([["wal"]]);
  expect(await db.values(sql`PRAGMA synchronous`)).toEqual([[2]]);
  close();
});

test("opened again, a populated file keeps its rows", async () => {
  const atlas = await openTestAtlas();
  for (let n = 0; n < 5; n++) await post(atlas.app, goodTune(n));
  const again = await openDatabase(atlas.file);
  expect(await countTunes(again.db)).toBe(5);
  again.close();
  await atlas.close();
});

test("a newer database is refused with a word on what to do", async () => {
  const file = fresh();
  const { db, close } = await openDatabase(file);
  await db.run(
    sql`insert into __drizzle_migrations (hash, created_at) values ('later', 9999999999999)`,
  );
  close();
  await expect(openDatabase(file)).rejects.toThrow(NewerDatabase);
  await expect(openDatabase(file)).rejects.toThrow("newer version");
});

test("claimed under one name a database is taken under every other: a link to it, before it is there and after", async () => {
  const file = fresh();
  mkdirSync(dirname(file));
  const link = join(dirname(file), "..", "link.db");
  symlinkSync(file, link);
  const taken = () => expect(() => claimDatabase(link)).toThrow(DatabaseTaken);
  const letGo = claimDatabase(file);
  taken();
  const { close } = await openDatabase(file);
  taken();
  letGo();
  claimDatabase(link)();
  close();
});
