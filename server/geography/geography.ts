import { listedPlace } from "../../model/geography/listed-place.ts";
import { readRecord } from "../../model/geography/place-records.ts";
import { searchPlaces } from "../../model/geography/places.ts";
import { elevationAt, loadTerrain, type Terrain } from "../../model/geography/terrain.ts";
import type { Gazetteer } from "../context.ts";
import { type Fetch, terrariumElevation } from "./terrarium.ts";

/** Reads one of the built files; null when it is not there. */
export type ReadFile = (path: string) => Promise<Uint8Array | null>;

/** The files that places and elevations are read from are not there. */
export class GeographyMissing extends Error {}

/** Files of the place index kept in memory. */
const FILES_KEPT = 200;

/** A source of finer elevations, where there is a network. */
export interface ElevationTiles {
  /** Address of a terrarium tile with {z}, {x} and {y}. */
  template: string;
  fetch: Fetch;
}

/** Half-widths of the 68 % and 95 % intervals of a tile's elevation, m: usual for space-borne surveys, from memory. */
const TILE_WITHIN_m = [15, 50] as const;

/**
 * Place search and elevations over the built files, wherever they are read from; read when first needed.
 * @param tiles asked first for elevations; where they fail the built-in estimate answers
 */
export function openGeography(read: ReadFile, tiles?: ElevationTiles): Gazetteer {
  const decoder = new TextDecoder();
  const texts = new Map<string, string>();
  let grid: Promise<Uint8Array> | undefined;
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
    const [grid, points] = await Promise.all([readGrid(), read("points.bin")]);
    if (!points) throw new GeographyMissing("The elevation files are not built.");
    return loadTerrain(grid, points);
  }

  /** The grid, read once: a search needs no more of the terrain. */
  function readGrid(): Promise<Uint8Array> {
    grid ??= read("grid.bin")
      .then((bytes) => {
        if (!bytes) throw new GeographyMissing("The elevation files are not built.");
        return bytes;
      })
      .catch((error) => {
        grid = undefined;
        throw error;
      });
    return grid;
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
      const [found, grid] = await Promise.all([searchPlaces(query, readText, limit), readGrid()]);
      return found.map(({ match, ...place }) => ({ ...listedPlace(place, grid), match }));
    },
    async elevation(lat, lon) {
      const { nearest, ...estimate } = elevationAt(lat, lon, await openTerrain());
      const named = nearest && {
        name: await nameOf(nearest.place),
        distance_m: nearest.distance_m,
      };
      const finer = tiles && (await fromTiles(tiles, lat, lon));
      return { ...estimate, ...finer, nearest: named };
    },
    ready,
  };
}

/** What a tile says in place of the estimate; nothing where it says nothing. */
async function fromTiles({ template, fetch }: ElevationTiles, lat: number, lon: number) {
  const elevation_m = await terrariumElevation(template, lat, lon, fetch);
  if (elevation_m === null) return {};
  const [uncertainty_68_m, uncertainty_95_m] = TILE_WITHIN_m;
  return {
    elevation_m: Math.round(elevation_m),
    sd_m: Math.round(uncertainty_95_m / 1.96),
    uncertainty_68_m,
    uncertainty_95_m,
    source: "tiles",
  };
}
