import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { expect, test } from "vitest";
import { csvLine, csvOf, unmarked } from "../../model/csv.ts";

test("a line by RFC 4180: missing is empty, never 0; quotes doubled; numbers in full, below zero too", () => {
  expect(csvLine([1.1166284971982636, null, 'a "b", c', 0, undefined, -9.5])).toBe(
    '1.1166284971982636,,"a ""b"", c",0,,-9.5\r\n',
  );
});

test("no text begins as a spreadsheet's formula does", () => {
  const formulas = ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1"];
  const rows = formulas.map((text) => [text]);
  const [, ...read] = parse(csvOf(["text"], rows)) as string[][];
  expect(read).toEqual(formulas.map((text) => [`'${text}`]));
});

test("what is written is read back as it was, and a text without a mark of ours is left alone", () => {
  const begun = fc.constantFrom("", "=", "-", "'", "''", "'=", "\t", "\r\n", " ", ";", '"');
  const text = fc
    .tuple(begun, fc.string({ unit: "grapheme", maxLength: 12 }))
    .map(([start, rest]) => start + rest);
  fc.assert(
    fc.property(
      fc.array(fc.array(text, { minLength: 2, maxLength: 2 }), { minLength: 1 }),
      (rows) => {
        const back = parse(csvOf(["a", "b"], rows), { columns: true }) as Record<string, string>[];
        expect(back.map(({ a = "", b = "" }) => [unmarked(a), unmarked(b)])).toEqual(rows);
      },
    ),
  );
  for (const theirs of ["'s-Hertogenbosch", "It's", "'", "", "Pass = 2,300 m"])
    expect(unmarked(theirs)).toBe(theirs);
});
