import { randomFillSync } from "node:crypto";
import { rmSync, statSync, writeFileSync } from "node:fs";

/** A withdrawal takes some 100 KB until the WAL is emptied. */
const BALLAST_bytes = 2 * 1024 * 1024;

/**
 * Room on the disk that nothing else can take: a file beside the database, given up when a withdrawal finds the disk full to
 * the last byte.
 */
export class Ballast {
  readonly #file: string;
  #isWhole: boolean;

  constructor(database: string) {
    this.#file = `${database}.ballast`;
    this.#isWhole = statSync(this.#file, { throwIfNoEntry: false })?.size === BALLAST_bytes;
    this.keep();
  }

  /** Makes it where it is not whole; of a disk with less room it holds what there is. */
  keep(): void {
    if (this.#isWhole) return;
    try {
      // Random, since some file systems store zeros in no room at all.
      const bytes = randomFillSync(Buffer.allocUnsafe(BALLAST_bytes));
      writeFileSync(this.#file, bytes, { mode: 0o600 });
      this.#isWhole = true;
    } catch {
      // Tried again when there is room.
    }
  }

  giveUp(): void {
    rmSync(this.#file, { force: true });
    this.#isWhole = false;
  }
}
