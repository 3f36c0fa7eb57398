import { mkdir, stat, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { countryName } from "../../model/geography/country.ts";
import { foldName } from "../../model/geography/fold.ts";
import { nearTileOf } from "../../model/geography/near-tiles.ts";
import {
  LARGE_FROM_PEOPLE,
  LARGE_PLACES_FILE,
  PACKS_FILE,
  type PackListing,
} from "../../model/geography/place-packs.ts";
import { placeIndexFiles } from "./place-index.ts";
import type { Settlement } from "./settlements.ts";

/**
 * Place indexes to take along, one file each: the large places of the world, and each country whole. The shards of
 * the server's own index are by name, so a region of it would be all of it. The map from near is built before.
 */
export async function buildPlacePacks(dir: string, settlements: Settlement[]): Promise<void> {
  await mkdir(join(dir, "packs"), { recursive: true });
  const large = settlements.filter((s) => s.population >= LARGE_FROM_PEOPLE || s.pass);
  await writePack(join(dir, LARGE_PLACES_FILE), large);
  const listings: PackListing[] = [];
  for (const [country_code, members] of byCountry(settlements)) {
    const file = `packs/${foldName(countryName(country_code)).replaceAll(" ", "-")}.json`;
    const near = [...new Set(members.map(({ lat, lon }) => nearTileOf(lat, lon)))].sort();
    let bytes = await writePack(join(dir, file), members);
    for (const tile of near) bytes += (await stat(join(dir, tile))).size;
    listings.push({ country_code, file, places: members.length, bytes, near, ...frameOf(members) });
  }
  await writeFile(join(dir, PACKS_FILE), JSON.stringify(listings));
}

async function writePack(path: string, members: Settlement[]): Promise<number> {
  // Other names with a wrong first letter would be a third of it.
  const text = JSON.stringify(Object.fromEntries(placeIndexFiles(members, () => false)));
  await writeFile(path, text);
  return Buffer.byteLength(text);
}

function byCountry(settlements: Settlement[]): Map<string, Settlement[]> {
  const countries = new Map<string, Settlement[]>();
  for (const settlement of settlements) {
    if (settlement.country_code === null) continue;
    const members = countries.get(settlement.country_code);
    if (members) members.push(settlement);
    else countries.set(settlement.country_code, [settlement]);
  }
  return countries;
}

function frameOf(members: Settlement[]) {
  let [west, south, east, north] = [180, 90, -180, -90];
  for (const { lat, lon } of members) {
    west = Math.min(west, lon);
    east = Math.max(east, lon);
    south = Math.min(south, lat);
    north = Math.max(north, lat);
  }
  return { west, south, east, north };
}
