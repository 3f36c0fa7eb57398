import { addProtocol } from "maplibre-gl";
import type { Contour, Contours } from "./contour.ts";
import type { Delivery, Order, Tile } from "./tile-worker.ts";

/** Names of the tiles that are drawn here: elevations with what stands in for them, contours over them, and what is not land. */
const GROUND = "ground";
const CONTOURS = "contours";
const SEA = "sea";
/** From this zoom on all contours are drawn. */
const ALL_CONTOURS_FROM_ZOOM = 4;

let configured: string | null = null;
let tell: () => void = () => {};

/** Address of elevation tiles. The map last made is the one that hears of a source that gives none. */
export function groundTiles(template: string | null, onFallback: () => void): string {
  configured = template;
  tell = onFallback;
  return `${GROUND}://{z}/{x}/{y}`;
}

/** Address of tiles of contours: it holds them all, so that other ones are other tiles. */
export function contourTiles({ far, near }: Contours): string {
  const listed = (contours: readonly Contour[]) =>
    contours.map(({ pump_Hz, elevation_m }) => `${pump_Hz}@${elevation_m.toFixed(1)}`).join();
  return `${CONTOURS}://${listed(far)};${listed(near)}/{z}/{x}/{y}`;
}

/** The contours in a tile's address, as many as its zoom shows. */
function contoursIn(url: string, zoom: number): Contour[] {
  const [far = "", near = ""] = url.slice(`${CONTOURS}://`.length).split("/", 1).join().split(";");
  return (zoom < ALL_CONTOURS_FROM_ZOOM ? far : near)
    .split(",")
    .filter(Boolean)
    .map((pair) => {
      const [pump_Hz, elevation_m] = pair.split("@").map(Number) as [number, number];
      return { pump_Hz, elevation_m };
    });
}

/** Address of tiles of the sea in a colour. */
export function seaTiles(colour: string): string {
  return `${SEA}://${colour.replace("#", "")}/{z}/{x}/{y}`;
}

function tileIn(url: string): Tile {
  const [z, x, y] = (/(\d+)\/(\d+)\/(\d+)$/.exec(url) ?? []).slice(1).map(Number);
  return [z, x, y] as Tile;
}

/** The tiles are drawn by workers: no drawing of the map waits for them, and the sea not for the elevations. */
export function registerProtocols(): void {
  const [ground, sea] = [openWorker(), openWorker()];
  const order = (worker: Worker, wanted: Order, { signal }: AbortController) =>
    new Promise<{ data: ImageBitmap | ArrayBuffer }>((deliver, fail) => {
      const { port1: here, port2: there } = new MessageChannel();
      here.onmessage = ({ data: delivery }: MessageEvent<Delivery>) => {
        if ("instead" in delivery) return tell();
        here.close();
        if ("tile" in delivery) deliver({ data: delivery.tile });
        else fail(new Error(delivery.failed));
      };
      signal.addEventListener("abort", () => {
        here.postMessage(null);
        fail(signal.reason);
      });
      worker.postMessage(wanted, [there]);
    });
  addProtocol(GROUND, ({ url }, stop) =>
    order(ground, { ground: tileIn(url), template: configured }, stop),
  );
  addProtocol(CONTOURS, ({ url }, stop) => {
    const tile = tileIn(url);
    const contours = contoursIn(url, tile[0]);
    return order(ground, { contoured: tile, template: configured, contours }, stop);
  });
  addProtocol(SEA, ({ url }, stop) => {
    const colour = `#${url.slice(`${SEA}://`.length).split("/")[0]}`;
    return order(sea, { sea: tileIn(url), colour }, stop);
  });
}

function openWorker(): Worker {
  return new Worker(new URL("./tile-worker.ts", import.meta.url), { type: "module" });
}
