import { parentPort } from "node:worker_threads";
import { createGzip } from "node:zlib";
import { SqliteFile } from "../db/sqlite-file.ts";
import type { PublishedFit } from "../model/fit/group.ts";
import type { Cell } from "./contract.ts";
import {
  cellsAnswer,
  chunksOf,
  type DocumentName,
  shownOf,
  summedCells,
} from "./open-documents.ts";

/** What the thread is asked to make. */
export type Order =
  | { make: "document"; name: DocumentName; demo: boolean }
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
    if (order.make === "document") return await gzipped(chunksOf(order.name, db, order.demo));
    const { fit, parent, demo, state } = order;
    if (summed.state !== state) summed = { state, cells: await summedCells(db, fit) };
    return await gzipped([cellsAnswer(summed.cells, parent, demo)]);
  } finally {
    connection.abandon();
  }
}

async function gzipped(
  chunks: AsyncIterable<string> | Iterable<string>,
): Promise<Uint8Array<ArrayBuffer>> {
  const gzip = createGzip();
  const parts: Buffer[] = [];
  gzip.on("data", (part: Buffer) => parts.push(part));
  const ended = new Promise<void>((done, failed) => gzip.on("end", done).on("error", failed));
  for await (const chunk of chunks) {
    if (!gzip.write(chunk)) await new Promise((done) => gzip.once("drain", done));
  }
  gzip.end();
  await ended;
  // Of its own: it is handed over, not copied.
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

let before: Promise<void> = Promise.resolve();

// One after another: each reads the whole database.
parentPort?.on("message", ({ number, file, order }: ToPrepareThread) => {
  before = before.then(async () => {
    try {
      const made = await make(file, order);
      parentPort?.postMessage(
        { number, made } satisfies FromPrepareThread,
        made instanceof Uint8Array ? [made.buffer as ArrayBuffer] : [],
      );
    } catch (error) {
      parentPort?.postMessage({ number, error: String(error) } satisfies FromPrepareThread);
    }
  });
});
