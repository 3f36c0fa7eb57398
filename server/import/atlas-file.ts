import { existsSync } from "node:fs";
import { claimDatabase } from "../../db/claim.ts";
import type { Database } from "../../db/database.ts";
import { groupCommit } from "../../db/group-commit.ts";
import { takeBackImport, tunesOfImport } from "../../db/imports.ts";
import { openDatabase, openToRead, type Storage } from "../../db/open.ts";
import { openGeography } from "../geography/geography.ts";
import { readFrom } from "../geography/read-files.ts";
import { type Keys, openKeys } from "../keys.ts";
import { mapSources } from "../map-sources.ts";
import { keysOf } from "../node.ts";
import { FitKeeper } from "../published-fit.ts";
import { keptSecret } from "../secret.ts";
import { requireOwnSecret } from "../secret-check.ts";
import type { Settings } from "../settings.ts";
import { type Imported, type Importing, importHash, importSheet } from "./import.ts";
import type { Mapping } from "./mapping.ts";
import { ImportError, type Spreadsheet } from "./spreadsheet.ts";

const IN_MEMORY = ":memory:";

/**
 * A spreadsheet into an atlas's file. Storing asks for the file alone, so the atlas must be stopped; judging only reads, also beside one
 * that runs, and where there is none judges as a new one would.
 * @throws Error with the remedy
 */
export function importFile(
  settings: Settings,
  sheet: Spreadsheet,
  mapping: Mapping,
  options: Parameters<typeof importSheet>[3],
  now = () => new Date(),
): Promise<Imported> {
  const run = (services: Importing) => importSheet(services, sheet, mapping, options);
  return options.write ? writing(settings, now, run) : reading(settings, now, run);
}

/**
 * Withdraws all tunes of an import, all at once, and nothing else.
 * @returns how many there were
 * @throws Error with the remedy, also when there is no such import
 */
export function takeBack(
  settings: Settings,
  name: string,
  now = () => new Date(),
): Promise<number> {
  if (!existsSync(settings.database)) {
    throw new ImportError(`There is no database at ${settings.database}. Name it with ATLAS_DB.`);
  }
  return writing(settings, now, async ({ db, keys }, storage) => {
    const gone = await tunesOfImport(db, await importHash(keys, name));
    const [first, ...rest] = takeBackImport(db, gone, now().toISOString().slice(0, 10));
    if (!first) {
      throw new ImportError(
        `No tune came with an import "${name}". An import has the name that --name gave it, or that of its file without the ending.`,
      );
    }
    await storage.findRoomFor(() => db.batch([first, ...rest]));
    await storage.forget();
    return gone.length;
  });
}

async function writing<T>(
  settings: Settings,
  now: () => Date,
  run: (services: Importing, storage: Storage) => Promise<T>,
): Promise<T> {
  const letGo = claimDatabase(settings.database);
  try {
    const { db, storage, isNew, close } = await openDatabase(settings.database, settings.room);
    try {
      const keys = await keysOf(settings, db, isNew);
      return await run(servicesOf(settings, now, db, keys, storage.isShort), storage);
    } finally {
      close();
    }
  } finally {
    letGo();
  }
}

async function reading<T>(
  settings: Settings,
  now: () => Date,
  run: (services: Importing) => Promise<T>,
): Promise<T> {
  const isThere = existsSync(settings.database);
  const { db, close } = isThere
    ? await openToRead(settings.database)
    : await openDatabase(IN_MEMORY);
  try {
    const secret =
      settings.secret || (await keptSecret(isThere ? settings.database : IN_MEMORY, false));
    const keys = await openKeys(secret);
    if (isThere) await requireOwnSecret(db, keys, false);
    return await run(servicesOf(settings, now, db, keys, async () => false));
  } finally {
    close();
  }
}

function servicesOf(
  settings: Settings,
  now: () => Date,
  db: Database,
  keys: Keys,
  isShort: Storage["isShort"],
): Importing {
  const { demo, newKeyDays } = settings;
  const believe_ms = Number.POSITIVE_INFINITY;
  const { tiles } = mapSources(settings.elevationTiles, settings.basemapStyle);
  return {
    ...{ db, keys, now, newKeyDays, isShort },
    commit: groupCommit(db),
    fit: new FitKeeper({ db, now, demo, believe_ms, newKeyDays }),
    gazetteer: openGeography(readFrom(settings.geographyDir), tiles),
  };
}
