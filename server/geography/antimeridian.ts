import type { Position } from "geojson";

const HALF_TURN = 180;
const TURN = 360;

/**
 * A polygon whose rings may jump across the antimeridian, as polygons that do not: longitudes unwrapped along
 * each ring, a ring round a pole closed over it, the result cut at ±180 and the far piece shifted back a turn.
 */
export function splitAtAntimeridian(polygon: Position[][]): Position[][][] {
  const rings = polygon.map(unwrap);
  const longitudes = (rings[0] ?? []).map((p) => p[0] as number);
  const [west, east] = [Math.min(...longitudes), Math.max(...longitudes)];
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
