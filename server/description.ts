import { z } from "zod";
import { tuneSchema } from "../model/tune.ts";
import * as answers from "./contract.ts";
import { scalingQuery } from "./routes/fit.ts";
import { nearQuery } from "./routes/near.ts";
import { elevationQuery, placesQuery } from "./routes/places.ts";
import { startBody, startQuery } from "./routes/start.ts";
import * as steward from "./steward-schemas.ts";
import { CODE_VERSION } from "./version.ts";

type Json = Record<string, unknown>;

/** An operation in brief: what goes in, what comes out. */
interface Operation {
  summary: string;
  query?: z.ZodObject;
  body?: z.ZodType;
  /** What the bearer must show. */
  bearer?: "receipt" | "steward";
  headers?: Json[];
  status?: number;
  /** Its schema, or its media types where JSON has no more to say. */
  answer?: z.ZodType | string | string[];
  /** Whether a part of it can be asked for. */
  inParts?: boolean;
  problems?: number[];
}

const idempotencyKey: Json = {
  name: "Idempotency-Key",
  in: "header",
  required: false,
  description:
    "8 to 200 printable characters. The same key and tune get the same answer again, receipt included.",
  schema: { type: "string", minLength: 8, maxLength: 200 },
};

const proofOfWork: Json = {
  name: "Proof-Of-Work",
  in: "header",
  required: false,
  description: "In a flood: what solves the challenge of a 429, as its schema says",
  schema: { type: "string", maxLength: 2000 },
};

const range: Json = {
  name: "Range",
  in: "header",
  required: false,
  description: "One part of the file as it is unpacked: bytes=0-999",
  schema: { type: "string", pattern: "^bytes=([0-9]{1,9}-[0-9]{0,9}|-[0-9]{1,9})$" },
};

/** Every route of the API, by path and method. */
const paths: Record<string, Record<string, Operation>> = {
  "/api/tunes": {
    post: {
      summary: "Submit a tune",
      headers: [idempotencyKey, proofOfWork],
      body: tuneSchema,
      status: 201,
      answer: answers.submitted,
      problems: [400, 409, 413, 415, 422, 429, 503, 507],
    },
  },
  "/api/tunes/{id}": {
    get: {
      summary: "Read a tune",
      bearer: "receipt",
      answer: answers.keptTune,
      problems: [401, 404],
    },
    put: {
      summary: "Revise a tune",
      bearer: "receipt",
      body: tuneSchema,
      answer: answers.submitted,
      problems: [400, 401, 404, 413, 415, 422, 429, 503, 507],
    },
    delete: {
      summary: "Withdraw a tune: gone from data, fit and export",
      bearer: "receipt",
      status: 204,
      problems: [401, 404, 429, 503, 507],
    },
  },
  "/api/start": {
    get: {
      summary: "Start tune at a place: elevation_m, or lat and lon",
      query: startQuery,
      answer: answers.startTune,
      problems: [404, 422],
    },
    post: {
      summary: "The same for a heater that has tunes of its own; nothing is stored",
      body: startBody,
      answer: answers.ownStartTune,
      problems: [400, 404, 413, 415, 422],
    },
  },
  "/api/tunes/near": {
    get: {
      summary:
        "Accepted tunes of a size, nearest in air first; where lat and lon are given, place orders those in like air",
      query: nearQuery,
      answer: answers.near,
      problems: [404, 422],
    },
  },
  "/api/fit": { get: { summary: "The published fit", answer: answers.publishedFit } },
  "/api/fit/{version}": {
    get: {
      summary: "A version of the fit; never changes",
      answer: answers.publishedFit,
      problems: [404],
    },
  },
  "/api/scaling": {
    get: {
      summary: "Points, curve and bands of a heater size and one end of its power",
      query: scalingQuery,
      answer: answers.scaling,
      problems: [422],
    },
  },
  "/api/cells/{parent}": {
    get: {
      summary: 'Accepted tunes summed per H3 cell under a parent cell, or over the "world"',
      answer: answers.cells,
      problems: [404],
    },
  },
  "/api/cells/{cell}/tunes": {
    get: {
      summary: "Accepted tunes shown under one cell of those that /api/cells names",
      answer: answers.cellTunes,
      problems: [404],
    },
  },
  "/api/places": {
    get: {
      summary: "Places by name, with elevation",
      query: placesQuery,
      answer: answers.places,
      problems: [404, 422],
    },
  },
  "/api/elevation": {
    get: {
      summary: "Elevation of any point, with its uncertainty",
      query: elevationQuery,
      answer: answers.elevation,
      problems: [404, 422],
    },
  },
  "/api/fits": {
    get: {
      summary: "The newest versions of the fit that are kept, and what each changed",
      answer: answers.fits,
    },
  },
  "/api/data": {
    get: {
      summary: "The open data's newest revision: files that never change, with their checksums",
      answer: answers.data,
    },
  },
  "/api/data/{revision}/{file}": {
    get: {
      summary: "A file of a revision of the open data; never changes",
      headers: [range],
      answer: ["text/csv", "application/geo+json", "application/vnd.apache.parquet"],
      inParts: true,
      problems: [404, 416],
    },
  },
  "/api/tunes.csv": { get: { summary: "All accepted tunes, CSV (CC0)", answer: "text/csv" } },
  "/api/tunes.csv-metadata.json": {
    get: {
      summary: "The cautions, the licence and the columns of that CSV, by the W3C's vocabulary",
      answer: "application/csvm+json",
    },
  },
  "/api/tunes.geojson": {
    get: { summary: "All accepted tunes, GeoJSON (CC0)", answer: "application/geo+json" },
  },
  "/api/tunes.parquet": {
    get: {
      summary: "All accepted tunes, Parquet (CC0)",
      answer: "application/vnd.apache.parquet",
    },
  },
  "/api/dictionary.json": {
    get: {
      summary: "The cautions, and what the columns of the open data mean",
      answer: "application/json",
    },
  },
  "/api/map": { get: { summary: "Map sources set by the configuration", answer: answers.map } },
  "/api/health": { get: { summary: "Liveness, and the age of the fit", answer: answers.health } },
  "/api/ready": {
    get: {
      summary:
        "Readiness: whether new tunes are taken at this moment; 503 says what keeps them out",
      answer: answers.ready,
      problems: [503],
    },
  },
  "/api/openapi.json": { get: { summary: "This description", answer: "application/json" } },
};

/** The steward's routes, which an atlas has only when it is given a token for them. */
const stewardPaths: typeof paths = {
  "/api/steward/held": {
    get: {
      summary: "Held tunes, oldest first",
      bearer: "steward",
      query: steward.heldQuery,
      answer: answers.heldAnswer,
      problems: [401, 422, 429],
    },
  },
  "/api/steward/tunes": {
    get: {
      summary: "Tunes by their ids, or a contributor's, whatever was decided on them",
      bearer: "steward",
      query: steward.tunesQuery,
      answer: answers.tunesAnswer,
      problems: [401, 422, 429],
    },
  },
  "/api/steward/clusters": {
    get: {
      summary: "Tunes of one place, month and size that agree more than heaters do, under new keys",
      bearer: "steward",
      answer: answers.clustersAnswer,
      problems: [401, 429],
    },
  },
  "/api/steward/without": {
    post: {
      summary:
        "What the fit would be without some tunes, beside the published one; changes nothing",
      bearer: "steward",
      body: steward.withoutBody,
      answer: answers.withoutAnswer,
      problems: [400, 401, 413, 415, 422, 429],
    },
  },
  "/api/steward/decisions": {
    get: {
      summary: "The audit trail: every decision, newest first",
      bearer: "steward",
      query: steward.trailQuery,
      answer: answers.trailAnswer,
      problems: [401, 422, 429],
    },
    post: {
      summary: "Accept, hold or remove tunes, and say why",
      bearer: "steward",
      body: steward.decisionBody,
      answer: answers.decidedAnswer,
      problems: [400, 401, 404, 413, 415, 422, 429, 503, 507],
    },
  },
  "/api/steward/undo": {
    post: {
      summary: "Take decisions of a steward back, by decisions that say so",
      bearer: "steward",
      body: steward.undoBody,
      answer: answers.decidedAnswer,
      problems: [400, 401, 404, 409, 413, 415, 422, 429, 503, 507],
    },
  },
  "/api/steward/waiting": {
    get: {
      summary: "New contributors whose tunes do not count yet, in the order in which they will",
      bearer: "steward",
      query: steward.waitingQuery,
      answer: answers.waitingAnswer,
      problems: [401, 422, 429],
    },
  },
  "/api/steward/contributors/{pseudonym}/count": {
    post: {
      summary: "Let a new contributor's tunes count now, and say why",
      bearer: "steward",
      body: steward.reasonBody,
      answer: answers.countedAnswer,
      problems: [400, 401, 404, 413, 415, 422, 429, 503, 507],
    },
  },
  "/api/steward/alarms": {
    get: {
      summary: "What the published fit warns its steward of, and why a newer one is not published",
      bearer: "steward",
      answer: answers.alarmsAnswer,
      problems: [401, 429],
    },
  },
  "/api/steward/publish": {
    post: {
      summary: "Publish what an alarm holds back, and say why",
      bearer: "steward",
      body: steward.reasonBody,
      status: 202,
      answer: answers.publicationAnswer,
      problems: [400, 401, 409, 413, 415, 422, 429, 503, 507],
    },
  },
  "/api/steward/keep-back": {
    post: {
      summary: "Hold back what an alarm holds back for another week, and say why",
      bearer: "steward",
      body: steward.reasonBody,
      answer: answers.publicationAnswer,
      problems: [400, 401, 409, 413, 415, 422, 429, 503, 507],
    },
  },
};

/**
 * The API's description, OpenAPI 3.1, from the same schemas that check what comes in.
 * @param hasSteward whether the steward's routes are there
 */
export function describeApi(hasSteward: boolean): Json {
  const all = hasSteward ? { ...paths, ...stewardPaths } : paths;
  return {
    openapi: "3.1.0",
    info: {
      title: "Hypsotune",
      version: CODE_VERSION,
      summary: "Start tunes for small diesel air heaters by place, with confidence bands",
      description:
        "Every answer that could set a heater carries its cautions: a starting point only; carbon monoxide kills. " +
        "Field names carry their units. A pressure is station pressure; sea-level pressure is qnh_hPa.",
      license: { name: "MIT (code); CC0 1.0 (tunes)", identifier: "MIT" },
    },
    servers: [{ url: "/" }],
    paths: Object.fromEntries(
      Object.entries(all).map(([path, methods]) => [
        path,
        Object.fromEntries(Object.entries(methods).map(([m, o]) => [m, operation(path, m, o)])),
      ]),
    ),
    components: {
      schemas: { Problem: jsonSchema(answers.problem) },
      securitySchemes: {
        receipt: { type: "http", scheme: "bearer", description: "The receipt of one tune" },
        ...(hasSteward
          ? { steward: { type: "http", scheme: "bearer", description: "The steward's token" } }
          : {}),
      },
    },
  };
}

function operation(path: string, method: string, o: Operation): Json {
  const inPath = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => ({
    name,
    in: "path",
    required: true,
    schema: { type: "string" },
  }));
  const parameters = [
    ...inPath,
    ...(o.headers ?? []),
    ...(o.query ? queryParameters(o.query) : []),
  ];
  // A question may be longer than an address.
  const problems = [...(o.problems ?? []), ...(o.query ? [414] : [])];
  return {
    operationId: `${method}${path.replace("/api", "").replaceAll(/\W+(\w)?/g, (_, letter?: string) => letter?.toUpperCase() ?? "")}`,
    summary: o.summary,
    ...(o.bearer ? { security: [{ [o.bearer]: [] }] } : {}),
    ...(parameters.length > 0 ? { parameters } : {}),
    ...(o.body
      ? {
          requestBody: {
            required: true,
            content: { "application/json": { schema: jsonSchema(o.body) } },
          },
        }
      : {}),
    responses: {
      [o.status ?? 200]: { description: "Done", ...content(o.answer) },
      ...(o.inParts ? { 206: { description: "The part", ...content("*/*") } } : {}),
      ...Object.fromEntries(problems.map((status) => [status, PROBLEM])),
    },
  };
}

const PROBLEM = {
  description: "RFC 9457 problem details; errors name every bad field",
  content: { "application/problem+json": { schema: { $ref: "#/components/schemas/Problem" } } },
};

function content(answer: Operation["answer"]): Json {
  if (answer === undefined) return {};
  if (typeof answer === "string" || Array.isArray(answer)) {
    const schemaOf = (type: string) =>
      type.endsWith("parquet")
        ? { type: "string", format: "binary" }
        : { type: type.endsWith("json") ? "object" : "string" };
    const types = [answer].flat().map((type) => [type, { schema: schemaOf(type) }]);
    return { content: Object.fromEntries(types) };
  }
  return { content: { "application/json": { schema: jsonSchema(answer) } } };
}

function queryParameters(query: z.ZodObject): Json[] {
  const { properties = {}, required = [] } = jsonSchema(query) as {
    properties?: Record<string, Json>;
    required?: string[];
  };
  return Object.entries(properties).map(([name, schema]) => ({
    name,
    in: "query",
    // What has a default may be left out, though what is made of it is always there.
    required: required.includes(name) && !("default" in schema),
    schema,
  }));
}

function jsonSchema(schema: z.ZodType): Json {
  // As sent: what a preprocessing step lets in, not what it makes of it.
  const { $schema: _, ...rest } = z.toJSONSchema(schema, { io: "output" });
  return rest;
}
