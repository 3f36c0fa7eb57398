import type { Context } from "hono";
import type { FitsAll } from "./json-text.ts";

/** Reads may be kept a little while and then asked for again with If-None-Match. */
const READ_FOR = "public, max-age=30, must-revalidate";
export const FOR_EVER = "public, max-age=31536000, immutable";
/** What the page fetches ahead, before its script could ask for the newest. */
export const ASKED_EACH_TIME = "public, no-cache";

/**
 * Marks an answer with what it was made from, and answers 304 when the client has just that (RFC 9110 §13.1.2).
 * An answer is a function of its address and of the published fit or the data's revision, so that is its tag.
 */
export function unchangedSince(
  c: Context,
  madeFrom: string,
  caching = READ_FOR,
): FitsAll | undefined {
  const tag = `"${madeFrom}"`;
  c.header("ETag", tag);
  c.header("Cache-Control", caching);
  const asked = c.req.header("If-None-Match");
  if (!asked) return undefined;
  const known = asked.split(",").map((t) => t.trim().replace(/^W\//, ""));
  return known.includes(tag) || known.includes("*")
    ? (c.body(null, 304) as Response as FitsAll)
    : undefined;
}
