import type { Context } from "hono";
import { z } from "zod";
import { SAFETY } from "../../model/safety.ts";
import { citationOf } from "../citation.ts";
import type { Services } from "../context.ts";
import { data } from "../contract/data.ts";
import { api, declareRoute, json, media } from "../declare.ts";
import { LICENCE } from "../dictionary.ts";
import { unchangedSince } from "../freshness.ts";
import { isSentAsGzip, partOf, sendPacked } from "../packed.ts";
import { RequestProblem, STORAGE_SHORT } from "../problem.ts";
import type { ReleasedFile } from "../release.ts";

/** A file never changes under its address; but what was withdrawn must be gone from copies on the way, too, within a day. */
const A_DAY = "public, max-age=86400, immutable";

export const MEDIA_TYPES = {
  "tunes.csv": "text/csv; charset=utf-8; header=present",
  "tunes.geojson": "application/geo+json",
  "tunes.parquet": "application/vnd.apache.parquet",
} as const satisfies Record<ReleasedFile["name"], string>;

/** Where a file of a revision is. */
export const addressOf = (revision: string, name: string): string =>
  `/api/data/${revision}/${name}`;

const dataRoute = declareRoute({
  method: "get",
  path: "/data",
  summary: "The open data's newest revision: files that never change, with their checksums",
  responses: { 200: json(data) },
  problems: [503, STORAGE_SHORT],
});

const fileRoute = declareRoute({
  method: "get",
  path: "/data/{revision}/{file}",
  summary: "A file of a revision of the open data; never changes",
  request: { params: z.object({ revision: z.string(), file: z.string() }) },
  // Described and not checked: what is no range is no reason to refuse (RFC 9110, 14.2).
  parameters: [
    {
      name: "Range",
      in: "header",
      required: false,
      description: "One part of the file as it is unpacked: bytes=0-999",
      schema: { type: "string", pattern: "^bytes=([0-9]{1,9}-[0-9]{0,9}|-[0-9]{1,9})$" },
    },
  ],
  responses: {
    200: media("text/csv", "application/geo+json", "application/vnd.apache.parquet"),
    206: { ...media("*/*"), description: "The part" },
  },
  problems: [404, 416, 503, STORAGE_SHORT],
});

/** The open data by revision: an index, and files that never change under their addresses. */
export function dataRoutes({ prepared, fit, demo }: Services) {
  return api()
    .openapi(dataRoute, async (c) => {
      const [now, ...before] = await prepared.releases();
      const { version } = await fit.current();
      const unchanged = unchangedSince(c, `${now.revision}.${version}.${before[0]?.revision}`);
      if (unchanged) return unchanged;
      return c.json(
        {
          revision: now.revision,
          before: before.map(({ revision }) => revision),
          fit: version,
          files: now.files.map(({ name, size_bytes, sha256 }) => ({
            name,
            address: addressOf(now.revision, name),
            media_type: MEDIA_TYPES[name],
            size_bytes,
            sha256,
          })),
          dictionary: "/api/dictionary.json",
          licence: LICENCE,
          citation: citationOf(now.revision, version, demo),
          demo,
          safety: SAFETY,
        },
        200,
      );
    })
    .openapi(fileRoute, async (c) => {
      const { revision, file: name } = c.req.valid("param");
      const release = (await prepared.releases()).find((r) => r.revision === revision);
      const file = release?.files.find((f) => f.name === name);
      if (!file) {
        throw new RequestProblem(
          404,
          "This revision is not kept, or has no such file. GET /api/data names those that are.",
        );
      }
      return sendFile(c, file);
    });
}

/** A file, or the part of it that is asked for (RFC 9110, 14). */
function sendFile(c: Context, file: ReleasedFile): Response {
  const part = partAsked(c, file);
  const isGzip = !part && isSentAsGzip(c, file);
  // Packed it is another representation, with a tag of its own.
  const known = unchangedSince(c, isGzip ? `${file.sha256}.gzip` : file.sha256, A_DAY);
  if (known) return known;
  c.header("Content-Type", MEDIA_TYPES[file.name]);
  c.header("Accept-Ranges", "bytes");
  c.header("Link", `<${LICENCE.url}>; rel="license", </api/data>; rel="index"`);
  if (file.pieces) c.header("Vary", "Accept-Encoding");
  // Of the whole as it is unpacked (RFC 9530); a digest of what is packed would be another one.
  if (!isGzip) c.header("Repr-Digest", `sha-256=:${base64Of(file.sha256)}:`);
  if (!part) return sendPacked(c, file);
  const [first, last] = part;
  c.header("Content-Range", `bytes ${first}-${last}/${file.size_bytes}`);
  c.header("Content-Length", String(last - first + 1));
  return c.body(partOf(file, first, last) as ReadableStream, 206);
}

const base64Of = (hexadecimal: string): string =>
  btoa(hexadecimal.replaceAll(/../g, (pair) => String.fromCharCode(Number.parseInt(pair, 16))));

/** First and last byte; undefined for all of it, which is also the answer to several parts at once. */
function partAsked(c: Context, file: ReleasedFile): [number, number] | undefined {
  const [, from = "", to = ""] = /^bytes=(\d*)-(\d*)$/.exec(c.req.header("Range") ?? "") ?? [];
  if (from === "" && to === "") return undefined;
  const ifRange = c.req.header("If-Range");
  if (ifRange !== undefined && ifRange !== `"${file.sha256}"`) return undefined;
  const end = file.size_bytes - 1;
  const [first, last] =
    from === ""
      ? [Math.max(0, file.size_bytes - Number(to)), end]
      : [Number(from), to === "" ? end : Math.min(Number(to), end)];
  if (to !== "" && from !== "" && Number(to) < Number(from)) return undefined;
  if (first > end || (from === "" && Number(to) === 0)) {
    throw new RequestProblem(416, `The file has ${file.size_bytes} bytes.`, {
      title: "No such part",
      headers: { "Content-Range": `bytes */${file.size_bytes}` },
    });
  }
  return [first, last];
}
