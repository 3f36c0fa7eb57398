import { parentPort } from "node:worker_threads";
import type { PublishedFit } from "../model/fit/group.ts";
import type { FitRow } from "../model/fit/row.ts";
import { fitted } from "./fitted.ts";

/** What the thread is sent: rows, part by part, then the versions before, which is when it begins. */
export type ToFitThread = { rows: FitRow[] } | { before: PublishedFit[] };

let rows: FitRow[] = [];

parentPort?.on("message", (sent: ToFitThread) => {
  if ("rows" in sent) {
    for (const row of sent.rows) rows.push(row);
    return;
  }
  const all = rows;
  rows = [];
  parentPort?.postMessage(fitted(all, sent.before));
});
