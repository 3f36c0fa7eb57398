import { parse } from "csv-parse/browser/esm/sync";
import { fitBounded } from "../../../model/bounded-fit.ts";
import { fingerprint } from "../../../model/fit/fingerprint.ts";
import type { GroupFit } from "../../../model/fit/group.ts";
import type { FitRow } from "../../../model/fit/row.ts";
import { formOf, isRejected, type Line, rowsFromText } from "../../../model/row-from-text.ts";

/** What the worker says: how many sizes and ends are fitted; the fit; that the file cannot be read. */
export type FromFitWorker =
  | { is: "fitting"; done: number; of: number }
  | { is: "fitted"; rows: number; groups: GroupFit[]; estimator: string }
  | { is: "unreadable" };

/** What this file needs of a worker: the page's own types leave no room for the library of workers. */
declare const self: { onmessage: (event: MessageEvent<string>) => void };
declare const postMessage: (message: FromFitWorker) => void;

/** Reads the open data's CSV and fits it, beside the page: a large atlas takes seconds. */
self.onmessage = ({ data: csv }) => {
  try {
    const rows = rowsOf(csv);
    const { groups } = fitBounded(rows, (done, of) => postMessage({ is: "fitting", done, of }));
    postMessage({ is: "fitted", rows: rows.length, groups, estimator: fingerprint() });
  } catch {
    postMessage({ is: "unreadable" });
  }
};

function rowsOf(csv: string): FitRow[] {
  const rows: FitRow[] = [];
  let row = 0;
  parse(csv, {
    columns: true,
    on_record: (line: Line) => {
      const form = formOf(Object.keys(line));
      row++;
      for (const one of form ? rowsFromText(line, row, form) : []) {
        if (!isRejected(one)) rows.push(one);
      }
      // Nothing is kept of the line itself: the export may be large.
      return null;
    },
  });
  return rows;
}
