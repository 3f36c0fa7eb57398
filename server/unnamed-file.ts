import { closeSync, openSync, read, rmSync } from "node:fs";
import { promisify } from "node:util";
import { fileTrouble } from "../db/disk.ts";
import { type Reading, type Stored, streamOf } from "./stored.ts";

const readAt = promisify(read);

/** Read and sent at once: what a slow reader holds in memory. */
const PART_bytes = 256 * 1024;

/**
 * A file without a name, beside the database: what is written there has no path from its first byte on, and what it holds goes with
 * whoever holds it open, however that one ends. So nothing withdrawn is ever left behind, and no start has anything to clear away.
 */
export class UnnamedFile implements Stored {
  /** For whoever writes it, in whatever thread: descriptors are the process's. */
  readonly descriptor: number;
  length = 0;
  #readings = 0;
  #isDropped = false;

  /** @param beside a path in the folder that it takes its room in */
  constructor(beside: string) {
    const name = `${beside}.open-data`;
    // A process that was killed between these lines has left an empty one.
    rmSync(name, { force: true });
    this.descriptor = openSync(name, "wx+", 0o600);
    rmSync(name);
  }

  body(from: number, to: number): ReadableStream<Uint8Array> {
    return streamOf(this.#parts(from, to));
  }

  open(): Reading {
    if (this.#isDropped) throw new Error("What is read was dropped.");
    this.#readings++;
    let isDone = false;
    return {
      read: async (from, to) => {
        const bytes = new Uint8Array(to - from);
        const { bytesRead } = await readAt(this.descriptor, bytes, 0, bytes.length, from).catch(
          (error) => {
            throw fileTrouble(error) ?? error;
          },
        );
        if (bytesRead !== bytes.length) throw new Error("A file beside the database was cut.");
        return bytes;
      },
      done: () => {
        if (isDone) return;
        isDone = true;
        this.#readings--;
        this.#closeIfOver();
      },
    };
  }

  /** Nobody begins to read it any more; it is gone with the last who does. */
  drop(): void {
    if (this.#isDropped) return;
    this.#isDropped = true;
    this.#closeIfOver();
  }

  #closeIfOver(): void {
    if (this.#isDropped && this.#readings === 0) closeSync(this.descriptor);
  }

  async *#parts(from: number, to: number): AsyncGenerator<Uint8Array, void> {
    const { read, done } = this.open();
    try {
      for (let at = from; at < to; at += PART_bytes)
        yield await read(at, Math.min(to, at + PART_bytes));
    } finally {
      done();
    }
  }
}
