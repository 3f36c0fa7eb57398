import { afterEach, beforeEach, expect, test } from "vitest";
import type { Database } from "../../db/database.ts";
import { onTune } from "../../db/decisions.ts";
import { decisions, tunes } from "../../db/schema.ts";
import { acceptedTunes } from "../../db/shown-tunes.ts";
import type { TuneRow } from "../../db/tunes.ts";
import { fitBounded } from "../../model/bounded-fit.ts";
import { fitsHere } from "../../server/fitted.ts";
import { allFitRows, openTestAtlas, post, type TestAtlas } from "./atlas.ts";
import { honestCrowd } from "./crowd.ts";

let atlas: TestAtlas;
const ORDER = { known: [], before: [] };

beforeEach(async () => {
  atlas = await openTestAtlas();
  for (const tune of honestCrowd(30, 3)) await post(atlas.app, tune);
});
afterEach(() => atlas.close());

test("read page by page, and of some owners alone, it is the fit that anyone makes of all rows in memory", async () => {
  const rows = await allFitRows(atlas.db);
  for (const owners_most of [12, 30]) {
    for (const page of [7, 1000]) {
      const { fit, tunes: read } = await fitsHere(atlas.db, { owners_most, page }).fit(ORDER);
      expect(read).toBe(rows.length / 2);
      expect(fit?.groups).toEqual(fitBounded(rows, undefined, owners_most).groups);
      expect(fit?.groups.map(({ contributors }) => contributors)).toEqual([30, 30]);
    }
  }
});

/** A database on which somebody writes after each of its first reads. */
function withWriter(db: Database, writes: number, write: () => Promise<unknown>): Database {
  let left = writes;
  return new Proxy(db, {
    get: (target, name, receiver) => {
      const own = Reflect.get(target, name, receiver);
      if (name !== "select") return own;
      return (...columns: unknown[]) => {
        if (left > 0) {
          left--;
          void write();
        }
        return own.apply(target, columns);
      };
    },
  });
}

test("tunes that change between two pages are read again: rows, hash and counts are of one state", async () => {
  let n = 0;
  const [like] = (await acceptedTunes(atlas.db).next()).value as [TuneRow];
  const decision = onTune({
    ...{ tune: like.id, by: "screening", reasons: "[]" },
    ...{ verdict: "accepted" as const, decided_on: "2026-11-25" },
  });
  const write = () => {
    const late = { ...like, id: `late ${n}`, contributor: `late ${n}`, pseudonym: `late ${n++}` };
    return atlas.db.batch([
      atlas.db.insert(tunes).values(late),
      atlas.db.insert(decisions).values(decision),
    ]);
  };
  const read = await fitsHere(withWriter(atlas.db, 3, write), { page: 7 }).fit(ORDER);
  expect(n).toBe(3);
  expect(read).toEqual({ ...(await fitsHere(atlas.db).fit(ORDER)), took_ms: expect.any(Number) });
  const always = withWriter(atlas.db, Number.POSITIVE_INFINITY, write);
  await expect(fitsHere(always, { page: 7 }).fit(ORDER)).rejects.toThrow(
    "The tunes change faster than they are read.",
  );
});
