/// <reference path="./d3-contour.d.ts" />
import { fromGeojsonVt } from "@maplibre/vt-pbf";
import { contours } from "d3-contour";
import { CONTOUR_LAYER, type Contour } from "./contour.ts";
import { elevationIn } from "./terrarium.ts";

/** Elevations are taken at the corners of squares so wide. */
const STEP_px = 8;
/** A ring about a single corner is its grid's, not the land's. */
const LEAST_POINTS = 6;
/** What a vector tile's positions are counted in. */
const EXTENT = 4096;

/** Elevations at the corners of a tile's squares, row by row, and how many there are in a row. */
export interface Corners {
  elevations_m: Float32Array;
  across: number;
}

/** Corners of the tile's own edge lie on it, so that lines of neighbouring tiles meet there. */
export function cornersOf({ data, width }: Pick<ImageData, "data" | "width">): Corners {
  const across = width / STEP_px + 1;
  const within = (px: number) => Math.min(width - 1, Math.max(0, px));
  const elevations_m = Float32Array.from({ length: across ** 2 }, (_, i) => {
    const [x, y] = [(i % across) * STEP_px, Math.floor(i / across) * STEP_px];
    const [left, right, top, bottom] = [x - 1, x, y - 1, y].map(within) as [
      number,
      number,
      number,
      number,
    ];
    const at = (row: number, column: number) => elevationIn(data, 4 * (row * width + column));
    return (at(top, left) + at(top, right) + at(bottom, left) + at(bottom, right)) / 4;
  });
  return { elevations_m, across };
}

/** Contours as a vector tile. */
export function contourTile(corners: Corners, wanted: readonly Contour[]): Uint8Array {
  const features = wanted.flatMap(({ pump_Hz, elevation_m }) => {
    const geometry = linesAt(corners, elevation_m).map((line) =>
      line.map(([x, y]) => [Math.round(x), Math.round(y)]),
    );
    return geometry.length > 0 ? [{ type: 2, geometry, tags: { pump_Hz } }] : [];
  });
  type Layers = Parameters<typeof fromGeojsonVt>[0];
  const layers = { [CONTOUR_LAYER]: { features } } as unknown as Layers;
  return fromGeojsonVt(layers, { version: 2, extent: EXTENT });
}

type Line = [x: number, y: number][];

/** Lines along an elevation. Areas' boundaries are cut where they run along the tile's edge. */
function linesAt({ elevations_m, across }: Corners, elevation_m: number): Line[] {
  const { coordinates } = contours().size([across, across]).contour(elevations_m, elevation_m);
  const onEdge = ([x, y]: readonly [number, number]) =>
    x === 0 || y === 0 || x === across || y === across;
  const inTile = (v: number) => ((v - 0.5) / (across - 1)) * EXTENT;
  return coordinates.flat().flatMap((ring) => {
    if (ring.length < LEAST_POINTS) return [];
    // Begun at the edge, no line is cut where the ring happens to begin.
    const first = Math.max(0, ring.findIndex(onEdge));
    const turned = [...ring.slice(first, -1), ...ring.slice(0, first + 1)];
    const lines: Line[] = [[]];
    for (const point of turned) {
      if (onEdge(point)) lines.push([]);
      else lines.at(-1)?.push([inTile(point[0]), inTile(point[1])]);
    }
    return lines.filter(({ length }) => length > 1).map((line) => rounded(rounded(line)));
  });
}

/** A line with its corners cut (Chaikin 1974), so that figures find room along it; its ends, or its being closed, stay. */
function rounded(line: Line): Line {
  const cut = line.slice(1).flatMap(([x, y], i): Line => {
    const [fromX, fromY] = line[i] as Line[0];
    const at = (share: number): Line[0] => [
      fromX + share * (x - fromX),
      fromY + share * (y - fromY),
    ];
    return [at(0.25), at(0.75)];
  });
  const [first, last] = [line[0] as Line[0], line.at(-1) as Line[0]];
  const closed = first[0] === last[0] && first[1] === last[1];
  return closed ? [...cut, cut[0] as Line[0]] : [first, ...cut, last];
}
