import { addProtocol } from "maplibre-gl";

/** Name of the tiles that hatch what lies outside the tuned elevations. */
export const HATCH = "hatch";
const TERRARIUM_OFFSET = 32_768;
const STRIPE_px = 8;

/** Elevations between which nothing is hatched, m; null hatches everything. */
export type Tuned = [number, number] | null;

let tuned: Tuned = null;

/** Address of hatch tiles for these elevations: another range is another address, so the map asks again. */
export function hatchTiles(range: Tuned, elevationTiles: string): string {
  tuned = range;
  const key = range ? range.map(Math.round).join("_") : "all";
  return `${HATCH}://${key}/{z}/{x}/{y}?${encodeURIComponent(elevationTiles)}`;
}

/** Draws hatching from elevation tiles: stripes where the elevation lies outside the tuned range. */
export function registerHatch(): void {
  addProtocol(HATCH, async ({ url }, stop) => {
    const [, z, x, y, template] = /^hatch:\/\/[^/]*\/(\d+)\/(\d+)\/(\d+)\?(.*)$/.exec(url) ?? [];
    const source = decodeURIComponent(template ?? "")
      .replace("{z}", z ?? "")
      .replace("{x}", x ?? "")
      .replace("{y}", y ?? "");
    const response = await fetch(source, { signal: stop.signal });
    const image = await createImageBitmap(await response.blob());
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = canvas.getContext("2d", { willReadFrequently: true });
    if (!context) return { data: image };
    context.drawImage(image, 0, 0);
    const pixels = context.getImageData(0, 0, image.width, image.height);
    hatch(pixels, tuned);
    context.putImageData(pixels, 0, 0);
    return { data: await createImageBitmap(canvas) };
  });
}

/** Replaces terrarium elevations by stripes outside the tuned range and by nothing inside. */
export function hatch({ data, width }: Pick<ImageData, "data" | "width">, range: Tuned): void {
  for (let i = 0; i < data.length; i += 4) {
    const elevation_m =
      (data[i] as number) * 256 +
      (data[i + 1] as number) +
      (data[i + 2] as number) / 256 -
      TERRARIUM_OFFSET;
    const pixel = i / 4;
    const stripe = ((pixel % width) + Math.floor(pixel / width)) % STRIPE_px < 2;
    const outside = !range || elevation_m < range[0] || elevation_m > range[1];
    data.set([40, 32, 20, outside && stripe ? 150 : 0], i);
  }
}
