import type { Context, TypedResponse } from "hono";
import type { JSONParsed } from "hono/utils/types";

/** JSON text of a value whose type the compiler still knows, so that text that is kept is held to what a route declares. */
export type JsonText<T> = string & { readonly of?: T };

export const jsonText = <T>(value: T): JsonText<T> => JSON.stringify(value);

/** Answers with it as `c.json` would with the value. */
export const sendText = <T>(c: Context, text: JsonText<T>) =>
  c.body(text, 200, { "Content-Type": "application/json" }) as Response as Response &
    TypedResponse<JSONParsed<T>, 200, "json">;

/** An answer that fits whatever a route declares: it has no body, or one whose bytes were made elsewhere. */
export type FitsAll = Response & TypedResponse<never, never, never>;
