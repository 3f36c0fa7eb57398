import type { Plot } from "@observablehq/plot";
import { svgElement } from "./svg-element.ts";
import { textWidth } from "./text-width.ts";

/** A line over the steps of the horizontal axis; the stylesheet gives its dash pattern by its number. */
export interface LabelledLine {
  number: number;
  label: string;
  values: readonly number[];
}

/** Between two labels, pixels. */
const APART = 18;
const LEADER = 16;
/** From a leader to its label. */
const GAP = 3;

/** How much room the labels take beside the chart, px. */
export function roomForLabels(lines: readonly LabelledLine[]): number {
  return LEADER + 2 * GAP + Math.max(0, ...lines.map(({ label }) => textWidth(label)));
}

/** A label at each line's end, moved apart where lines end close together, with a leader in the line's own dash pattern. */
export function endLabels(
  plot: Plot,
  lines: readonly LabelledLine[],
  { from, steps }: { from: number; steps: readonly string[] },
): SVGElement[] {
  const [x, y] = [plot.scale("x"), plot.scale("y")];
  if (!x || !y) return [];
  const ends = lines
    .map((line) => ({ line, at: y.apply(line.values.at(-1)) as number }))
    .sort((a, b) => a.at - b.at);
  const [bottom, top] = y.range as [number, number];
  const places = apart(
    ends.map(({ at }) => at),
    top,
    bottom,
  );
  return ends.flatMap(({ line, at }, i) => {
    const place = places[i] as number;
    return [
      svgElement("path", {
        class: `study-line-${line.number}`,
        d: `M${x.apply(steps.at(-1))},${at}L${from + LEADER},${place}`,
      }),
      svgElement(
        "text",
        { x: from + LEADER + GAP, y: place, dy: "0.32em", "text-anchor": "start" },
        line.label,
      ),
    ];
  });
}

/** Moves ascending places apart and keeps them between top and bottom. */
function apart(wished: readonly number[], top: number, bottom: number): number[] {
  const places: number[] = [];
  for (const wish of wished) {
    places.push(Math.max(wish, (places.at(-1) ?? top - APART) + APART));
  }
  let limit = bottom;
  for (let i = places.length - 1; i >= 0; i--) {
    places[i] = Math.min(places[i] as number, limit);
    limit = (places[i] as number) - APART;
  }
  return places;
}
