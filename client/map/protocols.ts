import { addProtocol } from "maplibre-gl";
import { allCoasts, drawSea } from "./coasts.ts";
import { groundTile } from "./ground.ts";

/** Names of the tiles that are drawn here: elevations with what stands in for them, and what is not land. */
const GROUND = "ground";
const SEA = "sea";
export const SEA_TILE_px = 512;

let configured: string | null = null;
let tell: () => void = () => {};

/** Address of elevation tiles. The map last made is the one that hears of a source that gives none. */
export function groundTiles(template: string | null, onFallback: () => void): string {
  configured = template;
  tell = onFallback;
  return `${GROUND}://{z}/{x}/{y}`;
}

/** Address of tiles of the sea in a colour. */
export function seaTiles(colour: string): string {
  return `${SEA}://${colour.replace("#", "")}/{z}/{x}/{y}`;
}

type Tile = [z: number, x: number, y: number];

function tileIn(url: string): Tile {
  return (/(\d+)\/(\d+)\/(\d+)$/.exec(url) ?? []).slice(1).map(Number) as Tile;
}

export function registerProtocols(): void {
  addProtocol(GROUND, async ({ url }, stop) => ({
    data: await groundTile(configured, tileIn(url), tell, stop.signal),
  }));
  addProtocol(SEA, async ({ url }) => {
    const [z, x, y] = tileIn(url);
    const colour = `#${url.slice(`${SEA}://`.length).split("/")[0]}`;
    const all = await allCoasts();
    const canvas = new OffscreenCanvas(SEA_TILE_px, SEA_TILE_px);
    const context = canvas.getContext("2d");
    if (!context) throw new Error("This browser draws no canvas.");
    drawSea(context, all, { colour, tiles: 2 ** z, x, y, side_px: SEA_TILE_px });
    return { data: await createImageBitmap(canvas) };
  });
}
