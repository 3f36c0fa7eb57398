import type { Database } from "../db/database.ts";
import { acceptedFitRows, IDS_AT_ONCE } from "../db/tunes.ts";
import type { FitRow } from "../model/fit/row.ts";
import { RowsHash } from "./rows-hash.ts";

/** The rows of all accepted tunes in memory, following the database one tune at a time. */
export class LiveRows {
  readonly hash = new RowsHash();
  readonly #byTune = new Map<string, readonly FitRow[]>();

  /** Reads everything: at the start, and where no process lives long enough to keep it. */
  static async read(db: Database): Promise<LiveRows> {
    const live = new LiveRows();
    const tunes = await acceptedFitRows(db);
    for (const pair of tunes) live.#byTune.set(String(pair[0].row), pair);
    await live.hash.change(tunes.flat(), 1n);
    return live;
  }

  get empty(): boolean {
    return this.#byTune.size === 0;
  }

  get rows(): FitRow[] {
    return [...this.#byTune.values()].flat();
  }

  /** The rows as they are once these tunes are read again; those held here stay as they are. */
  async rowsWith(db: Database, ids: readonly string[]): Promise<FitRow[]> {
    const again = new Set(ids);
    const rows = this.rows.filter(({ row }) => !again.has(String(row)));
    for (let i = 0; i < ids.length; i += IDS_AT_ONCE) {
      rows.push(...(await acceptedFitRows(db, ids.slice(i, i + IDS_AT_ONCE))).flat());
    }
    return rows;
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
    await this.hash.change(this.#byTune.get(id) ?? [], -1n);
    await this.hash.change(rows ?? [], 1n);
    if (rows) this.#byTune.set(id, rows);
    else this.#byTune.delete(id);
  }
}
