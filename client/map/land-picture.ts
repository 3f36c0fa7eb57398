import { allCoasts, drawSea, mercator } from "./coasts.ts";
import { groundTile, pixelsOf } from "./ground.ts";
import { channels, type Palette } from "./palette.ts";
import { colourOfElevation, isStripe, type Look } from "./relief.ts";
import { elevationIn } from "./terrarium.ts";

const ZOOM = 1;
const TILE_px = 256;
const TILES = 2 ** ZOOM;
/** The picture shows the world from here to here, in Web Mercator 0–1 from the north: what lies beyond is ice. */
export const NORTH = mercator(80, 0)[1];
export const SOUTH = mercator(-58, 0)[1];
export const WIDTH_px = TILES * TILE_px;
export const HEIGHT_px = Math.round((SOUTH - NORTH) * WIDTH_px);
const STEP_m = 10;

let land: Promise<ImageData[]> | undefined;

/** Elevations of the whole world, fetched once. */
function world(): Promise<ImageData[]> {
  const numbers = Array.from({ length: TILES ** 2 }, (_, i) => i);
  land ??= Promise.all(
    numbers.map(async (i) =>
      pixelsOf(await groundTile(null, [ZOOM, i % TILES, Math.floor(i / TILES)], () => {})),
    ),
  ).catch((error) => {
    land = undefined;
    throw error;
  });
  return land;
}

/**
 * The tinted land drawn once on a plain canvas, for browsers that draw no map: colours and hatching as on the map.
 * @throws when elevations or coasts are not to be had
 */
export async function drawLand(
  canvas: HTMLCanvasElement,
  look: Look,
  palette: Palette,
): Promise<void> {
  const [tiles, coasts] = await Promise.all([world(), allCoasts()]);
  const colours = coloursByStep(look);
  const stripe = pixelOf(palette.stripe);
  const whole = new OffscreenCanvas(WIDTH_px, WIDTH_px);
  const context = whole.getContext("2d");
  const shown = canvas.getContext("2d");
  if (!context || !shown) throw new Error("This browser draws no canvas.");
  tiles.forEach((tile, i) => {
    const drawn = tinted(tile, look, colours, stripe);
    context.putImageData(drawn, (i % TILES) * TILE_px, Math.floor(i / TILES) * TILE_px);
  });
  const sea = new OffscreenCanvas(WIDTH_px, WIDTH_px);
  const seaContext = sea.getContext("2d");
  if (!seaContext) throw new Error("This browser draws no canvas.");
  drawSea(seaContext, coasts, { colour: palette.sea, tiles: 1, x: 0, y: 0, side_px: WIDTH_px });
  context.drawImage(sea, 0, 0);
  shown.drawImage(whole, 0, -NORTH * WIDTH_px);
}

function tinted(
  { data, width, height }: ImageData,
  { stops, tuned }: Look,
  colours: Uint32Array,
  stripe: number,
): ImageData {
  const drawn = new ImageData(width, height);
  const pixels = new Uint32Array(drawn.data.buffer);
  const [lowest, last] = [stops[0] as number, colours.length - 1];
  const [from, to] = tuned ?? [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < pixels.length; i++) {
    const elevation_m = elevationIn(data, 4 * i);
    const step = Math.round((elevation_m - lowest) / STEP_m);
    const striped =
      (elevation_m < from || elevation_m > to) && isStripe(i % width, Math.floor(i / width));
    pixels[i] = striped ? stripe : (colours[Math.min(last, Math.max(0, step))] as number);
  }
  return drawn;
}

/** A colour each few metres, from the lowest stop to the highest, as pixels. */
function coloursByStep({ stops }: Look): Uint32Array {
  const [first, last] = [stops[0] as number, stops.at(-2) as number];
  return Uint32Array.from({ length: Math.round((last - first) / STEP_m) + 1 }, (_, i) =>
    pixelOf(colourOfElevation(stops, first + i * STEP_m)),
  );
}

/** An opaque pixel in this machine's own order of bytes. */
function pixelOf(colour: string): number {
  return new Uint32Array(new Uint8Array([...channels(colour), 255]).buffer)[0] as number;
}
