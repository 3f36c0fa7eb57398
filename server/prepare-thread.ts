import { createHash } from "node:crypto";
import { parentPort } from "node:worker_threads";
import { SqliteFile } from "../db/sqlite-file.ts";
import type { PublishedFit } from "../model/fit/group.ts";
import type { Cell } from "./contract/cells.ts";
import { PackingInPieces } from "./gzip-in-pieces.ts";
import { cellsAnswer, type DocumentName, shownOf, summedCells } from "./open-documents.ts";
import type { Packed } from "./packed.ts";
import { makeRelease, type Packing, plainPacking, type Release } from "./release.ts";

/** What the thread is asked to make. */
export type Order =
  | { make: "release"; demo: boolean }
  | { make: "shown" }
  /** @param state names the state of fit and data that the cells are summed for */
  | { make: "cells"; fit: PublishedFit; parent: string; demo: boolean; state: string };
export type ToPrepareThread = { number: number; file: string; order: Order };
export type FromPrepareThread = { number: number } & ({ made: unknown } | { error: string });

/** A reader waits so long for another process that holds the file, ms. */
const PATIENCE_ms = 60_000;

/** The newest cells: parents of one state are asked for one after another. */
let summed: { state: string; cells: Cell[] } = { state: "", cells: [] };

async function make(file: string, order: Order): Promise<unknown> {
  const connection = new SqliteFile(file, PATIENCE_ms);
  try {
    // All of it is of one moment, however long it takes.
    await connection.execute("BEGIN");
    const { db } = connection;
    if (order.make === "shown") return await shownOf(db);
    if (order.make === "release") return await makeRelease(db, order.demo, packingOf);
    const { fit, parent, demo, state } = order;
    if (summed.state !== state) summed = { state, cells: await summedCells(db, fit) };
    const packing = gzipPacking();
    await packing.write(cellsAnswer(summed.cells, parent, demo));
    return await packing.end();
  } finally {
    connection.abandon();
  }
}

/** Parquet is packed as it is. */
const packingOf = (name: DocumentName) =>
  name === "tunes.parquet" ? plainPacking() : gzipPacking();

/** Packs and hashes as it comes. */
function gzipPacking(): Packing {
  const packing = new PackingInPieces();
  const hash = createHash("sha256");
  return {
    write: async (chunk) => {
      const bytes = Buffer.from(chunk);
      hash.update(bytes);
      packing.write(bytes);
    },
    end: async () => ({ ...packing.end(), sha256: hash.digest("hex") }),
  };
}

/** What is handed over to the server's thread. */
function handedOver(made: unknown): ArrayBuffer[] {
  const { bytes, files = [] } = made as Partial<Release & Packed>;
  return [...(bytes ? [bytes.buffer] : []), ...files.map((file) => file.bytes.buffer)];
}

let before: Promise<void> = Promise.resolve();

// One after another: each reads the whole database.
parentPort?.on("message", ({ number, file, order }: ToPrepareThread) => {
  before = before.then(async () => {
    try {
      const made = await make(file, order);
      parentPort?.postMessage({ number, made } satisfies FromPrepareThread, handedOver(made));
    } catch (error) {
      parentPort?.postMessage({ number, error: String(error) } satisfies FromPrepareThread);
    }
  });
});
