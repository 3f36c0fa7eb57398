import type { Plot } from "@observablehq/plot";
import { useCallback, useEffect, useId, useRef, useState } from "preact/hooks";
import { ChartPlace } from "./chart-place.tsx";

/** Something of a chart that can be read: where it stands, in the chart's own figures, and what it says. */
export interface Reading {
  x: number;
  y: number;
  text: string;
}

export type DrawnPlot = SVGSVGElement & Plot;

/**
 * A chart whose values are read by pointer and by keyboard alike: a slider walks along them (arrow keys, Page, Home
 * and End) and says each, the pointer picks the nearest, and a ring marks it in the chart.
 */
export function ReadableChart(props: {
  draw: (width: number) => DrawnPlot;
  /** In the order in which they are walked along. */
  readings: readonly Reading[];
  label: string;
  /** Whether the pointer picks by its x alone, as along a curve. */
  along?: boolean;
}) {
  const { draw, readings, label, along = false } = props;
  const id = useId();
  const drawn = useRef<DrawnPlot | null>(null);
  const [at, setAt] = useState<number | null>(null);
  const shown = at === null ? undefined : readings[Math.min(at, readings.length - 1)];
  const drawAndKeep = useCallback(
    (width: number) => {
      drawn.current = draw(width);
      return drawn.current;
    },
    [draw],
  );
  useEffect(() => setAt(null), [readings]);
  useEffect(() => {
    if (drawn.current) mark(drawn.current, shown);
  });
  const pick = ({ clientX, clientY }: MouseEvent) => {
    const svg = drawn.current;
    const place = svg?.getScreenCTM();
    if (!svg || !place || readings.length === 0) return;
    const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(place.inverse());
    const far = readings.map((reading) => {
      const [px, py] = pixelOf(svg, reading);
      return Math.hypot(px - x, along ? 0 : py - y);
    });
    setAt(far.indexOf(Math.min(...far)));
  };
  return (
    <div class="readable">
      <div onPointerMove={pick} onPointerDown={pick}>
        <ChartPlace draw={drawAndKeep} />
      </div>
      {readings.length > 0 && (
        <div class="field reader">
          <label for={id}>{label}</label>
          <input
            id={id}
            type="range"
            min={0}
            max={readings.length - 1}
            step={1}
            value={at ?? 0}
            aria-valuetext={(shown ?? readings[0])?.text}
            onInput={(e) => setAt(Number(e.currentTarget.value))}
            onFocus={() => setAt((now) => now ?? 0)}
          />
          <output for={id} aria-live="off">
            {shown?.text}
          </output>
        </div>
      )}
    </div>
  );
}

function pixelOf(svg: DrawnPlot, { x, y }: Reading): [x: number, y: number] {
  return [svg.scale("x")?.apply(x) ?? 0, svg.scale("y")?.apply(y) ?? 0];
}

/** A ring around what is read, and a line down to the axis. */
function mark(svg: DrawnPlot, reading: Reading | undefined): void {
  svg.querySelector(".reading-mark")?.remove();
  if (!reading) return;
  const [x, y] = pixelOf(svg, reading);
  const [bottom = 0, top = 0] = (svg.scale("y")?.range ?? []) as number[];
  const group = document.createElementNS(svg.namespaceURI, "g");
  group.setAttribute("class", "reading-mark");
  for (const [name, attributes] of [
    ["path", { d: `M${x} ${top}V${bottom}` }],
    ["circle", { cx: x, cy: y, r: 8, class: "halo" }],
    ["circle", { cx: x, cy: y, r: 8 }],
  ] as const) {
    const part = document.createElementNS(svg.namespaceURI, name);
    for (const [key, value] of Object.entries(attributes)) part.setAttribute(key, String(value));
    group.append(part);
  }
  svg.append(group);
}
