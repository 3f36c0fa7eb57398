import type { Context } from "hono";
import type { ContentfulStatusCode } from "hono/utils/http-status";
import type { FieldError } from "../model/tune.ts";
import type { Problem } from "./contract/problem.ts";
import type { Challenge } from "./contract/proof-of-work.ts";

const TITLES: Record<number, string> = {
  400: "The request could not be read",
  401: "A receipt is needed",
  404: "Nothing is there",
  405: "This address does not take that method",
  409: "The idempotency key was used for another tune",
  413: "The body is too large",
  414: "The address is too long",
  415: "The body must be JSON",
  422: "Some fields are not right",
  429: "Too many writes",
  503: "Not ready yet",
  507: "The atlas has no room left",
};

interface More {
  title?: string;
  errors?: FieldError[];
  /** A proof of work that lets it in. */
  challenge?: Challenge;
  headers?: Record<string, string>;
}

/** Anything wrong with a request: thrown anywhere below a route, rendered once, as RFC 9457 problem details. */
export class RequestProblem extends Error {
  readonly status: ContentfulStatusCode;
  /** In place of the status's usual one. */
  readonly title: string | undefined;
  readonly errors: FieldError[] | undefined;
  readonly challenge: Challenge | undefined;
  readonly headers: Record<string, string>;

  constructor(
    status: ContentfulStatusCode,
    detail: string,
    { title, errors, challenge, headers = {} }: More = {},
  ) {
    super(detail);
    this.status = status;
    this.title = title;
    this.errors = errors;
    this.challenge = challenge;
    this.headers = headers;
  }
}

/** A 422 that names every bad field at once. */
export function invalid(errors: FieldError[]): RequestProblem {
  const fields = errors.map((e) => e.field || "the body").join(", ");
  return new RequestProblem(422, `Please check: ${fields}.`, { errors });
}

const BUSY_FOR_s = 5;
const FULL_FOR_s = 600;

/** Another process holds the database. */
export function busy(): RequestProblem {
  return new RequestProblem(
    503,
    `Another program holds the atlas's database. Nothing was stored; send it again in ${BUSY_FOR_s} s.`,
    { headers: { "Retry-After": String(BUSY_FOR_s) } },
  );
}

const isRead = (method: string) => ["GET", "HEAD"].includes(method);

/** Questions that are too long for an address: nothing comes of them that is stored. */
const ASKED_BY_POST = ["/api/start", "/api/steward/without"];

/** The disk takes nothing. */
export class DiskFails extends RequestProblem {
  constructor({ method, path }: Context["req"]) {
    super(
      503,
      isRead(method) || ASKED_BY_POST.includes(path)
        ? "The atlas's disk fails at this moment. Ask again later, once its operator has looked."
        : "The atlas's disk takes nothing at this moment. Nothing was stored; keep it and send it again later, once its operator has looked.",
      { title: "The disk fails", headers: { "Retry-After": String(FULL_FOR_s) } },
    );
  }
}

/** Insufficient storage (RFC 4918, 11.5). */
export const STORAGE_SHORT = 507;

/** There is no room for what a request was to store, or for the files that it asks for. */
export function full({ method, path }: Context["req"]): RequestProblem {
  const detail = isRead(method)
    ? "The atlas's disk has no room for the files of the open data. Ask again later, once its operator has made some."
    : path.startsWith("/api/steward/")
      ? "The atlas's disk is full. Nothing was decided; try again once its operator has made room."
      : method === "DELETE"
        ? "The atlas's disk is full to the last byte. The tune is not withdrawn: keep the receipt and withdraw it again later, once the operator has made room."
        : "The atlas has no room for new tunes until its operator makes some. Nothing was stored; keep the tune and send it again later. Withdrawing still works.";
  return new RequestProblem(STORAGE_SHORT, detail, {
    headers: { "Retry-After": String(FULL_FOR_s) },
  });
}

export function renderProblem(c: Context, problem: RequestProblem): Response {
  const body: Problem = {
    type: "about:blank",
    title: problem.title ?? TITLES[problem.status] ?? "The request failed",
    status: problem.status,
    detail: problem.message,
    ...(problem.errors ? { errors: problem.errors } : {}),
    ...(problem.challenge ? { challenge: problem.challenge } : {}),
  };
  return c.body(JSON.stringify(body), problem.status, {
    ...problem.headers,
    "Content-Type": "application/problem+json",
    "Cache-Control": "no-store",
  });
}
