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

/** Sends bytes as they are to whoever takes them so, unpacked to others. */
export function sendPacked(c: Context, { bytes, isGzip }: Packed): Response {
  if (!isGzip) return c.body(bytes);
  c.header("Vary", "Accept-Encoding");
  if (TAKES_GZIP.test(c.req.header("Accept-Encoding") ?? "")) {
    c.header("Content-Encoding", "gzip");
    return c.body(bytes);
  }
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  return c.body(unpacked as ReadableStream);
}
