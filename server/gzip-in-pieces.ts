import { promisify } from "node:util";
import { constants, crc32, deflateRawSync, inflateRaw } from "node:zlib";

/** Unpacked size of each piece but the last. */
export const PIECE_bytes = 1024 * 1024;
/** RFC 1952, 2.3: no name, no time, no matter of what system. */
const HEADER = Uint8Array.of(0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 0, 0xff);
/** RFC 1951, 3.2.3: a last block without anything in it. */
const LAST_BLOCK = Uint8Array.of(3, 0);

/** A gzip of pieces each of which unpacks by itself: an ordinary one to everybody else. */
export interface InPieces {
  bytes: Uint8Array<ArrayBuffer>;
  /** Where each piece begins in it, and where the last one ends. */
  pieces: readonly number[];
}

/** Packs as it comes, and never holds the whole of it unpacked. */
export class PackingInPieces {
  readonly #packed: Uint8Array[] = [HEADER];
  readonly #pieces = [HEADER.length];
  #waiting: Uint8Array[] = [];
  #waiting_bytes = 0;
  #size_bytes = 0;
  #crc = 0;

  write(bytes: Uint8Array): void {
    this.#crc = crc32(bytes, this.#crc);
    this.#size_bytes += bytes.length;
    this.#waiting.push(bytes);
    this.#waiting_bytes += bytes.length;
    if (this.#waiting_bytes >= PIECE_bytes) this.#packWaiting(PIECE_bytes);
  }

  end(): InPieces & { size_bytes: number } {
    this.#packWaiting(1);
    const ending = new DataView(new ArrayBuffer(8));
    ending.setUint32(0, this.#crc, true);
    ending.setUint32(4, this.#size_bytes, true);
    const all = [...this.#packed, LAST_BLOCK, new Uint8Array(ending.buffer)];
    // Of its own: it is handed over, not copied.
    const bytes = new Uint8Array(all.reduce((sum, { length }) => sum + length, 0));
    let at = 0;
    for (const part of all) {
      bytes.set(part, at);
      at += part.length;
    }
    return { bytes, pieces: this.#pieces, size_bytes: this.#size_bytes };
  }

  /** @param least what is shorter goes on waiting */
  #packWaiting(least: number): void {
    const all = Buffer.concat(this.#waiting);
    let at = 0;
    for (; all.length - at >= least; at += PIECE_bytes) {
      const piece = all.subarray(at, at + PIECE_bytes);
      // Flushed in full: the next piece refers to nothing in this one.
      const packed = deflateRawSync(piece, { finishFlush: constants.Z_FULL_FLUSH });
      this.#packed.push(packed);
      this.#pieces.push((this.#pieces.at(-1) as number) + packed.length);
    }
    this.#waiting = [all.subarray(at)];
    this.#waiting_bytes = Math.max(0, all.length - at);
  }
}

const inflate = promisify<Uint8Array, object, Buffer<ArrayBuffer>>(inflateRaw);
let before: Promise<unknown> = Promise.resolve();

/** One piece at a time, whoever asks: many who ask at once keep one core busy, and none for long. */
function unpack({ bytes, pieces }: InPieces, n: number): Promise<Uint8Array<ArrayBuffer>> {
  const piece = bytes.subarray(pieces[n], pieces[n + 1]);
  const unpacked = before.then(() => inflate(piece, { finishFlush: constants.Z_SYNC_FLUSH }));
  before = unpacked.catch(() => {});
  return unpacked;
}

/** What is unpacked, from a first to a last byte: of as many pieces as that takes, each when there is somebody to take it. */
export function unpackedPart(packed: InPieces, first: number, last: number): ReadableStream {
  let n = Math.floor(first / PIECE_bytes);
  const end = Math.min(packed.pieces.length - 1, Math.floor(last / PIECE_bytes) + 1);
  const pull = async (to: ReadableStreamDefaultController) => {
    if (n >= end) return to.close();
    const at = n * PIECE_bytes;
    const piece = await unpack(packed, n++);
    to.enqueue(piece.subarray(Math.max(0, first - at), last + 1 - at));
  };
  return new ReadableStream({ pull }, { highWaterMark: 0 });
}
