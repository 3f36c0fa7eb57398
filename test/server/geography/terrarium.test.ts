import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { encode } from "fast-png";
import { beforeAll, expect, test } from "vitest";
import { ensureGeography } from "../../../server/geography/build.ts";
import { openGeography } from "../../../server/geography/geography.ts";
import { readFrom } from "../../../server/geography/read-files.ts";
import { terrariumElevation } from "../../../server/geography/terrarium.ts";

const TEMPLATE = "https://tiles.invalid/{z}/{x}/{y}.png";

/** A tile of one elevation, but for one pixel. */
function tile(elevation_m: number, pixel?: { column: number; row: number; elevation_m: number }) {
  const data = new Uint8Array(256 * 256 * 3);
  for (let i = 0; i < 256 * 256; i++) {
    const here = pixel && i === pixel.row * 256 + pixel.column ? pixel.elevation_m : elevation_m;
    const value = here + 32_768;
    data.set([Math.floor(value / 256), Math.floor(value) % 256, (value % 1) * 256], 3 * i);
  }
  return encode({ width: 256, height: 256, data, channels: 3, depth: 8 });
}

const answer = (body: Uint8Array, status = 200) => new Response(Buffer.from(body), { status });

test("asks for the tile that holds the position, and reads its pixel", async () => {
  // 1,280.5 m at pixel (128, 64) of tile 12/2048/2047: half a tile east of 0° and a quarter below the tile's top.
  const asked: string[] = [];
  const fetch = async (url: string) => {
    asked.push(url);
    return answer(tile(100, { column: 128, row: 64, elevation_m: 1280.5 }));
  };
  const degrees = 360 / 2 ** 12;
  // Near the equator a tile is as high as it is wide; the pixel's centre lies 64.5 of 256 below the top.
  const at = terrariumElevation(
    TEMPLATE,
    degrees * (1 - 64.5 / 256),
    degrees * (128.5 / 256),
    fetch,
  );
  expect(await at).toBeCloseTo(1280.5, 6);
  expect(asked).toEqual(["https://tiles.invalid/12/2048/2047.png"]);
});

test("the antimeridian and the poles", async () => {
  const asked: string[] = [];
  const fetch = async (url: string) => {
    asked.push(url.replace("https://tiles.invalid/", ""));
    return answer(tile(0));
  };
  expect(await terrariumElevation(TEMPLATE, 0.01, 180, fetch)).toBe(0);
  expect(await terrariumElevation(TEMPLATE, 85.05, -180, fetch)).toBe(0);
  expect(await terrariumElevation(TEMPLATE, 89, 0, fetch)).toBeNull();
  expect(asked).toEqual(["12/0/2047.png", "12/0/0.png"]);
});

test.each([
  ["an error", async () => answer(tile(5), 503)],
  ["no picture", async () => answer(new TextEncoder().encode("<html>"))],
  ["an elevation that the earth does not have", async () => answer(tile(20_000))],
  ["no network", () => Promise.reject(new TypeError("fetch failed"))],
])("%s: no elevation", async (_, fetch) => {
  expect(await terrariumElevation(TEMPLATE, 1, 1, fetch)).toBeNull();
});

test("a source that never answers is not waited for", async () => {
  const silent = createServer(() => {}).listen(0, "127.0.0.1");
  await new Promise((resolve) => silent.once("listening", resolve));
  const { port } = silent.address() as AddressInfo;
  const template = `http://127.0.0.1:${port}/{z}/{x}/{y}.png`;
  expect(await terrariumElevation(template, 1, 1, fetch, 100)).toBeNull();
  silent.closeAllConnections();
  silent.close();
});

beforeAll(() => ensureGeography("data/geography"));

test("tiles come before the built-in estimate, which answers where they fail", async () => {
  const read = readFrom("data/geography");
  const good = openGeography(read, { template: TEMPLATE, fetch: async () => answer(tile(3210)) });
  expect(await good.elevation(39.25, -106.29)).toMatchObject({
    elevation_m: 3210,
    source: "tiles",
    uncertainty_95_m: 50,
    nearest: { name: "Leadville" },
  });
  const bad = openGeography(read, { template: TEMPLATE, fetch: async () => answer(tile(0), 404) });
  expect(await bad.elevation(39.25, -106.29)).toMatchObject({
    elevation_m: 3097,
    source: "known point",
  });
});
