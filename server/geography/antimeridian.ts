import type { Position } from "geojson";

const HALF_TURN = 180;
const TURN = 360;

/**
 * A polygon whose rings may jump across the antimeridian, as polygons that do not: longitudes unwrapped along
 * each ring, a ring round a pole closed over it, the result cut at ±180 and the far piece shifted back a turn.
 */
export function splitAtAntimeridian(polygon: Position[][]): Position[][][] {
  const [outer = [], ...holes] = polygon.map(unwrap);
  const [west, east] = extent(outer);
  const rings = [outer, ...holes.map((hole) => shiftedBetween(hole, west, east))];
  if (west >= -HALF_TURN && east <= HALF_TURN) return [rings];
  const pieces: Position[][][] = [];
  for (let turn = Math.floor((west + HALF_TURN) / TURN); TURN * turn - HALF_TURN < east; turn++) {
    const from = TURN * turn - HALF_TURN;
    const cut = rings
      .map((ring) => clip(clip(ring, from, 1), from + TURN, -1))
      .map((ring) => ring.map(([lon, lat]) => [(lon as number) - TURN * turn, lat as number]))
      .filter((ring) => ring.length >= 4);
    if (cut.length > 0) pieces.push(cut);
  }
  return pieces;
}

function extent(ring: Position[]): [west: number, east: number] {
  const longitudes = ring.map((p) => p[0] as number);
  return [Math.min(...longitudes), Math.max(...longitudes)];
}

/** A hole, brought by whole turns to where its outer ring has been unwrapped to. */
function shiftedBetween(hole: Position[], west: number, east: number): Position[] {
  const [from, to] = extent(hole);
  const turns = Math.round(((west + east) / 2 - (from + to) / 2) / TURN);
  const turn = [turns, turns - 1, turns + 1].find(
    (n) => from + TURN * n >= west && to + TURN * n <= east,
  );
  return hole.map(([lon, lat]) => [(lon as number) + TURN * (turn ?? turns), lat as number]);
}

/** Longitudes that run on instead of jumping; a ring that comes back a turn later goes round by the pole. */
function unwrap(ring: Position[]): Position[] {
  let turn = 0;
  const run: Position[] = ring.map(([lon, lat], i) => {
    const before = ring[i - 1]?.[0] ?? lon;
    if ((lon as number) - (before as number) > HALF_TURN) turn -= 1;
    if ((lon as number) - (before as number) < -HALF_TURN) turn += 1;
    return [(lon as number) + TURN * turn, lat as number];
  });
  if (turn === 0) return run;
  const [first, last] = [run[0] as Position, run.at(-1) as Position];
  const pole = (first[1] as number) < 0 ? -90 : 90;
  return [...run, [last[0] as number, pole], [first[0] as number, pole], first];
}

/** The part of a ring on one side of a meridian (Sutherland & Hodgman 1974); side 1 keeps the east. */
function clip(ring: Position[], meridian: number, side: 1 | -1): Position[] {
  const inside = (p: Position) => side * ((p[0] as number) - meridian) >= 0;
  const kept: Position[] = [];
  ring.slice(1).forEach((to, i) => {
    const from = ring[i] as Position;
    if (inside(from) !== inside(to)) {
      const share = (meridian - (from[0] as number)) / ((to[0] as number) - (from[0] as number));
      kept.push([
        meridian,
        (from[1] as number) + share * ((to[1] as number) - (from[1] as number)),
      ]);
    }
    if (inside(to)) kept.push(to);
  });
  const first = kept[0];
  return first ? [...kept, first] : [];
}
