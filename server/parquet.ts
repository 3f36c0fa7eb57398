import { ByteWriter, ParquetWriter } from "hyparquet-writer";
import { SAFETY } from "../model/safety.ts";
import { COLUMNS, isNumber, LICENCE, type OpenRecord } from "./dictionary.ts";

/** Rows that are packed together: enough for columns to pack well, few enough to hold. */
const GROUP = 20_000;

/** Rows as Parquet, column by column; the licence and the cautions stand in its own metadata. */
export class ParquetRows {
  readonly #bytes = new ByteWriter();
  readonly #writer: ParquetWriter;
  #group: OpenRecord[] = [];

  constructor(demo: boolean) {
    const about = { licence: LICENCE.url, cautions: JSON.stringify(SAFETY), demo: String(demo) };
    this.#writer = new ParquetWriter({
      writer: this.#bytes,
      schema: [
        { name: "tunes", num_children: COLUMNS.length },
        ...COLUMNS.map((column) => ({
          name: column.name,
          repetition_type: column.name === "id" ? ("REQUIRED" as const) : ("OPTIONAL" as const),
          ...(isNumber(column)
            ? { type: "DOUBLE" as const }
            : { type: "BYTE_ARRAY" as const, converted_type: "UTF8" as const }),
        })),
      ],
      kvMetadata: Object.entries(about).map(([key, value]) => ({ key, value })),
      createdBy: "Hypsotune",
    });
  }

  /** @returns what can be handed on of the file by now */
  add(records: readonly OpenRecord[]): Uint8Array<ArrayBuffer> {
    this.#group.push(...records);
    if (this.#group.length >= GROUP) this.#write();
    return this.#taken();
  }

  /** @returns the end of the file */
  end(): Uint8Array<ArrayBuffer> {
    if (this.#group.length > 0) this.#write();
    this.#writer.finish();
    return this.#taken();
  }

  #taken(): Uint8Array<ArrayBuffer> {
    const bytes = this.#bytes.getBytes().slice();
    this.#bytes.index = 0;
    return bytes;
  }

  #write(): void {
    const rows = this.#group;
    this.#writer.write({
      columnData: COLUMNS.map(({ name }) => ({ name, data: rows.map((r) => r[name] ?? null) })),
      rowGroupSize: rows.length,
    });
    this.#group = [];
  }
}
