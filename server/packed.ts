import type { Context } from "hono";

/** An answer's bytes, ready to be sent. */
export interface Packed {
  bytes: Uint8Array<ArrayBuffer>;
  /** Whether they are gzip (RFC 1952); plain otherwise. */
  isGzip: boolean;
}

export const plain = (text: string): Packed => ({
  bytes: new TextEncoder().encode(text),
  isGzip: false,
});

/** Named, and not with a weight of 0 (RFC 9110, 12.5.3). */
const TAKES_GZIP = /\bgzip\b(?!\s*;\s*q=0(\.0*)?\s*(,|$))/i;

/** Whether the one who asks is sent these bytes as gzip. */
export const isSentAsGzip = (c: Context, { isGzip }: Packed): boolean =>
  isGzip && TAKES_GZIP.test(c.req.header("Accept-Encoding") ?? "");

/** Sends bytes as they are to whoever takes them so, unpacked to others. */
export function sendPacked(c: Context, packed: Packed): Response {
  const { bytes, isGzip } = packed;
  if (!isGzip) return c.body(bytes);
  c.header("Vary", "Accept-Encoding");
  if (isSentAsGzip(c, packed)) {
    c.header("Content-Encoding", "gzip");
    return c.body(bytes);
  }
  return c.body(unpacked(packed));
}

function unpacked({ bytes }: Packed): ReadableStream {
  return new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip") as never);
}

/** A part of what is unpacked, from a first to a last byte. */
export function partOf(packed: Packed, first: number, last: number) {
  if (!packed.isGzip) return packed.bytes.slice(first, last + 1);
  let at = 0;
  const cut = new TransformStream<Uint8Array, Uint8Array>({
    transform: (chunk, to) => {
      const part = chunk.subarray(Math.max(0, first - at), Math.max(0, last + 1 - at));
      at += chunk.length;
      if (part.length > 0) to.enqueue(part);
      // The rest need not be unpacked.
      if (at > last) to.terminate();
    },
  });
  return unpacked(packed).pipeThrough(cut);
}
