import { parentPort } from "node:worker_threads";
import { createGzip } from "node:zlib";
import { SqliteFile } from "../db/sqlite-file.ts";
import type { PublishedFit } from "../model/fit/group.ts";
import { chunksOf, type DocumentName, shownOf, summedCells } from "./open-documents.ts";

/** What the thread is asked to make. */
export type Order =
  | { make: "document"; name: DocumentName; demo: boolean }
  | { make: "shown" }
  | { make: "cells"; fit: PublishedFit };
export type ToPrepareThread = { number: number; file: string; order: Order };
export type FromPrepareThread = { number: number } & ({ made: unknown } | { error: string });

/** A reader waits so long for another process that holds the file, ms. */
const PATIENCE_ms = 60_000;

async function make(file: string, order: Order): Promise<unknown> {
  const connection = new SqliteFile(file, PATIENCE_ms);
  try {
    // All of it is of one moment, however long it takes.
    await connection.execute("BEGIN");
    const { db } = connection;
    if (order.make === "shown") return await shownOf(db);
    if (order.make === "cells") return await summedCells(db, order.fit);
    return await gzipped(chunksOf(order.name, db, order.demo));
  } finally {
    connection.abandon();
  }
}

async function gzipped(chunks: AsyncIterable<string>): Promise<Uint8Array<ArrayBuffer>> {
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
