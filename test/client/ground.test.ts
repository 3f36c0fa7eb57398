import { readFile } from "node:fs/promises";
import { expect, test } from "vitest";
import { basemapOf } from "../../client/map/basemap-style.ts";
import { unMercator } from "../../client/map/coasts.ts";
import { estimatedTile } from "../../client/map/estimated-ground.ts";
import { elevationIn, enlarge } from "../../client/map/terrarium.ts";
import { elevationAt, gridElevation, loadTerrain } from "../../model/geography/terrain.ts";
import { ensureGeography } from "../../server/geography/build.ts";

/** A tile that climbs evenly from the left, 4 pixels wide: across the step of its first byte at every pixel. */
function slope() {
  const data = new Uint8ClampedArray(4 * 16);
  for (let i = 0; i < 16; i++) {
    const value = 32_768 + 100 + 300 * (i % 4);
    data.set([Math.floor(value / 256), value % 256, 0, 255], 4 * i);
  }
  return { data, width: 4 };
}

test("a part of a tile is drawn out by its elevations, not by the bytes that carry them", () => {
  const part = enlarge(slope(), 2, 1, 0);
  const row = [0, 1, 2, 3].map((i) => elevationIn(part, 4 * i));
  expect(row).toEqual([625, 775, 925, 1000]);
  const left = enlarge(slope(), 2, 0, 1);
  expect([0, 1, 2, 3].map((i) => elevationIn(left, 4 * i))).toEqual([100, 175, 325, 475]);
});

test("from near the land lies as high as the atlas answers for any point of it, within what lies between two of them", async () => {
  await ensureGeography();
  const read = async (name: string) => new Uint8Array(await readFile(`data/geography/${name}`));
  const terrain = loadTerrain(await read("grid.bin"), await read("points.bin"));
  // The Inn valley and the mountains about it: the grid alone is hundreds of metres off.
  const [z, x, y] = [9, 272, 179] as const;
  const tile = estimatedTile(terrain, [z, x, y], 256);
  const off = { drawn: [] as number[], grid: [] as number[] };
  for (let row = 5; row < 256; row += 11)
    for (let column = 3; column < 256; column += 11) {
      const [lat, lon] = unMercator(
        (x + (column + 0.5) / 256) / 2 ** z,
        (y + (row + 0.5) / 256) / 2 ** z,
      );
      const { elevation_m } = elevationAt(lat, lon, terrain);
      off.drawn.push(Math.abs(elevationIn(tile, 4 * (row * 256 + column)) - elevation_m));
      off.grid.push(Math.abs(gridElevation(terrain.grid, lat, lon) - elevation_m));
    }
  const median = (values: number[]) => values.sort((a, b) => a - b)[values.length >> 1];
  expect(median(off.grid)).toBeGreaterThan(100);
  expect(median(off.drawn)).toBeLessThan(10);
});

test("a basemap's areas become a wash, its background is left out, its names and addresses are made whole", () => {
  const basemap = basemapOf(
    {
      version: 8,
      sources: { roads: { type: "raster", tiles: ["tiles/{z}/{x}/{y}.png"] } },
      sprite: "/sprite",
      layers: [
        { id: "paper", type: "background" },
        { id: "picture", type: "raster", source: "roads", paint: { "raster-contrast": 0.5 } },
        { id: "names", type: "symbol", source: "roads" },
      ],
    },
    "https://maps.example.org/styles/plain.json",
  );
  expect(basemap.sources).toEqual([
    [
      "basemap:roads",
      { type: "raster", tiles: ["https://maps.example.org/styles/tiles/{z}/{x}/{y}.png"] },
    ],
  ]);
  expect(basemap.sprite).toBe("https://maps.example.org/sprite");
  expect(basemap.layers).toEqual([
    {
      id: "basemap:picture",
      type: "raster",
      source: "basemap:roads",
      paint: { "raster-contrast": 0.5, "raster-opacity": 0.3 },
    },
    { id: "basemap:names", type: "symbol", source: "basemap:roads" },
  ]);
  expect(() => basemapOf({} as never, "https://maps.example.org/none")).toThrow("is no map style");
});
