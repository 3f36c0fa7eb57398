import { readRecord } from "../../model/geography/place-records.ts";
import { searchPlaces } from "../../model/geography/places.ts";
import { elevationAt, loadTerrain, type Terrain } from "../../model/geography/terrain.ts";
import type { Gazetteer } from "../context.ts";

/** Reads one of the built files; null when it is not there. */
export type ReadFile = (path: string) => Promise<Uint8Array | null>;

/** The files that places and elevations are read from are not there. */
export class GeographyMissing extends Error {}

/** Files of the place index kept in memory. */
const FILES_KEPT = 200;

/** Place search and elevations over the built files, wherever they are read from; read when first needed. */
export function openGeography(read: ReadFile): Gazetteer {
  const decoder = new TextDecoder();
  const texts = new Map<string, string>();
  let terrain: Promise<Terrain> | undefined;

  async function readText(path: string): Promise<string | null> {
    const kept = texts.get(path);
    if (kept !== undefined) return kept;
    const bytes = await read(path);
    if (!bytes) return null;
    const text = decoder.decode(bytes);
    texts.set(path, text);
    if (texts.size > FILES_KEPT) texts.delete(texts.keys().next().value as string);
    return text;
  }

  async function readTerrain(): Promise<Terrain> {
    const [grid, points] = await Promise.all([read("grid.bin"), read("points.bin")]);
    if (!grid || !points) throw new GeographyMissing("The elevation files are not built.");
    return loadTerrain(grid, points);
  }

  let built = false;
  /** Once there, the files stay. */
  const ready = async () => {
    built ||= (await read("format")) !== null;
    return built;
  };

  function openTerrain(): Promise<Terrain> {
    terrain ??= readTerrain().catch((error) => {
      terrain = undefined;
      throw error;
    });
    return terrain;
  }

  const nameOf = async (place: number | null) =>
    place === null ? null : (await readRecord(readText, place)).name;

  return {
    async search(query, limit) {
      if (!(await ready())) throw new GeographyMissing("The place index is not built.");
      const found = await searchPlaces(query, readText, limit);
      return found.map(({ match: _, ...place }) => place);
    },
    async elevation(lat, lon) {
      const { nearest, ...estimate } = elevationAt(lat, lon, await openTerrain());
      if (!nearest) return { ...estimate, nearest };
      const { place, distance_m } = nearest;
      return { ...estimate, nearest: { name: await nameOf(place), distance_m } };
    },
    ready,
  };
}
