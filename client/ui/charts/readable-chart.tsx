import type { Plot } from "@observablehq/plot";
import type { ComponentChildren } from "preact";
import { useCallback, useEffect, useId, useRef, useState } from "preact/hooks";
import { scalingWords } from "../../texts/scaling.ts";
import { type Axes, ChartPlace } from "./chart-place.tsx";
import type { Place } from "./frame.ts";
import { svgElement } from "./svg-element.ts";

/** Something of a chart that can be read: where it stands, in the chart's own figures, and what it says. */
export interface Reading extends Place {
  text: string;
  /** What belongs to it and is joined with it by a line, itself among them. */
  joined?: readonly Place[];
}

export type DrawnPlot = SVGSVGElement & Plot;

/**
 * A chart whose values are read by pointer and by keyboard alike: a slider walks along them (arrow keys, Page, Home
 * and End) and says each, the pointer picks the nearest, and a ring marks it in the chart. What is read stands beside
 * the chart where there is room, so that both are seen at once.
 */
export function ReadableChart(props: {
  draw: (width: number) => DrawnPlot;
  axes: Axes;
  /** In the order in which they are walked along. */
  readings: readonly Reading[];
  label: string;
  /** What is read at first, and is gone to: it was asked for by its address. */
  first?: number | undefined;
  /** Whether the pointer picks by its x alone, as along a curve. */
  along?: boolean;
  /** What stands by the chart beside its readings: its key. */
  children?: ComponentChildren;
}) {
  const { draw, axes, readings, label, first, along = false, children } = props;
  const id = useId();
  const drawn = useRef<DrawnPlot | null>(null);
  const [at, setAt] = useState<number | null>(null);
  const slider = useRef<HTMLInputElement>(null);
  const shown = at === null ? undefined : readings[Math.min(at, readings.length - 1)];
  const now = useRef(shown);
  now.current = shown;
  const drawAndKeep = useCallback(
    (width: number) => {
      drawn.current = draw(width);
      // What is read may have been known before there was a chart.
      mark(drawn.current, now.current);
      return drawn.current;
    },
    [draw],
  );
  useEffect(() => {
    setAt(first ?? null);
    if (first === undefined) return;
    slider.current?.closest(".readable")?.scrollIntoView({ block: "start" });
    slider.current?.focus({ preventScroll: true });
  }, [readings, first]);
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
        <ChartPlace draw={drawAndKeep} axes={axes} />
      </div>
      <div class="beside-chart">
        {readings.length > 0 && (
          <div class="field reader">
            <label for={id}>{label}</label>
            <input
              id={id}
              ref={slider}
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
              {shown?.text ?? <span class="hint">{scalingWords.readHint}</span>}
            </output>
          </div>
        )}
        {children}
      </div>
    </div>
  );
}

function pixelOf(svg: DrawnPlot, { x, y }: Place): [x: number, y: number] {
  return [svg.scale("x")?.apply(x) ?? 0, svg.scale("y")?.apply(y) ?? 0];
}

/** A ring around what is read, a line down to the axis, and one that joins what belongs to it. */
function mark(svg: DrawnPlot, reading: Reading | undefined): void {
  svg.querySelector(".reading-mark")?.remove();
  if (!reading) return;
  const [x, y] = pixelOf(svg, reading);
  const [bottom = 0, top = 0] = (svg.scale("y")?.range ?? []) as number[];
  const group = svgElement("g", { class: "reading-mark" });
  const joined = (reading.joined ?? []).map((place) => pixelOf(svg, place));
  if (joined.length > 1) {
    const d = `M${joined.map((at) => at.join(" ")).join("L")}`;
    group.append(
      svgElement("path", { d, class: "joined halo" }),
      svgElement("path", { d, class: "joined" }),
    );
  }
  group.append(
    svgElement("path", { d: `M${x} ${top}V${bottom}`, class: "to-axis" }),
    svgElement("circle", { cx: x, cy: y, r: 8, class: "halo" }),
    svgElement("circle", { cx: x, cy: y, r: 8 }),
  );
  svg.append(group);
}
