import fc from "fast-check";
import { expect } from "vitest";
import { z } from "zod";
import { keepRefusal } from "../../db/refusal.ts";
import * as answers from "../../server/contract.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "../server/atlas.ts";
import { bearer, inFeet, TOKEN } from "../server/stewards-atlas.ts";
import {
  inside,
  type Names,
  oneFieldAnew,
  type Schema,
  slightlyOff,
  textOf,
} from "./from-schema.ts";

/** An operation as the API's description has it. */
interface Described {
  operationId: string;
  parameters?: { name: string; in: "path" | "query" | "header"; schema: Schema }[];
  requestBody?: { content: { "application/json": { schema: Schema } } };
  security?: Record<string, unknown>[];
  responses: Record<string, { content?: Record<string, { schema: Schema }> }>;
}

/** What is sent: values of parameters, a body as text, who asks. */
interface Sent {
  path: Record<string, string>;
  query: Record<string, string>;
  header: Record<string, string>;
  body: string | undefined;
  type: string;
  asks: "known" | "stranger" | "nobody";
}

/** These make a fit for each request. */
const SLOW = new Set(["postStewardWithout"]);
/** These answer where a version is held back. */
const HELD_BACK = new Set(["postStewardPublish", "postStewardKeepBack"]);

const question = { heat_kW: 5, elevation_m: 2240, temperature_C: -5, dose_uL: 22 };
/** What is surely taken, so that what is made of it often is: rules between fields are in no schema. */
const samples = ({ tunes = [] }: Names): Record<string, object> => ({
  postTunes: goodTune(7),
  putTunesId: goodTune(8),
  getStart: question,
  postStart: {
    ...question,
    own_tunes: [{ site: goodTune().site, low: goodTune().low, high: goodTune().high }],
  },
  getTunesNear: { heat_kW: 5, elevation_m: 2240 },
  postStewardDecisions: { tunes: tunes.slice(0, 1), verdict: "held", reason: "It looks mistyped." },
});

/**
 * Sends every operation of the description requests made from its schemas, half within all bounds, half just outside one or
 * not even readable: each answer has a status and a body that the description names, and none is the atlas's own failure.
 * @returns by operation, how many got each status
 */
export async function throwAtEveryRoute(
  runs: number,
  seed: number,
): Promise<Map<string, Map<number, number>>> {
  const atlas = await openTestAtlas({ stewardToken: TOKEN, newKeyDays: 7 });
  const seen = new Map<string, Map<number, number>>();
  const known = await settle(atlas);
  const { paths, components } = await (await atlas.app.request("/api/openapi.json")).json();
  const accepts = judge(components.schemas);
  const all = Object.entries<Record<string, Described>>(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method, operation })),
  );
  // What is withdrawn cannot be asked about.
  const inOrder = all.toSorted(
    (p, q) => Number(p.method === "delete") - Number(q.method === "delete"),
  );
  for (const { path, method, operation } of inOrder) {
    const { operationId, responses, security } = operation;
    await known.lookAgain();
    const statuses = new Map<number, number>();
    seen.set(operationId, statuses);
    const one = async (sent: Sent) => {
      const token = security?.some((s) => "steward" in s) ? TOKEN : known.receipt(sent.path.id);
      if (HELD_BACK.has(operationId)) await keepRefusal(atlas.db, "2026-11-25", "[]");
      const response = await atlas.app.request(addressOf(path, sent), {
        method: method.toUpperCase(),
        headers: {
          ...sent.header,
          ...(sent.asks === "nobody" ? {} : bearer(sent.asks === "known" ? token : "x".repeat(30))),
          ...(sent.body === undefined ? {} : { "Content-Type": sent.type }),
        },
        ...(sent.body !== undefined && { body: sent.body }),
      });
      const { status } = response;
      statuses.set(status, (statuses.get(status) ?? 0) + 1);
      const described = responses[status];
      const text = await response.text();
      expect(status < 500 || status === 503 || status === 507, text).toBe(true);
      // What the library says by itself has no remedy.
      expect(text).not.toMatch(/"message":"(Invalid|Too small|Too big|Unrecognized)/);
      expect(described, `${status} is not described: ${text.slice(0, 300)}`).toBeDefined();
      const sentAs = response.headers.get("Content-Type")?.split(";")[0] ?? "";
      const types = described?.content ?? {};
      const type = Object.keys(types).find((one) => one === sentAs || one === "*/*");
      const content = types[type ?? ""];
      if (!type || !content) {
        expect([sentAs, text]).toEqual(["", ""]);
        return;
      }
      const value = type.endsWith("json") ? JSON.parse(text) : text;
      const told = accepts(content.schema).safeParse(value);
      expect(told.error?.issues ?? [], text.slice(0, 300)).toEqual([]);
      if (status >= 300) return;
      if (operationId === "postTunes") known.remember(value);
      if (operationId === "postStewardDecisions") known.decided(value);
    };
    await fc.assert(fc.asyncProperty(requests(operation, known.names), one), {
      seed,
      numRuns: SLOW.has(operationId) ? Math.ceil(runs / 10) : runs,
      endOnFailure: true,
    });
  }
  await atlas.close();
  return seen;
}

/** Some tunes, so that there is something to ask about, and what a request may name of them. */
async function settle(atlas: TestAtlas) {
  const receipts = new Map<string, string>();
  const decisions: number[] = [];
  const names: Record<string, unknown[]> = { decisions, parent: ["world"], version: ["prior"] };
  const ids: string[] = [];
  names.id = names.tunes = names.tune = names.ids = ids;
  const remember = ({ id, receipt }: { id: string; receipt?: string | undefined }) => {
    ids.push(id);
    if (receipt) receipts.set(id, receipt);
  };
  // Nobody revises or withdraws these, so that some cell has tunes.
  for (const tune of [goodTune(10), goodTune(11)]) await post(atlas.app, tune);
  for (const tune of [goodTune(0), goodTune(1), goodTune(2), inFeet(3)])
    remember(answers.submitted.parse(await (await post(atlas.app, tune)).json()));
  const stewards = async (path: string, body?: unknown) =>
    (
      await atlas.app.request(`/api/steward/${path}`, {
        method: body ? "POST" : "GET",
        headers: { ...bearer(TOKEN), "Content-Type": "application/json" },
        ...(body !== undefined && { body: JSON.stringify(body) }),
      })
    ).json();
  const { waiting } = await stewards("waiting");
  const newcomers: string[] = waiting.map((w: { contributor: string }) => w.contributor);
  names.pseudonym = names.contributor = newcomers;
  // One is left to wait.
  for (const contributor of newcomers.slice(1))
    await stewards(`contributors/${contributor}/count`, { reason: "A neighbour." });
  await atlas.fit.settle();
  names.version?.push((await atlas.fit.current()).version);
  /** Cells and the open data's files change with the tunes that are sent and revised. */
  const lookAgain = async () => {
    const world = await (await atlas.app.request("/api/cells/world")).json();
    names.cell = answers.cells.parse(world).cells.map(({ cell }) => cell);
    const data = await (await atlas.app.request("/api/data")).json();
    const { revision, files } = answers.data.parse(data);
    names.revision = [revision];
    names.file = files.map(({ name }) => name);
  };
  const decided = (value: { decisions: { number: number }[] }) =>
    decisions.push(...value.decisions.map(({ number }) => number));
  return {
    names,
    lookAgain,
    remember,
    decided,
    receipt: (id = "") => receipts.get(id) ?? "no receipt",
  };
}

function addressOf(path: string, { path: blanks, query }: Sent): string {
  const filled = path.replaceAll(/\{(\w+)\}/g, (_, name) => encodeURIComponent(blanks[name] ?? ""));
  const asked = new URLSearchParams(query).toString();
  return asked ? `${filled}?${asked}` : filled;
}

/** Requests of an operation. */
function requests(
  { operationId, parameters = [], requestBody }: Described,
  names: Names,
): fc.Arbitrary<Sent> {
  const of = (where: string): Schema => {
    const own = parameters.filter((p) => p.in === where);
    return {
      type: "object",
      properties: Object.fromEntries(own.map(({ name, schema }) => [name, schema])),
      required: where === "path" ? own.map(({ name }) => name) : [],
    };
  };
  const texts = (values: fc.Arbitrary<unknown>) =>
    values.map((all) =>
      Object.fromEntries(
        Object.entries(all as object).map(([name, value]) => [name, textOf(value)]),
      ),
    );
  const [path, query, header] = ["path", "query", "header"].map(of) as [Schema, Schema, Schema];
  // A header has printable letters alone, else no client could send it.
  const headers = texts(inside(header, names)).map((all) =>
    Object.fromEntries(
      Object.entries(all).map(([name, text]) => [name, text.replaceAll(/[^\x21-\x7e]/g, "x")]),
    ),
  );
  const sample = samples(names)[operationId];
  /** Right or nearly so. */
  const either = (schema: Schema) =>
    fc.oneof(
      inside(schema, names),
      slightlyOff(schema, names),
      ...(sample
        ? [inside, slightlyOff].map((make) => oneFieldAnew(sample, schema, make, names))
        : []),
    );
  const body = requestBody?.content["application/json"].schema;
  return fc.record({
    path: texts(inside(path, names)).map((all) =>
      Object.fromEntries(Object.entries(all).map(([name, text]) => [name, text || "x"])),
    ),
    query: texts(either(query)),
    header: headers,
    body: body
      ? fc.oneof(
          { weight: 9, arbitrary: either(body).map((value) => JSON.stringify(value)) },
          { weight: 1, arbitrary: fc.constantFrom("", "{", "[]", "null", '"'.padEnd(70_000)) },
        )
      : fc.constant(undefined),
    type: fc.oneof(
      { weight: 19, arbitrary: fc.constant("application/json") },
      { weight: 1, arbitrary: fc.constant("text/plain") },
    ),
    asks: fc.oneof(
      { weight: 18, arbitrary: fc.constant("known" as const) },
      { weight: 1, arbitrary: fc.constantFrom("stranger" as const, "nobody" as const) },
    ),
  });
}

/** Judges values by schemas of the description alone. */
function judge(named: Record<string, Schema>) {
  const made = new Map<Schema, z.ZodType>();
  return (schema: Schema): z.ZodType => {
    const meant = schema.$ref ? named[schema.$ref.split("/").at(-1) as string] : schema;
    if (!meant) throw new Error(`The description has no ${schema.$ref}.`);
    const reader = made.get(meant) ?? z.fromJSONSchema(meant as never);
    made.set(meant, reader);
    return reader;
  };
}
