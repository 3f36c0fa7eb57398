import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { foldName } from "../../model/geography/fold.ts";
import { type Bearer, packNames, type Side, shardOf } from "../../model/geography/name-shards.ts";
import {
  type PlaceRecord,
  RECORDS_PER_FILE,
  REGION_DIGITS,
  REGION_OF_PLACE_FILE,
  REGIONS_FILE,
  type RegionRecord,
  recordFile,
} from "../../model/geography/place-records.ts";
import type { Settlement } from "./settlements.ts";

/** Settlements of fewer people are found in spite of wrong first letters by their own name and its plain spelling only. */
const FORGIVING_FROM_PEOPLE = 10_000;
/** Of a degree: 111 m, no finer than a place's point means. */
const DECIMALS = 3;
const LONGEST_NAME = 60;

/** Writes records and name shards for the place search; `settlements` are the most populous first. */
export async function buildPlaceIndex(dir: string, settlements: Settlement[]): Promise<void> {
  await Promise.all(["places", "names"].map((d) => mkdir(join(dir, d), { recursive: true })));
  await writeRecords(dir, settlements);
  await writeNames(dir, "beginning", settlements, () => true);
  await writeNames(dir, "end", settlements, (s) => s.population >= FORGIVING_FROM_PEOPLE);
}

async function writeRecords(dir: string, settlements: Settlement[]): Promise<void> {
  const regions = new Map<string, { number: number; record: RegionRecord }>();
  const records: PlaceRecord[] = [];
  for (const s of settlements) {
    const key = `${s.country}.${s.short}`;
    const record: RegionRecord = [s.region, s.short, s.country];
    const { number } = regions.get(key) ?? { number: regions.size };
    regions.set(key, { number, record });
    records.push(toRecord(s, number));
  }
  for (let i = 0; i < records.length; i += RECORDS_PER_FILE) {
    const text = JSON.stringify(records.slice(i, i + RECORDS_PER_FILE));
    await writeFile(join(dir, recordFile(i)), text);
  }
  const listed = [...regions.values()].map((r) => r.record);
  await writeFile(join(dir, REGIONS_FILE), JSON.stringify(listed));
  const digits = records.map((r) => r[1].toString(36).padStart(REGION_DIGITS, "0"));
  await writeFile(join(dir, REGION_OF_PLACE_FILE), digits.join(""));
}

function toRecord(s: Settlement, region: number): PlaceRecord {
  const [lat, lon] = [s.lat, s.lon].map((degrees) => Number(degrees.toFixed(DECIMALS))) as [
    number,
    number,
  ];
  return [s.name, region, lat, lon, s.elevation_m, s.population, s.pass ? 1 : 0];
}

async function writeNames(
  dir: string,
  side: Side,
  settlements: Settlement[],
  withAllNames: (s: Settlement) => boolean,
): Promise<void> {
  const shards = new Map<string, Map<string, Bearer[]>>();
  settlements.forEach((settlement, number) => {
    const { name, names } = settlement;
    const own = new Set([name, ...names.slice(0, 1)].map(foldName));
    const others = withAllNames(settlement) ? names.map(foldName) : [];
    for (const folded of new Set([...own, ...others])) {
      if (folded === "" || folded.length > LONGEST_NAME) continue;
      addTo(shards, shardOf(folded, side), folded, { number, own: own.has(folded) });
    }
  });
  for (const [file, byName] of shards) {
    const entries = [...byName].map(([name, bearers]) => ({ name, bearers }));
    await writeFile(join(dir, file), packNames(entries, side));
  }
}

function addTo(
  shards: Map<string, Map<string, Bearer[]>>,
  file: string,
  name: string,
  bearer: Bearer,
): void {
  const shard = shards.get(file) ?? new Map<string, Bearer[]>();
  shards.set(file, shard);
  const bearers = shard.get(name);
  if (bearers) bearers.push(bearer);
  else shard.set(name, [bearer]);
}
