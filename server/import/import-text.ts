import type { Imported, RowVerdict } from "./import.ts";
import type { Mapping } from "./mapping.ts";
import type { Spreadsheet } from "./spreadsheet.ts";

const VERDICTS: readonly RowVerdict["verdict"][] = [
  "accepted",
  "held",
  "refused",
  "there already",
  "repeated",
];

/** What came of an import, for whoever runs it: a line for each row, then the sum of it and what to do next. */
export function importText(
  { rows, contributors, stored, counts_from, sizes_waiting, hasGround }: Imported,
  { columns }: Pick<Spreadsheet, "columns">,
  { fields, contributor }: Mapping,
  { name, write }: { name: string; write: boolean },
): string {
  const used = new Set([...fields.map(({ at }) => at), contributor]);
  const unused = columns.filter((column, at) => column && !used.has(at));
  const counts = VERDICTS.flatMap((verdict) => {
    const count = rows.filter((row) => row.verdict === verdict).length;
    return count > 0 ? [`${count} ${verdict}`] : [];
  });
  return [
    ...rows.map(
      ({ line, verdict, sentences }) =>
        `Line ${line}: ${verdict}${sentences.length > 0 ? `. ${sentences.join(" ")}` : ""}`,
    ),
    "",
    `${count(rows.length, "row")}: ${counts.join(", ") || "none"}. ${contributorsText(contributors, contributor !== undefined)}`,
    ...(unused.length > 0 ? [`Columns not used: ${unused.join(", ")}.`] : []),
    ...(rows.some(({ verdict }) => verdict === "held")
      ? [
          "A held tune is stored and does not count until a steward accepts it; put right what is a slip.",
        ]
      : []),
    ...(rows.some(({ verdict }) => verdict === "refused")
      ? ["A refused row is left out; put it right and run this again."]
      : []),
    ...(!hasGround && fields.some(({ name }) => name === "lat")
      ? [
          "Elevations were not held against the ground at the places given: run npm run geography first.",
        ]
      : []),
    ...(write ? writtenText(name, { stored, counts_from, sizes_waiting }) : [DRY_RUN]),
  ].join("\n");
}

const DRY_RUN =
  "Nothing was stored: this was a dry run. Accepted means plausible, not safe. To store it, stop the atlas and add --write.";

function writtenText(
  name: string,
  {
    stored,
    counts_from,
    sizes_waiting,
  }: Pick<Imported, "stored" | "counts_from" | "sizes_waiting">,
): string[] {
  if (stored === 0) return ["Nothing was stored: all that can be is there already."];
  return [
    `Stored: ${count(stored, "tune")} as import "${name}". To take all of it back: npm run import -- --undo "${name}"`,
    ...(counts_from
      ? [
          `Their owners are new and wait; the last is expected to count from ${counts_from}. Those you know count at once with --counts-now.`,
        ]
      : []),
    ...(sizes_waiting.length > 0
      ? [
          `New sizes: ${sizes_waiting.map((kW) => `${kW} kW`).join(", ")}. Tunes of a new size count once three of its owners do.`,
        ]
      : []),
  ];
}

function contributorsText(contributors: number, isTold: boolean): string {
  if (isTold) return `${count(contributors, "contributor")}, one vote each.`;
  return "All rows are one contributor's: one vote.";
}

const count = (n: number, what: string) => `${n} ${what}${n === 1 ? "" : "s"}`;
