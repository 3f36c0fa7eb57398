import type { MultiPolygon, Position } from "geojson";

/** A ring of coast in Web Mercator, 0–1 in both directions, with its extent. */
export interface Coast {
  points: Float32Array;
  west: number;
  east: number;
  north: number;
  south: number;
}

export type Canvas2D = OffscreenCanvasRenderingContext2D | CanvasRenderingContext2D;

let coasts: Promise<Coast[]> | undefined;

/** The coasts of all land, fetched once; a failed fetch is tried again the next time. */
export function allCoasts(): Promise<Coast[]> {
  coasts ??= loadCoasts().catch((error) => {
    coasts = undefined;
    throw error;
  });
  return coasts;
}

/**
 * Covers what is not land: a sheet of sea colour with the land cut out. Thousands of coasts as holes of one polygon
 * are more than a triangulation takes; a canvas cuts them all, at every zoom.
 * @param tiles how many tiles the world is wide; x, y: the tile's number; side_px: the tile's width
 */
export function drawSea(
  context: Canvas2D,
  all: readonly Coast[],
  { colour, tiles, x, y, side_px }: SeaTile,
): void {
  context.fillStyle = colour;
  context.fillRect(0, 0, side_px, side_px);
  context.globalCompositeOperation = "destination-out";
  context.beginPath();
  for (const coast of all) {
    const outside =
      coast.east * tiles < x ||
      coast.west * tiles > x + 1 ||
      coast.south * tiles < y ||
      coast.north * tiles > y + 1;
    if (!outside) trace(context, coast.points, (v, from) => (v * tiles - from) * side_px, x, y);
  }
  context.fill("evenodd");
  context.globalCompositeOperation = "source-over";
}

export interface SeaTile {
  colour: string;
  tiles: number;
  x: number;
  y: number;
  side_px: number;
}

function trace(
  context: Canvas2D,
  points: Float32Array,
  px: (value: number, from: number) => number,
  x: number,
  y: number,
): void {
  for (let i = 0; i < points.length; i += 2) {
    const [across, down] = [px(points[i] as number, x), px(points[i + 1] as number, y)];
    if (i === 0) context.moveTo(across, down);
    else context.lineTo(across, down);
  }
}

async function loadCoasts(): Promise<Coast[]> {
  const response = await fetch("/geography/land.json");
  if (!response.ok) throw new Error("The coasts are not there.");
  const land = (await response.json()) as { features: { geometry: MultiPolygon }[] };
  return land.features.flatMap(({ geometry }) =>
    geometry.coordinates.flat().map((ring) => coastOf(projected(ring))),
  );
}

function projected(ring: Position[]): Float32Array {
  const points = new Float32Array(2 * ring.length);
  for (const [i, [lon, lat]] of ring.entries())
    points.set(mercator(lat as number, lon as number), 2 * i);
  return points;
}

/** A ring of coast, from its points in Web Mercator, x and y in turn. */
export function coastOf(points: Float32Array): Coast {
  const [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const coast = { points, west: least, east: most, north: least, south: most };
  for (let i = 0; i < points.length; i += 2) {
    const [x, y] = [points[i] as number, points[i + 1] as number];
    coast.west = Math.min(coast.west, x);
    coast.east = Math.max(coast.east, x);
    coast.north = Math.min(coast.north, y);
    coast.south = Math.max(coast.south, y);
  }
  return coast;
}

const MERCATOR_LIMIT = 85.06;

/** A position in Web Mercator, 0–1 from the north-west corner of the world. */
export function mercator(lat: number, lon: number): [x: number, y: number] {
  const phi = (Math.min(MERCATOR_LIMIT, Math.max(-MERCATOR_LIMIT, lat)) * Math.PI) / 180;
  return [(lon + 180) / 360, 0.5 - Math.asinh(Math.tan(phi)) / (2 * Math.PI)];
}

/** The position at a point of Web Mercator. */
export function unMercator(x: number, y: number): [lat: number, lon: number] {
  const lat = (Math.atan(Math.sinh(2 * Math.PI * (0.5 - y))) * 180) / Math.PI;
  return [lat, x * 360 - 180];
}
