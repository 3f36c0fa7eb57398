import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { foldName } from "../../model/geography/fold.ts";
import {
  type PlaceRecord,
  RECORDS_PER_FILE,
  shardByBeginning,
  shardByEnd,
} from "../../model/geography/places.ts";
import type { Settlement } from "./settlements.ts";

/** Settlements with more people are found by all their names, smaller ones by their own and its plain spelling. */
const ALL_NAMES_FROM_PEOPLE = 5000;

/** Writes records and name shards for the place search; `settlements` are the most populous first. */
export async function buildPlaceIndex(dir: string, settlements: Settlement[]): Promise<void> {
  await Promise.all(["places", "names"].map((d) => mkdir(join(dir, d), { recursive: true })));
  const records = settlements.map(toRecord);
  for (let i = 0; i < records.length; i += RECORDS_PER_FILE) {
    const file = join(dir, "places", `${i / RECORDS_PER_FILE}.json`);
    await writeFile(file, JSON.stringify(records.slice(i, i + RECORDS_PER_FILE)));
  }
  const shards = new Map<string, string[]>();
  settlements.forEach((settlement, number) => {
    for (const name of foldedNames(settlement)) {
      const line = `${name}\t${number.toString(36)}`;
      for (const file of [shardByBeginning(name), shardByEnd(name)]) {
        const lines = shards.get(file);
        if (lines) lines.push(line);
        else shards.set(file, [line]);
      }
    }
  });
  for (const [file, lines] of shards) await writeFile(join(dir, file), lines.join("\n"));
}

function toRecord(s: Settlement): PlaceRecord {
  const round = (degrees: number) => Number(degrees.toFixed(4));
  return [
    s.name,
    s.region,
    s.country,
    round(s.lat),
    round(s.lon),
    s.elevation_m,
    s.population,
    s.pass ? 1 : 0,
  ];
}

function foldedNames({ name, names, population }: Settlement): Set<string> {
  const own = [name, ...(population >= ALL_NAMES_FROM_PEOPLE ? names : names.slice(0, 1))];
  return new Set(own.map(foldName).filter((folded) => folded.length > 0 && folded.length <= 60));
}
