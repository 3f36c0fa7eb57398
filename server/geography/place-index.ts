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
  for (const [file, text] of placeIndexFiles(settlements)) await writeFile(join(dir, file), text);
}

/**
 * The files of a place index by name; `settlements` are the most populous first.
 * @param forgiving whose other names too are found in spite of wrong first letters
 */
export function placeIndexFiles(
  settlements: Settlement[],
  forgiving = (s: Settlement) => s.population >= FORGIVING_FROM_PEOPLE,
): Map<string, string> {
  return new Map([
    ...recordFiles(settlements),
    ...nameFiles("beginning", settlements, () => true),
    ...nameFiles("end", settlements, forgiving),
  ]);
}

function recordFiles(settlements: Settlement[]): Map<string, string> {
  const files = new Map<string, string>();
  const regions = new Map<string, { number: number; record: RegionRecord }>();
  const records: PlaceRecord[] = [];
  for (const s of settlements) {
    const key = [s.country_code, s.region, s.short, ...s.written].join(".");
    const record: RegionRecord = [s.region, s.short, s.country_code, ...s.written];
    const { number } = regions.get(key) ?? { number: regions.size };
    regions.set(key, { number, record });
    records.push(toRecord(s, number));
  }
  for (let i = 0; i < records.length; i += RECORDS_PER_FILE) {
    files.set(recordFile(i), JSON.stringify(records.slice(i, i + RECORDS_PER_FILE)));
  }
  files.set(REGIONS_FILE, JSON.stringify([...regions.values()].map((r) => r.record)));
  const digits = records.map((r) => r[1].toString(36).padStart(REGION_DIGITS, "0"));
  return files.set(REGION_OF_PLACE_FILE, digits.join(""));
}

function toRecord(s: Settlement, region: number): PlaceRecord {
  const [lat, lon] = [s.lat, s.lon].map((degrees) => Number(degrees.toFixed(DECIMALS))) as [
    number,
    number,
  ];
  return [s.name, region, lat, lon, s.elevation_m, s.population, s.pass ? 1 : 0];
}

function nameFiles(
  side: Side,
  settlements: Settlement[],
  withAllNames: (s: Settlement) => boolean,
): [file: string, text: string][] {
  const shards = new Map<string, Map<string, Bearer[]>>();
  settlements.forEach((settlement, number) => {
    const { own, others } = foldedNames(settlement);
    for (const name of own) addTo(shards, shardOf(name, side), name, { number, own: true });
    if (!withAllNames(settlement)) return;
    for (const name of others) addTo(shards, shardOf(name, side), name, { number, own: false });
  });
  return [...shards].map(([file, byName]) => {
    const entries = [...byName].map(([name, bearers]) => ({ name, bearers }));
    return [file, packNames(entries, side)];
  });
}

interface FoldedNames {
  own: readonly string[];
  /** Without those that are its own. */
  others: readonly string[];
}

/** Folding is half the work of an index, and every place is in four: by either end of its names, of the world and of its country. */
const folded = new WeakMap<Settlement, FoldedNames>();

function foldedNames(settlement: Settlement): FoldedNames {
  const known = folded.get(settlement);
  if (known) return known;
  const { name, ownNames, otherNames } = settlement;
  const own = new Set([name, ...ownNames].map(foldName).filter(canBeFound));
  const others = new Set(otherNames.map(foldName).filter((n) => canBeFound(n) && !own.has(n)));
  const names = { own: [...own], others: [...others] };
  folded.set(settlement, names);
  return names;
}

const canBeFound = (name: string): boolean => name !== "" && name.length <= LONGEST_NAME;

function addTo(
  shards: Map<string, Map<string, Bearer[]>>,
  file: string,
  name: string,
  bearer: Bearer,
): void {
  let shard = shards.get(file);
  if (!shard) {
    shard = new Map();
    shards.set(file, shard);
  }
  const bearers = shard.get(name);
  if (bearers) bearers.push(bearer);
  else shard.set(name, [bearer]);
}
