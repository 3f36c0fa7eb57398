import type { Context, MiddlewareHandler } from "hono";
import type { Problem } from "./contract.ts";
import { sha256 } from "./keys.ts";

/** Lets through who knows the token. Nothing behind it is for anybody's cache. */
export function stewardOnly(token: string): MiddlewareHandler {
  const expected = sha256(token);
  return async (c, next) => {
    c.header("Cache-Control", "no-store");
    const given = /^Bearer\s+(\S+)$/i.exec(c.req.header("Authorization") ?? "")?.[1];
    if (given === undefined) {
      const how = 'Send the steward\'s token as "Authorization: Bearer <token>".';
      return refused(c, how, 'Bearer realm="steward"');
    }
    if (!sameHash(await sha256(given), await expected)) {
      return refused(
        c,
        "This is not the steward's token.",
        'Bearer realm="steward", error="invalid_token"',
      );
    }
    return next();
  };
}

/** Whether two hashes are equal, in a time that tells nothing of where they differ. */
function sameHash(a: string, b: string): boolean {
  let difference = a.length ^ b.length;
  for (let i = 0; i < b.length; i++) difference |= a.charCodeAt(i) ^ b.charCodeAt(i);
  return difference === 0;
}

/** A 401 with a title of its own, for the usual one speaks of receipts. */
function refused(c: Context, detail: string, challenge: string): Response {
  const problem: Problem = {
    type: "about:blank",
    title: "The steward's token is needed",
    status: 401,
    detail,
  };
  return c.body(JSON.stringify(problem), 401, {
    "Content-Type": "application/problem+json",
    "WWW-Authenticate": challenge,
  });
}
