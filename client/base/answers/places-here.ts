import { listedPlace } from "../../../model/geography/listed-place.ts";
import {
  LARGE_PLACES_FILE,
  type PlacePack,
  searchPacks,
} from "../../../model/geography/place-packs.ts";
import type { ElevationAnswer, PlacesAnswer } from "../../../server/contract.ts";
import { offline } from "../../texts/offline.ts";
import { elevationHere, gridHere } from "../terrain-here.ts";
import { savedFiles } from "./saved-countries.ts";

/** Packs are large to parse: once each, until another country is saved. */
const parsed = new Map<string, Promise<PlacePack>>();

/** Places found, and what to say where there is none. */
export interface PlacesFound extends PlacesAnswer {
  none?: string;
}

/** Place search in this browser: the world's larger places, and all of the countries saved. */
export async function placesHere(q: string, limit: number): Promise<PlacesFound> {
  const files = [LARGE_PLACES_FILE, ...(await savedFiles())];
  const packs = await Promise.allSettled(files.map(pack));
  const found = packs.flatMap((one) => (one.status === "fulfilled" ? [one.value] : []));
  const credit = offline.placesCredit;
  if (found.length === 0) return { places: [], none: offline.noPlacesKept, credit };
  const [places, grid] = await Promise.all([
    searchPacks(q, found, limit),
    gridHere().catch(() => null),
  ]);
  return {
    places: places.map(({ match, ...place }) => ({ ...listedPlace(place, grid), match })),
    none: offline.notKept(q),
    credit,
  };
}

function pack(file: string): Promise<PlacePack> {
  const known = parsed.get(file);
  if (known) return known;
  const read = fetch(`/geography/${file}`).then((response) => {
    if (!response.ok) throw new Error(`${file}: ${response.status}`);
    return response.json();
  });
  parsed.set(file, read);
  read.catch(() => parsed.delete(file));
  return read;
}

/** Elevation of a point in this browser, in the form the atlas answers in; its nearest place goes without a name. */
export async function groundHere(lat: number, lon: number): Promise<ElevationAnswer> {
  const { nearest, ...found } = await elevationHere(lat, lon);
  return {
    ...found,
    nearest: nearest && { name: null, distance_m: nearest.distance_m },
    credit: offline.placesCredit,
  };
}
