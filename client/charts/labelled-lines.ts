import * as Plot from "@observablehq/plot";
import { endLabels } from "./end-labels.ts";
import { onePicture } from "./one-picture.ts";

/** A line over the steps of the horizontal axis; the stylesheet gives its dash pattern by its number. */
export interface LabelledLine {
  number: number;
  label: string;
  values: readonly number[];
}

export interface LabelledLinesOptions {
  name: string;
  width: number;
  lines: readonly LabelledLine[];
  x: { label: string; steps: readonly string[] };
  y: {
    label: string;
    domain: readonly [from: number, to: number];
    ticks?: readonly number[];
    log?: boolean;
    format: (value: number) => string;
  };
  /** A span of y marked as the one to be in. */
  corridor?: readonly [from: number, to: number];
}

const ROOM_FOR_LABELS = 104;

/** Lines that differ by dash pattern and carry their label at their end. */
export function labelledLines(options: LabelledLinesOptions): SVGSVGElement {
  const { name, width, lines, x, y, corridor } = options;
  const pointsOf = ({ values }: LabelledLine) =>
    values.map((value, i) => ({ step: x.steps[i] as string, value }));
  const plot = Plot.plot({
    width,
    height: Math.max(300, Math.min(380, width * 0.6)),
    marginLeft: 44,
    marginRight: ROOM_FOR_LABELS,
    marginBottom: x.steps.some((step) => step.includes("\n")) ? 56 : 44,
    ariaLabel: name,
    x: {
      type: "point",
      padding: 0.25,
      domain: x.steps,
      label: x.label,
      labelAnchor: "center",
      labelArrow: "none",
    },
    y: {
      type: y.log ? "log" : "linear",
      domain: y.domain,
      label: y.label,
      labelArrow: "none",
      grid: true,
      tickFormat: y.format,
      ...(y.ticks ? { ticks: y.ticks } : {}),
    },
    marks: [
      ...(corridor
        ? [
            Plot.rect([corridor], { y1: "0", y2: "1", className: "corridor" }),
            Plot.ruleY([(corridor[0] + corridor[1]) / 2], { className: "claim" }),
          ]
        : []),
      ...lines.map((line) =>
        Plot.line(pointsOf(line), {
          x: "step",
          y: "value",
          className: `study-line-${line.number}`,
        }),
      ),
      ...lines.map((line) =>
        Plot.dot(pointsOf(line), {
          x: "step",
          y: "value",
          r: 2.5,
          className: `study-dot-${line.number}`,
        }),
      ),
      Plot.frame({ className: "chart-frame" }),
    ],
  }) as SVGSVGElement & Plot.Plot;
  plot.append(...endLabels(plot, lines, { from: width - ROOM_FOR_LABELS, steps: x.steps }));
  return onePicture(plot, "study-chart");
}
