import { VectorTile } from "@mapbox/vector-tile";
import { PbfReader } from "pbf";
import { expect, test } from "vitest";
import { FIRST_QUESTION } from "../../client/base/question.ts";
import { contourTile, cornersOf } from "../../client/map/contour-tile.ts";
import { contoursOf } from "../../client/map/contours.ts";
import { write } from "../../client/map/terrarium.ts";
import { type Asked, tunedElevations } from "../../client/map/tint.ts";
import { startTune } from "../../model/start.ts";
import { EMPTY_ATLAS, inventedFit } from "../model/invented-fit.ts";

const SIDE_px = 256;

/** A tile of land as high as a function of its pixels' middles says, m. */
function land(elevationAt: (x: number, y: number) => number) {
  const data = new Uint8ClampedArray(4 * SIDE_px ** 2);
  for (let y = 0; y < SIDE_px; y++)
    for (let x = 0; x < SIDE_px; x++)
      write(data, 4 * (y * SIDE_px + x), elevationAt(x + 0.5, y + 0.5));
  return { data, width: SIDE_px };
}

/** The lines of a tile by their rates, in pixels of the land. */
function linesOf(tile: Uint8Array) {
  const layer = new VectorTile(new PbfReader(tile)).layers.contours;
  if (!layer) throw new Error("The tile has no contours.");
  return Array.from({ length: layer.length }, (_, i) => {
    const feature = layer.feature(i);
    const lines = feature
      .loadGeometry()
      .map((line) =>
        line.map(
          ({ x, y }) => [x, y].map((v) => (v / feature.extent) * SIDE_px) as [number, number],
        ),
      );
    return { pump_Hz: Number(feature.properties.pump_Hz), lines };
  });
}

test("a cone's contours are circles of their radius, each in one piece", () => {
  const [x0, y0] = [120, 130];
  const cone = land((x, y) => 3000 - 20 * Math.hypot(x - x0, y - y0));
  const wanted = [
    { pump_Hz: 1.05, elevation_m: 2000 },
    { pump_Hz: 1.1, elevation_m: 1400 },
  ];
  const found = linesOf(contourTile(cornersOf(cone), wanted));
  expect(found.map(({ pump_Hz }) => pump_Hz)).toEqual([1.05, 1.1]);
  found.forEach(({ lines }, i) => {
    const radius = (3000 - (wanted[i]?.elevation_m as number)) / 20;
    expect(lines).toHaveLength(1);
    const [circle = []] = lines;
    expect(circle.at(0)).toEqual(circle.at(-1));
    for (const [x, y] of circle) expect(Math.hypot(x - x0, y - y0)).toBeCloseTo(radius, 0);
  });
});

test("a slope's contours run from edge to edge, and none along the edge; what is nowhere has none", () => {
  const slope = land((x) => 10 * x);
  const [found, ...others] = linesOf(
    contourTile(cornersOf(slope), [
      { pump_Hz: 1, elevation_m: 1004 },
      { pump_Hz: 0.5, elevation_m: 5000 },
    ]),
  );
  expect(others).toEqual([]);
  expect(found?.lines).toHaveLength(1);
  const line = found?.lines[0] ?? [];
  for (const [x] of line) expect(x).toBeCloseTo(100.4, 1);
  expect(line.map(([, y]) => y).sort((a, b) => a - b)).toEqual(
    expect.arrayContaining([0, SIDE_px]),
  );
});

test("the contours of neighbouring tiles meet", () => {
  const height = (x: number, y: number) => 1500 + 8 * x - 3 * y;
  const wanted = [{ pump_Hz: 1, elevation_m: 3000 }];
  const [left] = linesOf(contourTile(cornersOf(land(height)), wanted));
  const [right] = linesOf(contourTile(cornersOf(land((x, y) => height(x + SIDE_px, y))), wanted));
  const atEdge = (lines: [number, number][][] = [], edge: number) =>
    lines.flat().filter(([x]) => x === edge);
  const [[, leftY] = [0, Number.NaN]] = atEdge(left?.lines, SIDE_px);
  const [[, rightY] = [0, Number.NaN]] = atEdge(right?.lines, 0);
  // Half a pixel of this slope, either way.
  expect(Math.abs(leftY - rightY)).toBeLessThan(3);
});

const asked = (more: Partial<Asked> = {}): Asked => ({
  fit: inventedFit(),
  question: { ...FIRST_QUESTION, air: { temperature_C: -8 } },
  end: "low",
  aspect: "rate",
  ...more,
});

test("contours lie where the start tune has their rate, at round figures, within the tuned air", () => {
  for (const end of ["low", "high"] as const) {
    const of = asked({ end });
    const { far, near } = contoursOf(of);
    const [lowest, highest] = tunedElevations(of) as [number, number];
    expect(far.length).toBeGreaterThan(1);
    expect(near.length).toBeGreaterThan(far.length);
    expect(near.length).toBeLessThanOrEqual(25);
    for (const { pump_Hz, elevation_m } of near) {
      expect(pump_Hz).toBe(Number(pump_Hz.toFixed(2)));
      expect(elevation_m).toBeGreaterThanOrEqual(Math.max(0, Math.floor(lowest)));
      expect(elevation_m).toBeLessThanOrEqual(Math.ceil(highest));
      const site = { elevation_m, elevation_sd_m: 0, elevation_source: "given" as const };
      const tune = startTune(of.fit, { ...of.question, site })[end];
      // A metre is a ten-thousandth of the rate.
      expect(tune.pump_Hz_exact / pump_Hz).toBeCloseTo(1, 3);
    }
    for (const contour of far) expect(near).toContainEqual(contour);
  }
});

test("no contours where nobody has tuned, nor where the colours show something else", () => {
  const none = { far: [], near: [] };
  expect(contoursOf(asked({ fit: EMPTY_ATLAS }))).toEqual(none);
  expect(contoursOf(asked({ aspect: "sure" }))).toEqual(none);
});
