import { useEffect, useState } from "preact/hooks";
import type { Logbook } from "../app/records/entry.ts";
import { logbook, lostEntries, NotKept, onLogbookChange } from "../app/records/store.ts";
import { WAITING_CHANGED } from "../base/answers/cache-names.ts";
import { linkReceipts } from "./share-entry.ts";

/** The logbook as it stands, whoever changes it. */
export interface LogbookNow {
  book: Logbook | null;
  /** Entries the browser has wiped. */
  lost: number;
  /** Keys of tunes that were to be shared and are nowhere any more. */
  gone: Set<string>;
  trouble: NotKept["why"] | null;
}

export function useLogbook(): [LogbookNow, () => void] {
  const [now, setNow] = useState<LogbookNow>({
    book: null,
    lost: 0,
    gone: new Set(),
    trouble: null,
  });
  const [again, lookAgain] = useState(0);
  useEffect(() => {
    let gone = false;
    let turn = 0;
    const look = async () => {
      turn += 1;
      const mine = turn;
      try {
        const book = await logbook();
        const keys = await linkReceipts(book.entries);
        // A later look has begun: its answer is the one to show.
        if (gone || mine !== turn) return;
        setNow({ book, lost: lostEntries(book), gone: keys, trouble: null });
      } catch (error) {
        const trouble = error instanceof NotKept ? error.why : "forbidden";
        if (!gone) setNow((before) => ({ ...before, trouble }));
      }
    };
    void look();
    const onChange = () => void look();
    const end = onLogbookChange(onChange);
    addEventListener(WAITING_CHANGED, onChange);
    return () => {
      gone = true;
      end();
      removeEventListener(WAITING_CHANGED, onChange);
    };
  }, [again]);
  return [now, () => lookAgain((n) => n + 1)];
}
