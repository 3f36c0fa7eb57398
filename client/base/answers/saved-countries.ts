import { PACKS_FILE, type PackListing } from "../../../model/geography/place-packs.ts";
import { SAVED_CACHE } from "./cache-names.ts";

const PATH = "/geography/";
/** The deepest built-in tiles; what is above is kept by everyone. */
const DEEPEST_ZOOM = 4;

/** Pack files of the countries saved in this browser. */
export async function savedFiles(): Promise<string[]> {
  if (!("caches" in globalThis)) return [];
  const cache = await caches.open(SAVED_CACHE);
  return (await cache.keys())
    .map(({ url }) => new URL(url).pathname.slice(PATH.length))
    .filter((path) => path.startsWith("packs/"));
}

/** Countries on offer. */
export async function listCountries(): Promise<PackListing[]> {
  const response = await fetch(`${PATH}${PACKS_FILE}`);
  if (!response.ok) throw new Error(`${response.status}`);
  return response.json();
}

/** Keeps a country's places, its deepest map tiles and the map from near about its places. @throws when storage is full or the network fails */
export async function saveCountry(country: PackListing): Promise<void> {
  const cache = await caches.open(SAVED_CACHE);
  await Promise.all([...tilesOf(country), ...country.near].map((tile) => keep(cache, tile)));
  // Last: a country counts as saved by its places.
  await keep(cache, country.file);
  // Asking is allowed to fail; then the browser may clear it when it runs short.
  await navigator.storage?.persist?.().catch(() => false);
}

export async function removeCountry({ file }: PackListing): Promise<void> {
  await (await caches.open(SAVED_CACHE)).delete(PATH + file);
  // Tiles are shared between neighbours; with nobody left they go.
  if ((await savedFiles()).length === 0) await caches.delete(SAVED_CACHE);
}

/** Fetches what was saved again, after the atlas has built its places and map anew. */
export async function renewSaved(): Promise<void> {
  const saved = await savedFiles();
  if (saved.length === 0) return;
  for (const country of await listCountries()) {
    if (saved.includes(country.file)) await saveCountry(country);
  }
}

async function keep(cache: Cache, path: string): Promise<void> {
  const response = await fetch(PATH + path, { cache: "no-cache" });
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  await cache.put(PATH + path, response);
}

/** Tiles that touch the frame of a country. */
export function tilesOf({ west, south, east, north }: PackListing): string[] {
  const across = 2 ** DEEPEST_ZOOM;
  const column = (lon: number) => clamp(((lon + 180) / 360) * across, across);
  const row = (lat: number) => {
    const up = Math.asinh(Math.tan((lat * Math.PI) / 180)) / Math.PI;
    return clamp(((1 - up) / 2) * across, across);
  };
  const tiles: string[] = [];
  for (let x = column(west); x <= column(east); x++) {
    for (let y = row(north); y <= row(south); y++)
      tiles.push(`tiles/${DEEPEST_ZOOM}/${x}/${y}.png`);
  }
  return tiles;
}

function clamp(value: number, across: number): number {
  return Math.min(across - 1, Math.max(0, Math.floor(value)));
}
