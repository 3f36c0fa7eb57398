import { around, distance } from "geokdbush";
import KDBush from "kdbush";
import { uncertainty } from "./uncertainty.ts";

/** What elevations are estimated from: a coarse global grid and points of known elevation. */
export interface Terrain {
  /** Elevation ÷ 25 m, one byte a cell, rows from north to south, columns from 180° W to the east. */
  grid: Uint8Array;
  index: KDBush;
  /** Elevation of each point of the index, m. */
  elevations: Int16Array;
}

export const GRID_COLUMNS = 2048;
export const GRID_ROWS = 1024;
export const GRID_STEP_m = 25;

export type TerrainSource = "known point" | "interpolated" | "grid" | "sea";

/** Elevation of a point, with how far it may be off. */
export interface PointElevation {
  lat: number;
  lon: number;
  elevation_m: number;
  /** Used as a standard deviation where bands are widened: the half-width of the 68 % interval. */
  sd_m: number;
  uncertainty_68_m: number;
  uncertainty_95_m: number;
  source: TerrainSource;
  nearest: { name: string | null; distance_m: number } | null;
}

/** Points beyond say nothing about the ground here: the covariance has fallen to e⁻⁸. */
const REACH_km = 64;
const NEIGHBOURS = 16;
/** A known point's own elevation is the best answer this close to it. */
const KNOWN_WITHIN_km = 1;
/** Simple kriging of the points' residuals against the grid: 0.98·exp(−d/8 km), nugget 0.02 (our own fit). */
const SILL = 0.98;
const RANGE_km = 8;

/** Layout of the points file: count, elevations, index. */
export function loadTerrain(grid: Uint8Array, points: Uint8Array): Terrain {
  const bytes = points.slice().buffer;
  const count = new DataView(bytes).getUint32(0, true);
  const elevations = new Int16Array(bytes, 4, count);
  const index = KDBush.from(bytes.slice(4 + pad8(2 * count) + 4));
  return { grid, index, elevations };
}

/** Bytes of a points file for {@link loadTerrain}. */
export function packPoints(index: KDBush, elevations: Int16Array): Uint8Array {
  const data = new Uint8Array(index.data as ArrayBuffer);
  const bytes = new Uint8Array(4 + pad8(2 * elevations.length) + 4 + data.length);
  new DataView(bytes.buffer).setUint32(0, elevations.length, true);
  new Int16Array(bytes.buffer, 4, elevations.length).set(elevations);
  bytes.set(data, 4 + pad8(2 * elevations.length) + 4);
  return bytes;
}

function pad8(length: number): number {
  return Math.ceil(length / 8) * 8;
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
 * from leaving points out one at a time.
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
  const [half_68, half_95] = uncertainty(steepness, nearest?.km ?? Number.POSITIVE_INFINITY);
  return {
    lat,
    lon,
    elevation_m: Math.round(elevation),
    sd_m: half_68,
    uncertainty_68_m: half_68,
    uncertainty_95_m: half_95,
    source: known ? "known point" : sourceOf(neighbours, grid_m, steepness),
    nearest: nearest ? { name: null, distance_m: Math.round(nearest.km * 1000) } : null,
  };
}

function sourceOf(neighbours: Neighbour[], grid_m: number, steepness: number): TerrainSource {
  if (neighbours.length > 0) return "interpolated";
  return grid_m === 0 && steepness === 0 ? "sea" : "grid";
}

function neighboursOf(lat: number, lon: number, terrain: Terrain, leaveOut: number): Neighbour[] {
  const { index } = terrain;
  const keep = leaveOut < 0 ? undefined : (id: number) => id !== leaveOut;
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
