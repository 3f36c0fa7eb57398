import { parentPort } from "node:worker_threads";
import { SqliteFile } from "../db/sqlite-file.ts";
import { type FitOrder, fitsHere } from "./fitted.ts";

/** What the thread is asked to make of a database's file. */
export type ToFitThread = { file: string } & ({ fit: FitOrder } | { without: readonly string[] });

/** A reader waits so long for another process that holds the file, ms. */
const PATIENCE_ms = 60_000;

parentPort?.on("message", async ({ file, ...order }: ToFitThread) => {
  const connection = new SqliteFile(file, PATIENCE_ms);
  try {
    // All of it is of one moment, however long it takes.
    await connection.execute("BEGIN");
    const fits = fitsHere(connection.db);
    parentPort?.postMessage(
      "fit" in order ? await fits.fit(order.fit) : await fits.without(order.without),
    );
  } finally {
    connection.abandon();
  }
});
