import { useState } from "preact/hooks";
import type { Logbook } from "../app/records/entry.ts";
import { logbook, putAll } from "../app/records/store.ts";
import { Refused } from "../base/refused.ts";
import { saveFile } from "../base/save-file.ts";
import { logbookWords } from "../texts/logbook.ts";
import { merge } from "./merge.ts";
import { LARGEST_FILE_bytes, logbookOfText } from "./read-file.ts";
import type { Doing } from "./use-doing.tsx";
import { csvOfLogbook, jsonOfLogbook } from "./write-file.ts";

const words = logbookWords.files;

/** The logbook out as a file and in again. */
export function LogbookFiles({ book, doing }: { book: Logbook; doing: Doing }) {
  const [note, setNote] = useState<{ text: string; bad: boolean } | null>(null);
  const bring = (file: File) =>
    doing(async () => {
      setNote(null);
      try {
        setNote({ text: await taken(file), bad: false });
      } catch (error) {
        if (!(error instanceof Refused)) throw error;
        setNote({ text: whyNot(error), bad: true });
      }
      return undefined;
    });
  return (
    <section class="sheet" aria-labelledby="logbook-files">
      <h2 id="logbook-files">{words.title}</h2>
      {book.heaters.length > 0 && (
        <>
          <div class="row">
            <button
              type="button"
              onClick={async () =>
                saveFile("hypsotune-logbook.json", "application/json", await jsonOfLogbook(book))
              }
            >
              {words.json}
            </button>
            <button
              type="button"
              onClick={() =>
                saveFile("hypsotune-logbook.csv", "text/csv;charset=utf-8", csvOfLogbook(book))
              }
            >
              {words.csv}
            </button>
          </div>
          <p class="hint">{words.note}</p>
        </>
      )}
      <div class="field">
        <label for="logbook-file">{words.bring}</label>
        <input
          id="logbook-file"
          name="file"
          type="file"
          accept=".json,.csv,.txt,application/json,text/csv"
          aria-describedby="logbook-file-hint logbook-file-note"
          onChange={(e) => {
            const input = e.currentTarget;
            const [file] = input.files ?? [];
            if (!file) return;
            // The same file, mended, must be taken again.
            void bring(file).then(() => {
              input.value = "";
            });
          }}
        />
        <p id="logbook-file-hint" class="hint">
          {words.bringHint}
        </p>
        <p id="logbook-file-note" class={note?.bad ? "error" : "note"} aria-live="polite">
          {note?.text ?? ""}
        </p>
      </div>
    </section>
  );
}

async function taken(file: File): Promise<string> {
  if (file.size > LARGEST_FILE_bytes) throw new Refused(words.large(LARGEST_FILE_bytes / 1e6));
  const brought = logbookOfText(await file.text());
  const { put, added, changed, same } = merge(await logbook(), brought);
  if (added + changed > 0) await putAll(put);
  return words.brought(added, changed, same);
}

function whyNot({ message, line }: Refused): string {
  return line === undefined ? words.refused(message) : words.line(line, message);
}
