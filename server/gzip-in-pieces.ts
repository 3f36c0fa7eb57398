import { once } from "node:events";
import { promisify } from "node:util";
import { constants, createGzip, gunzip, inflateRaw } from "node:zlib";
import { type Stored, streamOf } from "./stored.ts";

/** Unpacked size of each piece but the last. */
export const PIECE_bytes = 1024 * 1024;
/** Packed bytes that are handed on at once. */
const CHUNK_bytes = 128 * 1024;

/** A gzip of pieces each of which unpacks by itself: an ordinary one to everybody else. */
export interface InPieces {
  stored: Stored;
  /** Where each piece begins in it, and where the last one ends. */
  pieces: readonly number[];
}

/** Packs as it comes, and holds no more than a piece of it. */
export class PackingInPieces {
  readonly #gzip = createGzip({ chunkSize: CHUNK_bytes });
  readonly #pieces = [0];
  #packed_bytes = 0;
  /** In the piece that is being packed. */
  #unpacked_bytes = 0;
  #failed: Error | undefined;

  /** @param put takes what is packed; what it throws comes out of the next call */
  constructor(put: (bytes: Uint8Array<ArrayBuffer>) => void) {
    this.#gzip
      .on("error", (error) => {
        this.#failed ??= error;
      })
      .on("data", (bytes: Buffer<ArrayBuffer>) => {
        this.#packed_bytes += bytes.length;
        try {
          put(bytes);
        } catch (error) {
          this.#gzip.destroy(error as Error);
        }
      });
  }

  async write(bytes: Uint8Array): Promise<void> {
    for (let at = 0; at < bytes.length; ) {
      const some = bytes.subarray(at, at + PIECE_bytes - this.#unpacked_bytes);
      await this.#done((done) => this.#gzip.write(some, done));
      at += some.length;
      this.#unpacked_bytes += some.length;
      if (this.#unpacked_bytes === PIECE_bytes) await this.#endPiece();
    }
  }

  /** @returns where its pieces are */
  async end(): Promise<readonly number[]> {
    if (this.#unpacked_bytes > 0) await this.#endPiece();
    if (this.#failed) throw this.#failed;
    this.#gzip.end();
    await once(this.#gzip, "end");
    return this.#pieces;
  }

  async #endPiece(): Promise<void> {
    // Flushed in full: the next piece refers to nothing in this one.
    await this.#done((done) => this.#gzip.flush(constants.Z_FULL_FLUSH, () => done()));
    // What is packed is handed on a moment later.
    while (this.#gzip.readableLength > 0 && !this.#failed) await new Promise(setImmediate);
    this.#pieces.push(this.#packed_bytes);
    this.#unpacked_bytes = 0;
  }

  #done(start: (done: (error?: Error | null) => void) => void): Promise<void> {
    return new Promise((resolve, reject) => {
      if (this.#failed) return reject(this.#failed);
      this.#gzip.once("error", reject);
      start((error) => {
        this.#gzip.off("error", reject);
        if (error) reject(error);
        else resolve();
      });
    });
  }
}

const unpackers = { first: promisify(gunzip), later: promisify(inflateRaw) } as const;
let before: Promise<unknown> = Promise.resolve();

/** One piece at a time, whoever asks: many who ask at once keep one core busy, and none for long. */
function unpack(piece: Uint8Array, which: keyof typeof unpackers): Promise<Uint8Array> {
  // With the first goes the gzip's head; no piece has its end.
  const unpacked = before.then(() =>
    unpackers[which](piece, { finishFlush: constants.Z_SYNC_FLUSH }),
  );
  before = unpacked.catch(() => {});
  return unpacked;
}

/** What is unpacked, from a first to a last byte: of as many pieces as that takes, each when there is somebody to take it. */
export function unpackedPart(packed: InPieces, first: number, last: number): ReadableStream {
  return streamOf(unpackedPieces(packed, first, last));
}

async function* unpackedPieces(
  { stored, pieces }: InPieces,
  first: number,
  last: number,
): AsyncGenerator<Uint8Array, void> {
  const { read, done } = stored.open();
  try {
    const end = Math.min(pieces.length - 1, Math.floor(last / PIECE_bytes) + 1);
    for (let n = Math.floor(first / PIECE_bytes); n < end; n++) {
      const piece = await read(pieces[n] as number, pieces[n + 1] as number);
      const at = n * PIECE_bytes;
      const unpacked = await unpack(piece, n === 0 ? "first" : "later");
      yield unpacked.subarray(Math.max(0, first - at), last + 1 - at);
    }
  } finally {
    done();
  }
}
