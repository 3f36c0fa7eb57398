import { parentPort } from "node:worker_threads";
import { SqliteFile } from "../db/sqlite-file.ts";
import { type FitOrder, fitsHere, type Made, type Trial } from "./fitted.ts";
import { failureOf, type ThreadFailure } from "./thread-failure.ts";

/** What the thread is asked to make of a database's file. */
export type ToFitThread = { file: string } & FitThreadOrder;
type FitThreadOrder = { fit: FitOrder } | { without: readonly string[] };
export type FromFitThread = { made: Made | Trial } | ThreadFailure;

/** A reader waits so long for another process that holds the file, ms. */
const PATIENCE_ms = 60_000;

parentPort?.on("message", async ({ file, ...order }: ToFitThread) => {
  try {
    const made = await make(file, order);
    parentPort?.postMessage({ made } satisfies FromFitThread);
  } catch (error) {
    parentPort?.postMessage(failureOf(error) satisfies FromFitThread);
  }
});

async function make(file: string, order: FitThreadOrder): Promise<Made | Trial> {
  const connection = new SqliteFile(file, PATIENCE_ms);
  try {
    // All of it is of one moment, however long it takes.
    await connection.execute("BEGIN");
    const fits = fitsHere(connection.db);
    return "fit" in order ? await fits.fit(order.fit) : await fits.without(order.without);
  } finally {
    connection.abandon();
  }
}
