import { z } from "zod";
import { Refused } from "../base/refused.ts";
import { trip } from "../texts/trip.ts";
import { type FoundStop, linesWith } from "./found-stop.ts";

const geometry = z.looseObject({ type: z.string(), coordinates: z.unknown().optional() });
const feature = z.looseObject({
  type: z.literal("Feature"),
  geometry: geometry.nullable(),
  properties: z.record(z.string(), z.unknown()).nullish(),
});
const document = z.discriminatedUnion("type", [
  z.looseObject({
    type: z.literal("FeatureCollection"),
    features: z.array(z.unknown()).max(20_000),
  }),
  feature,
  z.looseObject({ type: z.literal("Point"), coordinates: z.unknown() }),
]);
const position = z.tuple([z.number(), z.number()], z.number());

const NAMES = ["name", "title"];
const ELEVATIONS = ["elevation_m", "elevation", "ele", "altitude"];
const TEMPERATURES = ["temperature_C", "temperature"];

/** Points of a GeoJSON file. Elevation in the properties; else a third coordinate, which many programs write, is taken as it. */
export function stopsOfGeoJson(text: string): FoundStop[] {
  const parsed = document.safeParse(jsonOf(text));
  if (!parsed.success) {
    throw new Refused(trip.refused.notGeoJson);
  }
  if (parsed.data.type === "Point") return [stopOf(parsed.data, {}, 1)];
  const features = parsed.data.type === "Feature" ? [parsed.data] : parsed.data.features;
  const lines = linesWith(text, /"type"\s*:\s*"Feature"/g);
  // A line named wrongly would be worse than none: only when there is one for each.
  const lineOf = (i: number) => (lines.length === features.length ? lines[i] : undefined);
  return features.flatMap((one, i) => {
    const { success, data } = feature.safeParse(one);
    if (!success) throw new Refused(trip.refused.notFeature(i + 1), lineOf(i));
    // Lines and areas beside the points are the way there, not stops.
    if (data.geometry?.type !== "Point") return [];
    return [stopOf(data.geometry, data.properties ?? {}, lineOf(i))];
  });
}

function stopOf(
  point: { coordinates?: unknown },
  properties: Record<string, unknown>,
  line: number | undefined,
): FoundStop {
  const { success, data } = position.safeParse(point.coordinates);
  if (!success) throw new Refused(trip.refused.position, line);
  const [lon, lat, third] = data;
  const pick = (keys: readonly string[]) =>
    keys.map((key) => properties[key]).find((value) => value !== undefined && value !== null);
  const name = pick(NAMES);
  return {
    line,
    fields: {
      name: typeof name === "string" ? name : "",
      elevation_m: pick(ELEVATIONS) ?? third,
      temperature_C: pick(TEMPERATURES),
      lat,
      lon,
      nights: pick(["nights"]),
    },
  };
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new Refused(trip.refused.json, lineOfError(String(error), text));
  }
}

/** Engines name the place of an error by line or by position, or not at all. */
function lineOfError(message: string, text: string): number | undefined {
  const line = /line (\d+)/.exec(message)?.[1];
  if (line) return Number(line);
  const position = Number(/position (\d+)/.exec(message)?.[1] ?? positionOfExcerpt(message, text));
  return position >= 0 ? text.slice(0, position).split("\n").length : undefined;
}

/** Some quote ten characters either side of the error instead: where that stands once in the text, the place is known. */
function positionOfExcerpt(message: string, text: string): number {
  const excerpt = /\.\.\."([\s\S]+?)"(?:\.\.\.)? is not valid JSON/.exec(message)?.[1];
  if (excerpt === undefined) return -1;
  const at = text.indexOf(excerpt);
  return at >= 0 && text.indexOf(excerpt, at + 1) < 0 ? at + 10 : -1;
}
