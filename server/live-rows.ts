import type { Database } from "../db/database.ts";
import { acceptedFitRows, IDS_AT_ONCE, setAsideByFit } from "../db/tunes.ts";
import { AtlasLedger } from "../model/fit/atlas-ledger.ts";
import type { FitRow } from "../model/fit/group.ts";
import { RowsHash } from "./rows-hash.ts";

/** The rows of all accepted tunes in memory, counted for the fit, following the database one tune at a time. */
export class LiveRows {
  readonly ledger = new AtlasLedger();
  readonly hash = new RowsHash();
  readonly #byTune = new Map<string, readonly FitRow[]>();

  /** Reads everything: at the start, and where no process lives long enough to keep it. */
  static async read(db: Database): Promise<LiveRows> {
    const live = new LiveRows();
    const tunes = await acceptedFitRows(db);
    const rows = tunes.flat();
    live.ledger.load(rows);
    for (const pair of tunes) live.#byTune.set(String(pair[0].row), pair);
    await live.hash.change(rows, 1n);
    const aside = await setAsideByFit(db);
    live.ledger.knownAside((row) => aside.has(`${row.row} ${row.end}`));
    return live;
  }

  get empty(): boolean {
    return this.#byTune.size === 0;
  }

  /** Reads these tunes again: new, revised, decided on or withdrawn. */
  async update(db: Database, ids: readonly string[]): Promise<void> {
    for (let i = 0; i < ids.length; i += IDS_AT_ONCE) {
      const part = ids.slice(i, i + IDS_AT_ONCE);
      const found = new Map(
        (await acceptedFitRows(db, part)).map((pair) => [String(pair[0].row), pair] as const),
      );
      for (const id of part) await this.#replace(id, found.get(id));
    }
  }

  async #replace(id: string, rows: readonly FitRow[] | undefined): Promise<void> {
    const before = this.#byTune.get(id) ?? [];
    for (const row of before) this.ledger.drop(row);
    for (const row of rows ?? []) this.ledger.put(row);
    await this.hash.change(before, -1n);
    await this.hash.change(rows ?? [], 1n);
    if (rows) this.#byTune.set(id, rows);
    else this.#byTune.delete(id);
  }
}
