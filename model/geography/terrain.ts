import { around, distance } from "geokdbush";
import KDBush from "kdbush";
import { uncertainty } from "./uncertainty.ts";

/** What elevations are estimated from: a coarse global grid and points of known elevation. */
export interface Terrain {
  /** Elevation ÷ 25 m, one byte a cell, rows from north to south, columns from 180° W to the east. */
  grid: Uint8Array;
  index: KDBush;
  /** Elevation of each point of the index, m; {@link UNKNOWN_m} where none is known. */
  elevations: Int16Array;
  /** How many of the points, from the first, are places of the place index under the same numbers. */
  places: number;
}

/** Stands for an elevation that the data do not give. */
export const UNKNOWN_m = -32_768;

export const GRID_COLUMNS = 2048;
export const GRID_ROWS = 1024;
export const GRID_STEP_m = 25;

export type TerrainSource = "known point" | "interpolated" | "grid" | "sea";

/** Elevation of a point, with how far it may be off. */
export interface PointElevation {
  lat: number;
  lon: number;
  elevation_m: number;
  /** The standard deviation that bands carry on: no narrower than either interval. */
  sd_m: number;
  uncertainty_68_m: number;
  uncertainty_95_m: number;
  source: TerrainSource;
  nearest: NearestPoint | null;
}

/** The known point nearest to a position. */
export interface NearestPoint {
  /** Null until looked up in the place index, and for an airfield. */
  name: string | null;
  distance_m: number;
  /** Number of the place in the place index; null for an airfield. */
  place: number | null;
}

/** Points beyond say nothing about the ground here: the covariance has fallen to e⁻⁸. */
const REACH_km = 64;
const NEIGHBOURS = 16;
/** A known point's own elevation is the best answer this close to it. */
const KNOWN_WITHIN_km = 1;
/** Simple kriging of the points' residuals against the grid: 0.98·exp(−d/8 km), nugget 0.02 (our own fit). */
const SILL = 0.98;
const RANGE_km = 8;

/** Points file: number of points, number of places among them, elevations, index; four-byte numbers little-endian. */
const HEADER_bytes = 8;

/**
 * What elevations are estimated from, out of the two built files.
 * @param grid one byte a cell, {@link GRID_COLUMNS} × {@link GRID_ROWS}
 * @throws when the files are not of that form
 */
export function loadTerrain(grid: Uint8Array, points: Uint8Array): Terrain {
  if (grid.length !== GRID_COLUMNS * GRID_ROWS) {
    throw new Error(`The elevation grid has ${grid.length} cells; build the geography again.`);
  }
  const bytes = points.slice().buffer;
  const header = new DataView(bytes);
  const [count, places] = [header.getUint32(0, true), header.getUint32(4, true)];
  const elevations = new Int16Array(bytes, HEADER_bytes, count);
  const index = KDBush.from(bytes.slice(indexAt(count)));
  return { grid, index, elevations, places };
}

/** Bytes of a points file for {@link loadTerrain}. */
export function packPoints({ index, elevations, places }: Omit<Terrain, "grid">): Uint8Array {
  const data = new Uint8Array(index.data as ArrayBuffer);
  const bytes = new Uint8Array(indexAt(elevations.length) + data.length);
  const header = new DataView(bytes.buffer);
  header.setUint32(0, elevations.length, true);
  header.setUint32(4, places, true);
  new Int16Array(bytes.buffer, HEADER_bytes, elevations.length).set(elevations);
  bytes.set(data, indexAt(elevations.length));
  return bytes;
}

function indexAt(count: number): number {
  return HEADER_bytes + Math.ceil((2 * count) / 8) * 8;
}

/** Grid elevation at a point, m, bilinear between cell centres; wraps round the globe, stops at the poles. */
export function gridElevation(grid: Uint8Array, lat: number, lon: number): number {
  const column = ((lon + 180) / 360) * GRID_COLUMNS - 0.5;
  const row = Math.min(GRID_ROWS - 1, Math.max(0, ((90 - lat) / 180) * GRID_ROWS - 0.5));
  const [x, y] = [Math.floor(column), Math.floor(row)];
  const [fx, fy] = [column - x, row - y];
  const north = cell(grid, x, y) * (1 - fx) + cell(grid, x + 1, y) * fx;
  const south = cell(grid, x, y + 1) * (1 - fx) + cell(grid, x + 1, y + 1) * fx;
  return GRID_STEP_m * (north * (1 - fy) + south * fy);
}

function cell(grid: Uint8Array, x: number, y: number): number {
  const column = ((x % GRID_COLUMNS) + GRID_COLUMNS) % GRID_COLUMNS;
  const row = Math.min(GRID_ROWS - 1, Math.max(0, y));
  return grid[row * GRID_COLUMNS + column] as number;
}

/** Highest less lowest of the 3 × 3 grid cells about a point, m. */
export function relief(grid: Uint8Array, lat: number, lon: number): number {
  const x = Math.floor(((lon + 180) / 360) * GRID_COLUMNS);
  const y = Math.floor(((90 - lat) / 180) * GRID_ROWS);
  let [least, most] = [255, 0];
  for (const dy of [-1, 0, 1]) {
    for (const dx of [-1, 0, 1]) {
      const value = cell(grid, x + dx, y + dy);
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
  }
  return GRID_STEP_m * (most - least);
}

interface Neighbour {
  id: number;
  lat: number;
  lon: number;
  km: number;
}

/**
 * Elevation of any point: the grid plus simple kriging of the residuals of the nearest known points; within a
 * kilometre of one, that point's own elevation. Uncertainty by relief and by distance to the nearest point,
 * from leaving points out one at a time; see {@link uncertainty}.
 * @param leaveOut number of a point to leave out, for checking the estimate against it
 * @throws RangeError when the position is not on the globe
 */
export function elevationAt(
  lat: number,
  lon: number,
  terrain: Terrain,
  leaveOut = -1,
): PointElevation {
  if (!(Math.abs(lat) <= 90 && Math.abs(lon) <= 180)) {
    throw new RangeError(`lat and lon must lie within ±90 and ±180, not ${lat}, ${lon}.`);
  }
  const neighbours = neighboursOf(lat, lon, terrain, leaveOut);
  const nearest = neighbours[0];
  const grid_m = gridElevation(terrain.grid, lat, lon);
  const steepness = relief(terrain.grid, lat, lon);
  const known = nearest !== undefined && nearest.km < KNOWN_WITHIN_km;
  const elevation = known
    ? (terrain.elevations[nearest.id] as number)
    : grid_m + krigedResidual(neighbours, terrain);
  const { half_68_m, half_95_m, sd_m } = uncertainty(
    steepness,
    nearest?.km ?? Number.POSITIVE_INFINITY,
    known ? 0 : elevation - grid_m,
  );
  return {
    lat,
    lon,
    elevation_m: Math.round(elevation),
    sd_m,
    uncertainty_68_m: half_68_m,
    uncertainty_95_m: half_95_m,
    source: known ? "known point" : sourceOf(neighbours, grid_m, steepness),
    nearest: nearest ? nearestPoint(nearest, terrain) : null,
  };
}

function nearestPoint({ id, km }: Neighbour, { places }: Terrain): NearestPoint {
  return { name: null, distance_m: Math.round(km * 1000), place: id < places ? id : null };
}

function sourceOf(neighbours: Neighbour[], grid_m: number, steepness: number): TerrainSource {
  if (neighbours.length > 0) return "interpolated";
  return grid_m === 0 && steepness === 0 ? "sea" : "grid";
}

function neighboursOf(lat: number, lon: number, terrain: Terrain, leaveOut: number): Neighbour[] {
  const { index, elevations } = terrain;
  const keep = (id: number) => id !== leaveOut && elevations[id] !== UNKNOWN_m;
  const ids = around(index, lon, lat, NEIGHBOURS, REACH_km, keep);
  const positions = positionsOf(index);
  return ids.map((id) => {
    const at = positions.get(id);
    return { id, lon: at[0], lat: at[1], km: distance(lon, lat, at[0], at[1]) };
  });
}

/** The index keeps coordinates in its own order; this turns that round, once per index. */
const turned = new WeakMap<KDBush, Uint32Array>();

function positionsOf(index: KDBush): { get: (id: number) => [lon: number, lat: number] } {
  const { ids, coords } = index as unknown as { ids: Uint32Array; coords: Float32Array };
  let where = turned.get(index);
  if (!where) {
    where = new Uint32Array(ids.length);
    for (let i = 0; i < ids.length; i++) where[ids[i] as number] = i;
    turned.set(index, where);
  }
  const at = where;
  return {
    get: (id) => {
      const i = 2 * (at[id] as number);
      return [coords[i] as number, coords[i + 1] as number];
    },
  };
}

/** Simple kriging: weights solve C·w = c, by Cholesky; the residual's mean far from any point is zero. */
function krigedResidual(neighbours: Neighbour[], { grid, elevations }: Terrain): number {
  const n = neighbours.length;
  if (n === 0) return 0;
  const factor: number[][] = [];
  const solved: number[] = [];
  const covariance = (km: number) => SILL * Math.exp(-km / RANGE_km);
  // L·z = c and L·u = r together give wᵀr = zᵀu.
  const residual: number[] = [];
  neighbours.forEach((a, i) => {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const b = neighbours[j] as Neighbour;
      let value = i === j ? 1 : covariance(distance(a.lon, a.lat, b.lon, b.lat));
      for (let k = 0; k < j; k++) value -= (row[k] as number) * ((factor[j] ?? row)[k] as number);
      row.push(i === j ? Math.sqrt(value) : value / (factor[j]?.[j] as number));
    }
    factor.push(row);
    const diagonal = row[i] as number;
    const own = (elevations[a.id] as number) - gridElevation(grid, a.lat, a.lon);
    let [z, u] = [covariance(a.km), own];
    for (let k = 0; k < i; k++) {
      z -= (row[k] as number) * (solved[k] as number);
      u -= (row[k] as number) * (residual[k] as number);
    }
    solved.push(z / diagonal);
    residual.push(u / diagonal);
  });
  return solved.reduce((sum, z, i) => sum + z * (residual[i] as number), 0);
}
