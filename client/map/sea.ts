import type { MultiPolygon, Position } from "geojson";
import { addProtocol } from "maplibre-gl";

/** Name of the tiles that cover what is not land. */
export const SEA = "sea";
export const SEA_TILES = `${SEA}://{z}/{x}/{y}`;
export const SEA_TILE_px = 512;

/** A ring of coast in Web Mercator, 0–1 in both directions, with its extent. */
interface Coast {
  points: Float32Array;
  west: number;
  east: number;
  north: number;
  south: number;
}

let coasts: Promise<Coast[]> | undefined;

/**
 * Draws the sea as tiles: a sheet of sea colour with the land cut out. Thousands of coasts as holes of one
 * polygon are more than a triangulation takes; a canvas cuts them all, at every zoom.
 */
export function registerSea(colour: string): void {
  addProtocol(SEA, async ({ url }) => {
    const [z, x, y] = (/(\d+)\/(\d+)\/(\d+)$/.exec(url) ?? []).slice(1).map(Number) as [
      number,
      number,
      number,
    ];
    coasts ??= loadCoasts();
    const canvas = new OffscreenCanvas(SEA_TILE_px, SEA_TILE_px);
    const context = canvas.getContext("2d");
    if (!context) throw new Error("This browser draws no canvas.");
    context.fillStyle = colour;
    context.fillRect(0, 0, SEA_TILE_px, SEA_TILE_px);
    context.globalCompositeOperation = "destination-out";
    context.beginPath();
    for (const coast of await coasts) trace(context, coast, 2 ** z, x, y);
    context.fill("evenodd");
    return { data: await createImageBitmap(canvas) };
  });
}

function trace(
  context: OffscreenCanvasRenderingContext2D,
  coast: Coast,
  tiles: number,
  x: number,
  y: number,
): void {
  const outside =
    coast.east * tiles < x ||
    coast.west * tiles > x + 1 ||
    coast.south * tiles < y ||
    coast.north * tiles > y + 1;
  if (outside) return;
  const { points } = coast;
  for (let i = 0; i < points.length; i += 2) {
    const px = ((points[i] as number) * tiles - x) * SEA_TILE_px;
    const py = ((points[i + 1] as number) * tiles - y) * SEA_TILE_px;
    if (i === 0) context.moveTo(px, py);
    else context.lineTo(px, py);
  }
  context.closePath();
}

async function loadCoasts(): Promise<Coast[]> {
  const response = await fetch("/geography/land.json");
  const land = (await response.json()) as { features: { geometry: MultiPolygon }[] };
  return land.features.flatMap(({ geometry }) => geometry.coordinates.flat().map(coastOf));
}

function coastOf(ring: Position[]): Coast {
  const points = Float32Array.from(
    ring.flatMap(([lon, lat]) => mercator(lon as number, lat as number)),
  );
  const xs = points.filter((_, i) => i % 2 === 0);
  const ys = points.filter((_, i) => i % 2 === 1);
  return {
    points,
    west: Math.min(...xs),
    east: Math.max(...xs),
    north: Math.min(...ys),
    south: Math.max(...ys),
  };
}

const MERCATOR_LIMIT = 85.06;

function mercator(lon: number, lat: number): [number, number] {
  const phi = (Math.min(MERCATOR_LIMIT, Math.max(-MERCATOR_LIMIT, lat)) * Math.PI) / 180;
  return [(lon + 180) / 360, 0.5 - Math.asinh(Math.tan(phi)) / (2 * Math.PI)];
}
