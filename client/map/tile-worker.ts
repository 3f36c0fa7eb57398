import { allCoasts, drawSea } from "./coasts.ts";
import type { Contour } from "./contour.ts";
import { type Corners, contourTile, cornersOf } from "./contour-tile.ts";
import { groundTile, TILE_px } from "./ground.ts";
import { NEAR_ZOOM } from "./near.ts";
import { coastsNear } from "./near-coasts.ts";

export type Tile = readonly [z: number, x: number, y: number];

/** A tile asked for, over a port of its own; whatever the page says there calls it off. */
export type Order =
  | { ground: Tile; template: string | null }
  | { contoured: Tile; template: string | null; contours: Contour[] }
  | { sea: Tile; colour: string };

/** The tile; that it is not to be had; or that the configured source has not given it all. */
export type Delivery = { tile: ImageBitmap | ArrayBuffer } | { failed: string } | { instead: true };

/** What this file needs of a worker: the page's own types leave no room for the library of workers. */
declare const self: { onmessage: (event: MessageEvent<Order>) => void };

self.onmessage = ({ data: order, ports: [port] }) => {
  const send = (delivery: Delivery, transfer: Transferable[] = []) =>
    port?.postMessage(delivery, transfer);
  const stop = new AbortController();
  if (port) port.onmessage = () => stop.abort();
  drawn(order, () => send({ instead: true }), stop.signal).then(
    (tile) => send({ tile }, [tile]),
    (error) => send({ failed: String(error) }),
  );
};

async function drawn(order: Order, onFallback: () => void, stop: AbortSignal) {
  if ("sea" in order) return seaTile(order.sea, order.colour);
  if ("ground" in order) {
    const { canvas, context } = await ground(order.ground, order.template, onFallback, stop);
    keepCorners(order.ground, order.template, context);
    return canvas.transferToImageBitmap();
  }
  const { contoured, template, contours } = order;
  if (contours.length === 0) return new ArrayBuffer();
  let corners = kept.get(keyOf(contoured, template));
  if (!corners) {
    const { context } = await ground(contoured, template, onFallback, stop);
    corners = keepCorners(contoured, template, context);
  }
  stop.throwIfAborted();
  return contourTile(corners, contours).slice().buffer;
}

/** What contours are made from, of as many tiles as a screen shows: another night has others along the same land. */
const kept = new Map<string, Corners>();
const KEPT = 64;

const keyOf = (tile: Tile, template: string | null) => `${tile.join("/")} ${template}`;

function keepCorners(
  tile: Tile,
  template: string | null,
  context: OffscreenCanvasRenderingContext2D,
): Corners {
  const corners = cornersOf(context.getImageData(0, 0, TILE_px, TILE_px));
  kept.set(keyOf(tile, template), corners);
  if (kept.size > KEPT) kept.delete(kept.keys().next().value as string);
  return corners;
}

/** Four tiles of elevations as one: what a map has to do goes by the tile. */
async function ground(
  [z, x, y]: Tile,
  template: string | null,
  onFallback: () => void,
  stop: AbortSignal,
) {
  const places = [0, 1, 2, 3].map((i) => [i % 2, Math.floor(i / 2)] as const);
  const quarters = await Promise.all(
    places.map(([right, down]) =>
      groundTile(template, [z + 1, 2 * x + right, 2 * y + down], onFallback, stop),
    ),
  );
  const sheet = blank();
  const { context } = sheet;
  // The bytes of an elevation cannot be drawn out.
  context.imageSmoothingEnabled = false;
  const half = TILE_px / 2;
  places.forEach(([right, down], i) => {
    context.drawImage(quarters[i] as ImageBitmap, half * right, half * down, half, half);
  });
  return sheet;
}

async function seaTile([z, x, y]: Tile, colour: string): Promise<ImageBitmap> {
  const all = await (z < NEAR_ZOOM ? allCoasts() : coastsNear(z, x, y).catch(allCoasts));
  const { canvas, context } = blank();
  drawSea(context, all, { colour, tiles: 2 ** z, x, y, side_px: TILE_px });
  return canvas.transferToImageBitmap();
}

function blank() {
  const canvas = new OffscreenCanvas(TILE_px, TILE_px);
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) throw new Error("This browser draws no canvas.");
  return { canvas, context };
}
