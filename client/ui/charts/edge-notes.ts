import type { Plot } from "@observablehq/plot";
import { scalingWords } from "../../texts/scaling.ts";
import { format } from "../../units.ts";
import type { Side } from "./frame.ts";
import { NARROW_px } from "./narrow.ts";
import { svgElement } from "./svg-element.ts";

const ARROWS: Record<Side, string> = { top: "↑", bottom: "↓", start: "←", end: "→" };
/** From the frame to a note, px. */
const GAP = 6;
/** A note on the side stands below the marks at the upper edge. */
const BELOW_EDGE = 28;

/** At each side of a chart, how many lie beyond it; on a narrow one the words stand above it alone, to leave the marks in sight. */
export function edgeNotes(plot: Plot, beyond: Record<Side, number>): SVGElement[] {
  const [start = 0, end = 0] = (plot.scale("x")?.range ?? []) as number[];
  const [bottom = 0, top = 0] = (plot.scale("y")?.range ?? []) as number[];
  const narrow = end - start < NARROW_px;
  const said = (side: Side) =>
    narrow && side !== "top" ? format(beyond[side]) : scalingWords.beyondHere(format(beyond[side]));
  const at: Record<Side, { x: number; y: number; "text-anchor": "start" | "end" }> = {
    top: { x: end, y: top - GAP, "text-anchor": "end" },
    bottom: { x: end - GAP, y: bottom - 3 * GAP, "text-anchor": "end" },
    start: { x: start + GAP, y: top + BELOW_EDGE, "text-anchor": "start" },
    end: { x: end - GAP, y: top + BELOW_EDGE, "text-anchor": "end" },
  };
  return (Object.keys(at) as Side[])
    .filter((side) => beyond[side] > 0)
    .map((side) =>
      svgElement(
        "text",
        { class: "edge-note", "data-side": side, ...at[side] },
        `${ARROWS[side]} ${said(side)}`,
      ),
    );
}
