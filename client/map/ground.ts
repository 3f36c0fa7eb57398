import { terrainHere } from "../base/terrain-here.ts";
import { estimatedTile } from "./estimated-ground.ts";
import { enlarge } from "./terrarium.ts";

/** Side of the tiles as the map takes them, px. */
export const TILE_px = 512;
/** Side of one tile of a source, px. */
const SIDE_px = 256;
/** The built-in elevation tiles, zooms 0–4. */
const BUILT_IN = "/geography/tiles/{z}/{x}/{y}.png";
const DEEPEST_BUILT_IN_ZOOM = 4;
/** From here on what lies between the grid's cells, 20 km wide, is seen: elevations are estimated as the answers are. */
const ESTIMATED_FROM_ZOOM = 7;
/** The estimate has no more to tell: known points lie kilometres apart. */
export const DEEPEST_ESTIMATED_ZOOM = 9;
/** Whoever looks at the map would rather see the built-in land than wait longer. */
const PATIENCE_ms = 6000;
/** A source that cannot be reached is left alone for so long. */
const REST_ms = 30_000;

let restsUntil = 0;

/**
 * A tile of elevations: the configured source's, else a built-in one.
 * @param template address of the configured source's tiles with {z}, {x}, {y}; null for the built-in ones
 * @param onFallback told when the configured source has not given a tile
 * @throws when the built-in tile is not to be had either
 */
export async function groundTile(
  template: string | null,
  [z, x, y]: readonly [number, number, number],
  onFallback: () => void,
  stop?: AbortSignal,
): Promise<ImageBitmap> {
  if (template && Date.now() >= restsUntil) {
    const patience = AbortSignal.timeout(PATIENCE_ms);
    try {
      return await imageAt(
        addressOf(template, z, x, y),
        stop ? AbortSignal.any([stop, patience]) : patience,
      );
    } catch (error) {
      stop?.throwIfAborted();
      // A tile missing or broken is this tile's matter; a source out of reach is every tile's.
      if (!(error instanceof BrokenTile)) restsUntil = Date.now() + REST_ms;
      onFallback();
    }
  } else if (template) onFallback();
  return builtInTile([z, x, y], stop);
}

/** A tile out of the built files: as built, drawn out, or from near as estimated. */
async function builtInTile(
  [z, x, y]: readonly [number, number, number],
  stop?: AbortSignal,
): Promise<ImageBitmap> {
  if (z >= ESTIMATED_FROM_ZOOM) {
    const terrain = await terrainHere().catch(() => null);
    stop?.throwIfAborted();
    if (terrain)
      return createImageBitmap(new ImageData(estimatedTile(terrain, [z, x, y], SIDE_px), SIDE_px));
  }
  const deeper = Math.max(0, z - DEEPEST_BUILT_IN_ZOOM);
  const times = 2 ** deeper;
  const parent = await imageAt(
    addressOf(BUILT_IN, z - deeper, Math.floor(x / times), Math.floor(y / times)),
    stop,
  );
  if (deeper === 0) return parent;
  const part = enlarge(pixelsOf(parent), times, x % times, y % times);
  return createImageBitmap(new ImageData(part, parent.width));
}

class BrokenTile extends Error {}

async function imageAt(address: string, stop?: AbortSignal): Promise<ImageBitmap> {
  const response = await fetch(address, stop ? { signal: stop } : {});
  if (!response.ok) throw new BrokenTile(`${address}: ${response.status}`);
  const blob = await response.blob();
  return createImageBitmap(blob, { colorSpaceConversion: "none" }).catch(() => {
    throw new BrokenTile(`${address} is no picture.`);
  });
}

function addressOf(template: string, z: number, x: number, y: number): string {
  return Object.entries({ z, x, y }).reduce(
    (address, [name, value]) => address.replaceAll(`{${name}}`, String(value)),
    template,
  );
}

/** The bytes of a picture. */
export function pixelsOf(image: ImageBitmap): ImageData {
  const canvas = new OffscreenCanvas(image.width, image.height);
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) throw new Error("This browser draws no canvas.");
  context.drawImage(image, 0, 0);
  return context.getImageData(0, 0, image.width, image.height);
}
