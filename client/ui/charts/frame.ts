/** What a chart shows, in the figures of its axes. */
export interface Frame {
  x: Span;
  y: Span;
}

export type Span = readonly [from: number, to: number];

export interface Place {
  x: number;
  y: number;
}

export type Side = "top" | "bottom" | "start" | "end";

/** How far from the edge something is drawn that lies beyond it, so that its whole mark is seen; a share of the span. */
const EDGE = 0.015;

/** On which side something lies beyond the frame; null when it is within. */
export function sideBeyond({ x, y }: Frame, place: Place): Side | null {
  if (place.y > y[1]) return "top";
  if (place.y < y[0]) return "bottom";
  if (place.x < x[0]) return "start";
  return place.x > x[1] ? "end" : null;
}

/** Where something is drawn: at its place, or at the edge that it lies beyond. */
export function placeWithin({ x, y }: Frame, { x: atX, y: atY }: Place): Place {
  return { x: within(atX, x), y: within(atY, y) };
}

/** How many lie beyond each side. */
export function countBeyond(frame: Frame, places: readonly Place[]): Record<Side, number> {
  const count = { top: 0, bottom: 0, start: 0, end: 0 };
  for (const place of places) {
    const side = sideBeyond(frame, place);
    if (side) count[side]++;
  }
  return count;
}

/** The least span that holds one and some more values, with a little room beside those. */
export function widened([from, to]: Span, values: readonly number[]): Span {
  const room = EDGE * (to - from);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return [least < from ? least - room : from, most > to ? most + room : to];
}

function within(value: number, [from, to]: Span): number {
  const edge = EDGE * (to - from);
  if (value < from) return from + edge;
  return value > to ? to - edge : value;
}
