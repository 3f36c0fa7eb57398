import { createHash } from "node:crypto";
import { statfsSync, writeSync } from "node:fs";
import { parentPort } from "node:worker_threads";
import type { Database } from "../db/database.ts";
import { dataRevision } from "../db/decisions.ts";
import { SqliteFile } from "../db/sqlite-file.ts";
import { StorageFull } from "../db/storage-trouble.ts";
import type { PublishedFit } from "../model/fit/group.ts";
import type { Cell } from "./contract/cells.ts";
import { PackingInPieces } from "./gzip-in-pieces.ts";
import {
  cellsAnswer,
  DOCUMENTS,
  type DocumentName,
  shownOf,
  summedCells,
} from "./open-documents.ts";
import { makeRelease, type Packing } from "./release.ts";
import { type ScalingQuestion, scalingAnswer } from "./scaling-answer.ts";
import { failureOf, type ThreadFailure } from "./thread-failure.ts";

/** What the thread is asked to make. */
export type Order =
  /**
   * @param into descriptors of the open files that the documents are written to, in their order
   * @param reserve_bytes what the disk has left then at the least
   */
  | { make: "release"; demo: boolean; into: readonly number[]; reserve_bytes: number }
  | { make: "shown" }
  | { make: "scaling"; fit: PublishedFit; question: ScalingQuestion; demo: boolean }
  /** @param state names the state of fit and data that the cells are summed for */
  | { make: "cells"; fit: PublishedFit; parent: string; demo: boolean; state: string };
export type ToPrepareThread = { number: number; file: string; order: Order };
export type FromPrepareThread = { number: number } & ({ made: unknown } | ThreadFailure);
/** Bytes that are handed over, packed in pieces. */
export interface InMemory {
  bytes: Uint8Array<ArrayBuffer>;
  pieces: readonly number[];
}
/** How much was written to a file, and where its pieces are, if it is packed. */
export interface InFile {
  length: number;
  pieces: readonly number[] | null;
}

/** A reader waits so long for another process that holds the file, ms. */
const PATIENCE_ms = 60_000;

/** How cells were shown last: answers of one state of the data are asked for one after another. */
let shown: { revision: number; as: ReadonlyMap<string, string> } = { revision: -1, as: new Map() };

async function shownNow(db: Database): Promise<ReadonlyMap<string, string>> {
  const revision = await dataRevision(db);
  if (shown.revision !== revision) shown = { revision, as: await shownOf(db) };
  return shown.as;
}

/** The newest cells: parents of one state are asked for one after another. */
let summed: { state: string; cells: Cell[] } = { state: "", cells: [] };

async function make(file: string, order: Order): Promise<unknown> {
  const connection = new SqliteFile(file, PATIENCE_ms);
  try {
    // All of it is of one moment, however long it takes.
    await connection.execute("BEGIN");
    const { db } = connection;
    if (order.make === "shown") return await shownNow(db);
    if (order.make === "scaling") {
      return await scalingAnswer(db, order.fit, order.question, order.demo);
    }
    if (order.make === "release") {
      const room = { beside: file, reserve_bytes: order.reserve_bytes };
      requireRoom(room);
      return await makeRelease(db, order.demo, (name) =>
        packingOf(name, order.into[DOCUMENTS.indexOf(name)] as number, room),
      );
    }
    const { fit, parent, demo, state } = order;
    if (summed.state !== state) {
      summed = { state, cells: await summedCells(db, fit, await shownNow(db)) };
    }
    return await packed(cellsAnswer(summed.cells, parent, demo));
  } finally {
    connection.abandon();
  }
}

/** An answer, packed, in memory of its own: it is handed over, not copied. */
async function packed(answer: string): Promise<InMemory> {
  const parts: Uint8Array[] = [];
  const packing = new PackingInPieces((part) => parts.push(part));
  await packing.write(Buffer.from(answer));
  const pieces = await packing.end();
  return { bytes: new Uint8Array(Buffer.concat(parts)), pieces };
}

/** Writes a file packed, Parquet as it is, and hashes what comes. */
function packingOf(
  name: DocumentName,
  descriptor: number,
  room: { beside: string; reserve_bytes: number },
): Packing<InFile> {
  const hash = createHash("sha256");
  let [size_bytes, length] = [0, 0];
  const put = (bytes: Uint8Array) => {
    requireRoom(room);
    for (let at = 0; at < bytes.length; ) at += writeSync(descriptor, bytes, at);
    length += bytes.length;
  };
  const gzip = name === "tunes.parquet" ? null : new PackingInPieces(put);
  return {
    write: async (chunk) => {
      const bytes = Buffer.from(chunk);
      hash.update(bytes);
      size_bytes += bytes.length;
      if (gzip) await gzip.write(bytes);
      else put(bytes);
    },
    end: async () => {
      const pieces = gzip && (await gzip.end());
      return { size_bytes, sha256: hash.digest("hex"), length, pieces };
    },
  };
}

/** What is left of a disk is for tunes first. */
function requireRoom({ beside, reserve_bytes }: { beside: string; reserve_bytes: number }): void {
  const { bavail, bsize } = statfsSync(beside);
  if (bavail * bsize < reserve_bytes) throw new StorageFull();
}

let before: Promise<void> = Promise.resolve();

// One after another: each reads the whole database, but for what reads a few thousand tunes and comes in between.
parentPort?.on("message", ({ number, file, order }: ToPrepareThread) => {
  const isShort = order.make === "scaling";
  const begun = (isShort ? Promise.resolve() : before).then(async () => {
    try {
      const made = await make(file, order);
      const { bytes } = made as Partial<InMemory>;
      const handedOver = bytes ? [bytes.buffer] : [];
      parentPort?.postMessage({ number, made } satisfies FromPrepareThread, handedOver);
    } catch (error) {
      parentPort?.postMessage({ number, ...failureOf(error) } satisfies FromPrepareThread);
    }
  });
  if (!isShort) before = begun;
});
