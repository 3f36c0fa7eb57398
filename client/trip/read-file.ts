import { Refused } from "../base/refused.ts";
import { type FileStop, fileStop, MOST_STOPS } from "../base/stop-schema.ts";
import { trip } from "../texts/trip.ts";
import type { FoundStop } from "./found-stop.ts";
import { stopsOfCsv } from "./read-csv.ts";
import { stopsOfGeoJson } from "./read-geojson.ts";
import { stopsOfGpx } from "./read-gpx.ts";

export const LARGEST_FILE_bytes = 2_000_000;

/**
 * The stops of a file somebody brings: GPX, GeoJSON or CSV, told apart by how it begins, whatever it is called.
 * All of it is taken or nothing.
 * @throws Refused with the reason, and the line where there is one
 */
export function stopsOfText(text: string): FileStop[] {
  const found = readerOf(text)(text);
  if (found.length === 0) throw new Refused(trip.refused.noStop);
  if (found.length > MOST_STOPS) {
    throw new Refused(trip.refused.tooMany(found.length, MOST_STOPS));
  }
  return found.map(checked);
}

function readerOf(text: string): (text: string) => FoundStop[] {
  const start = text.replace(/^\uFEFF/, "").trimStart();
  if (start === "") throw new Refused(trip.refused.empty);
  if (start.startsWith("<")) return stopsOfGpx;
  if (start.startsWith("{") || start.startsWith("[")) return stopsOfGeoJson;
  if (start.slice(0, 2000).includes("\u0000")) throw new Refused(trip.refused.noText);
  return stopsOfCsv;
}

function checked({ line, fields }: FoundStop): FileStop {
  const parsed = fileStop.safeParse({ ...fields, name: fields.name ?? "" });
  if (parsed.success) return parsed.data;
  throw new Refused(parsed.error.issues[0]?.message ?? trip.refused.unreadable, line);
}

/** @throws Refused when the file is too large or cannot be read */
export async function stopsOfFile(file: File): Promise<FileStop[]> {
  if (file.size > LARGEST_FILE_bytes) {
    throw new Refused(trip.refused.tooLarge(LARGEST_FILE_bytes / 1e6));
  }
  return stopsOfText(await file.text());
}
