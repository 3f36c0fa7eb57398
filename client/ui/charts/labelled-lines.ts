import * as Plot from "@observablehq/plot";
import { endLabels, type LabelledLine, roomForLabels } from "./end-labels.ts";
import { NARROW_px } from "./narrow.ts";
import { onePicture } from "./one-picture.ts";

export interface LabelledLinesOptions {
  name: string;
  width: number;
  lines: readonly LabelledLine[];
  x: { steps: readonly string[] };
  y: {
    domain: readonly [from: number, to: number];
    ticks?: readonly number[];
    log?: boolean;
    format: (value: number) => string;
  };
  /** A span of y marked as the one to be in. */
  corridor?: readonly [from: number, to: number];
  /** Whether a key tells the lines apart, so that a narrow chart needs no labels at their ends. */
  keyed?: boolean;
}

/** Beside lines without labels. */
const NO_LABELS = 16;

/** Lines that differ by dash pattern and carry their label at their end. */
export function labelledLines(options: LabelledLinesOptions): SVGSVGElement {
  const { name, width, lines, x, y, corridor, keyed = false } = options;
  const labelled = !keyed || width >= NARROW_px;
  const beside = labelled ? roomForLabels(lines) : NO_LABELS;
  const pointsOf = ({ values }: LabelledLine) =>
    values.map((value, i) => ({ step: x.steps[i] as string, value }));
  const plot = Plot.plot({
    width,
    height: Math.max(300, Math.min(380, width * 0.6)),
    marginLeft: 44,
    marginTop: 10,
    marginRight: beside,
    marginBottom: x.steps.some((step) => step.includes("\n")) ? 42 : 28,
    ariaLabel: name,
    x: { type: "point", padding: 0.25, domain: x.steps, label: null },
    y: {
      type: y.log ? "log" : "linear",
      domain: y.domain,
      label: null,
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
  if (labelled) plot.append(...endLabels(plot, lines, { from: width - beside, steps: x.steps }));
  return onePicture(plot, "study-chart");
}
