import { tunesOfImport, waitingOfImport } from "../../db/imports.ts";
import { findIdempotencyKey } from "../../db/kept-answers.ts";
import { COUNTED_BY_STEWARD, letCountBySteward } from "../../db/waiting.ts";
import type { Tune } from "../../model/tune.ts";
import type { Keys } from "../keys.ts";
import { NewKeys } from "../new-keys.ts";
import { RequestProblem } from "../problem.ts";
import { judge } from "../submission.ts";
import { keyOfTune, type Storing, submit } from "../submit.ts";
import type { Mapping } from "./mapping.ts";
import { readRow, withColumn } from "./row.ts";
import { ImportError, type Spreadsheet } from "./spreadsheet.ts";

/** What an import stands on. */
export interface Importing extends Storing {
  newKeyDays: number;
  /** Whether there is no room for more. */
  isShort: () => Promise<boolean>;
}

/** What came, or would come, of a row. */
export interface RowVerdict {
  line: number;
  verdict: "accepted" | "held" | "refused" | "there already" | "repeated";
  /** Why, each with the column that it speaks of. */
  sentences: string[];
}

export interface Imported {
  rows: RowVerdict[];
  contributors: number;
  /** How many tunes are stored now. */
  stored: number;
  /** Day from which the last of them is expected to count; null for now. */
  counts_from: string | null;
  /** Heater sizes whose tunes wait for more owners of them. */
  sizes_waiting: number[];
  /** Whether elevations could be held against the ground at stated places. */
  hasGround: boolean;
}

/** All that come with a file come from one address. */
const ADDRESS = "an import";

/** The name of an import as the database knows it. */
export const importHash = (keys: Keys, name: string): Promise<string> =>
  keys.hash("import", JSON.stringify([name]));

/**
 * Judges the rows of a spreadsheet as the door judges every tune, and stores them where that is asked for. A row is known again by
 * the import's name and what it holds, so doing it again stores what is missing and nothing twice.
 * @param name the import's
 * @param write whether to store; nothing is changed otherwise
 * @throws ImportError when tunes of an import of this name are not in the file any more, or there is no room
 */
export async function importSheet(
  services: Importing,
  sheet: Spreadsheet,
  mapping: Mapping,
  { name, write, countsNow }: { name: string; write: boolean; countsNow: boolean },
): Promise<Imported> {
  const { db, keys, now, newKeyDays } = services;
  const newKeys = new NewKeys({ db, keys, now, days: newKeyDays });
  const imported = await importHash(keys, name);
  const keyOf = (who: string) => keys.hash("import", JSON.stringify([name, who]));
  const [tunes, refused]: [{ line: number; tune: Tune; key: string }[], RowVerdict[]] = [[], []];
  for (const row of sheet.rows) {
    const read = await readRow(sheet, mapping, row, keyOf);
    if ("sentences" in read) {
      refused.push({ line: row.line, verdict: "refused", sentences: read.sentences });
      continue;
    }
    const key = await keys.hash("import", JSON.stringify([name, read.tune]));
    tunes.push({ line: row.line, tune: read.tune, key });
  }
  const left = new Set((await tunesOfImport(db, imported)).map(({ id }) => id));
  const kept = await Promise.all(
    tunes.map(async ({ tune, key }) =>
      findIdempotencyKey(db, (await keyOfTune(keys, tune, key)).hash),
    ),
  );
  for (const used of kept) left.delete(used?.tune ?? "");
  if (left.size > 0) {
    throw new ImportError(
      `${left.size} ${left.size === 1 ? "tune" : "tunes"} stored as import "${name}" are not in this file as it is read now: rows were changed or taken out, or columns are read otherwise. Take that import back first (npm run import -- --undo "${name}"), or, if this is another file, give it another --name.`,
    );
  }

  const first = new Map<string, number>();
  const rows: RowVerdict[] = [];
  const waits: string[] = [];
  const sizes = new Set<number>();
  let stored = 0;
  for (const [i, { line, tune, key }] of tunes.entries()) {
    const before = first.get(key);
    first.set(key, before ?? line);
    if (before !== undefined) {
      rows.push({ line, verdict: "repeated", sentences: [`It is the same as line ${before}.`] });
    } else if (kept[i]) {
      rows.push({ line, verdict: "there already", sentences: [] });
    } else {
      rows.push({ line, ...(await verdictOn(tune, key)) });
    }
  }
  if (write && countsNow) await letCount(services, imported);
  return {
    rows: [...rows, ...refused].toSorted((a, b) => a.line - b.line),
    contributors: new Set(tunes.map(({ tune }) => tune.contributor)).size,
    stored,
    hasGround: await services.gazetteer.ready(),
    counts_from: countsNow ? null : (waits.toSorted().at(-1) ?? null),
    sizes_waiting: [...sizes].toSorted((a, b) => a - b),
  };

  async function verdictOn(tune: Tune, idempotencyKey: string): Promise<Omit<RowVerdict, "line">> {
    try {
      const { verdict, reasons } = write
        ? await store(tune, idempotencyKey)
        : (await judge(services, tune)).answer;
      const sentences = reasons.map(({ field, sentence }) =>
        withColumn(mapping.fields, field, sentence),
      );
      return { verdict, sentences };
    } catch (error) {
      if (!(error instanceof RequestProblem && error.errors)) throw error;
      const sentences = error.errors.map(({ field, message }) =>
        withColumn(mapping.fields, field, message),
      );
      return { verdict: "refused", sentences };
    }
  }

  async function store(tune: Tune, idempotencyKey: string) {
    if (await services.isShort()) {
      throw new ImportError(
        `The atlas has no room for more: ${stored} tunes were stored now. Make room and run it again; what is stored is not stored twice.`,
      );
    }
    const options = { address: ADDRESS, idempotencyKey, imported };
    const { answer } = await submit(services, newKeys, tune, options);
    stored++;
    if (answer.counts_from) waits.push(answer.counts_from);
    if (answer.owners_needed) sizes.add(tune.heater.heat_kW);
    return answer;
  }
}

/** Whoever runs the atlas lets all who came with an import count at once; the log says so with each tune. */
async function letCount({ db, commit, now }: Importing, imported: string): Promise<void> {
  const sentence = "It came with an import whose owners whoever runs the atlas knows: they count.";
  const reasons = JSON.stringify([{ code: COUNTED_BY_STEWARD, field: "contributor", sentence }]);
  const today = now().toISOString().slice(0, 10);
  const statements = (await waitingOfImport(db, imported)).flatMap((contributor) =>
    letCountBySteward(db, contributor, reasons, today),
  );
  await commit(statements);
}
