import type { Context } from "hono";
import { type InPieces, unpackedPart } from "./gzip-in-pieces.ts";
import type { FitsAll } from "./json-text.ts";
import { inMemory, type Stored } from "./stored.ts";

/** An answer's bytes, ready to be sent: gzip, or plain where there are no pieces. */
export type Packed = InPieces | { stored: Stored; pieces: null };

export const plain = (text: string): Packed => ({
  stored: inMemory(new TextEncoder().encode(text)),
  pieces: null,
});

const isGzip = (packed: Packed): packed is InPieces => packed.pieces !== null;

/** Named, and not with a weight of 0 (RFC 9110, 12.5.3). */
const TAKES_GZIP = /\bgzip\b(?!\s*;\s*q=0(\.0*)?\s*(,|$))/i;

/** Whether the one who asks is sent these bytes as gzip. */
export const isSentAsGzip = (c: Context, packed: Packed): boolean =>
  isGzip(packed) && TAKES_GZIP.test(c.req.header("Accept-Encoding") ?? "");

/** Sends bytes as they are to whoever takes them so, unpacked to others. */
export function sendPacked(c: Context, packed: Packed): FitsAll {
  return answerOf(c, packed) as FitsAll;
}

function answerOf(c: Context, packed: Packed): Response {
  const { stored } = packed;
  if (isGzip(packed)) {
    c.header("Vary", "Accept-Encoding");
    if (!isSentAsGzip(c, packed)) return c.body(unpackedPart(packed, 0, Number.POSITIVE_INFINITY));
    c.header("Content-Encoding", "gzip");
  }
  c.header("Content-Length", String(stored.length));
  return c.body(stored.body(0, stored.length) as ReadableStream);
}

/** A part of what is unpacked, from a first to a last byte. */
export const partOf = (packed: Packed, first: number, last: number) =>
  isGzip(packed) ? unpackedPart(packed, first, last) : packed.stored.body(first, last + 1);
