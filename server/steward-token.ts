import type { MiddlewareHandler } from "hono";
import { clientMinutes } from "./client-limit.ts";
import type { Services } from "./context.ts";
import { sha256 } from "./keys.ts";
import { RequestProblem } from "./problem.ts";

/** Wrong tokens a minute from one client that are answered as such; after that they are told to wait. */
const WRONG_MOST = 10;

/** A token this long is not found by trying, however many may try: so the right one always opens, and no neighbour locks it out. */
export const TOKEN_LEAST = 20;

/**
 * Lets through who knows the token. Nothing behind it is for anybody's cache.
 * @throws Error when the token is short enough to be guessed
 */
export function stewardOnly(token: string, services: Services): MiddlewareHandler {
  if (token.length < TOKEN_LEAST) {
    throw new Error(
      `STEWARD_TOKEN must have at least ${TOKEN_LEAST} characters, chosen at random: it opens everything a steward may do.`,
    );
  }
  const { keys, now, clientAddress } = services;
  const expected = sha256(token);
  const minuteOf = clientMinutes(keys, now);
  return async (c, next) => {
    c.header("Cache-Control", "no-store");
    const given = /^Bearer\s+(\S+)$/i.exec(c.req.header("Authorization") ?? "")?.[1];
    if (given === undefined) {
      const how = 'Send the steward\'s token as "Authorization: Bearer <token>".';
      throw refused(how, 'Bearer realm="steward"');
    }
    if (sameHash(await sha256(given), await expected)) return next();
    const minute = await minuteOf(clientAddress(c));
    minute.used += 1;
    if (minute.used > WRONG_MOST) {
      throw new RequestProblem(
        429,
        `At most ${WRONG_MOST} wrong tokens a minute. Try again in ${minute.left_s} s.`,
        { title: "Too many wrong tokens", headers: { "Retry-After": String(minute.left_s) } },
      );
    }
    throw refused(
      "This is not the steward's token.",
      'Bearer realm="steward", error="invalid_token"',
    );
  };
}

/** Whether two hashes are equal, in a time that tells nothing of where they differ. */
function sameHash(a: string, b: string): boolean {
  let difference = a.length ^ b.length;
  for (let i = 0; i < b.length; i++) difference |= a.charCodeAt(i) ^ b.charCodeAt(i);
  return difference === 0;
}

/** A 401 with a title of its own, for the usual one speaks of receipts. */
function refused(detail: string, challenge: string): RequestProblem {
  return new RequestProblem(401, detail, {
    title: "The steward's token is needed",
    headers: { "WWW-Authenticate": challenge },
  });
}
