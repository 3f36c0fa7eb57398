import type { Logbook, LogbookEntry } from "../app/records/entry.ts";
import { Refused } from "../base/refused.ts";
import { logbookWords } from "../texts/logbook.ts";

/** What a file changes: what to put, and how much is new, newer or known. */
export interface Merged {
  put: Logbook;
  added: number;
  changed: number;
  same: number;
}

/**
 * Two logbooks by id; of two copies the one edited last stays, and the one here when both were at once, so bringing
 * the same again changes nothing. A newer copy without receipt or photo (CSV has none) keeps those that are here.
 * @throws Refused when an entry's heater is in neither
 */
export function merge(here: Logbook, brought: Logbook): Merged {
  const heaters = new Set([...here.heaters, ...brought.heaters].map(({ id }) => id));
  for (const { heater_id } of brought.entries) {
    if (!heaters.has(heater_id)) throw new Refused(logbookWords.files.noHeater(heater_id));
  }
  const known = new Map<string, { changed_at: string }>(
    [...here.heaters, ...here.entries].map((one) => [one.id, one]),
  );
  const isNewer = ({ id, changed_at }: { id: string; changed_at: string }) =>
    changed_at > (known.get(id)?.changed_at ?? "");
  const put = {
    heaters: brought.heaters.filter(isNewer),
    entries: brought.entries
      .filter(isNewer)
      .map((entry) => keeping(entry, known.get(entry.id) as LogbookEntry | undefined)),
  };
  const all = [...put.heaters, ...put.entries];
  const changed = all.filter(({ id }) => known.has(id)).length;
  const total = brought.heaters.length + brought.entries.length;
  return { put, added: all.length - changed, changed, same: total - all.length };
}

function keeping(entry: LogbookEntry, before: LogbookEntry | undefined): LogbookEntry {
  const photo = entry.photo ?? before?.photo;
  const shared = entry.shared ?? before?.shared;
  return { ...entry, ...(photo && { photo }), ...(shared && { shared }) };
}
