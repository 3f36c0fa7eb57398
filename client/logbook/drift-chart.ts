import * as Plot from "@observablehq/plot";
import { kindOfReading } from "../../model/co-reading.ts";
import type { DriftPicture, PicturePoint } from "../../model/drift/picture.ts";
import { APART_px, axisTicks } from "../ui/charts/axis-ticks.ts";
import { onePicture } from "../ui/charts/one-picture.ts";
import type { DrawnPlot } from "../ui/charts/readable-chart.tsx";
import { format } from "../units.ts";

/** CO is drawn in equal steps for equal ratios, as its trend is judged. */
const CO_TICKS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];
const ROOM = 1.3;
/** The mixture's axis reaches so far at least, %: a step of most pumps. */
const LEAST_REACH_pct = 12;

/** A CO reading where it is drawn: beyond the meter's scale at its end. */
export function shown_ppm({ reading }: PicturePoint): number | undefined {
  const kind = kindOfReading(reading);
  return kind && Math.max(1, reading[kind] as number);
}

interface Drawing {
  picture: DriftPicture;
  label: string;
  width: number;
}

/** Mixture in like air over use, the first tune at 0. */
export function mixtureChart({ picture, label, width }: Drawing): DrawnPlot {
  const off = picture.points.map(({ mixture_pct }) => Math.abs(mixture_pct));
  const reach = Math.max(LEAST_REACH_pct, ROOM * Math.max(...off));
  const height = heightOf(width);
  return onePicture(
    Plot.plot({
      ...frameOf(picture, label, width),
      y: {
        domain: [-reach, reach],
        label: null,
        grid: true,
        ...axisTicks([-reach, reach], height, APART_px.y),
      },
      marks: [
        Plot.ruleY([0], { className: "curve" }),
        ...cleaned(picture),
        Plot.line(picture.points, { x: "x", y: "mixture_pct", className: "joined-tunes" }),
        Plot.dot(picture.points, { x: "x", y: "mixture_pct", r: 4, className: "kept" }),
        Plot.frame({ className: "chart-frame" }),
      ],
    }) as DrawnPlot,
    "drift-chart",
  );
}

/** CO over use: readings that compare as full dots with their line, the others as rings, those beyond the scale as triangles. */
export function coChart({ picture, label, width }: Drawing): DrawnPlot {
  const read = picture.points.filter((point) => shown_ppm(point) !== undefined);
  const ppm = read.map((point) => shown_ppm(point) as number);
  const domain = [Math.max(0.7, Math.min(...ppm) / ROOM), Math.max(...ppm) * ROOM] as const;
  const line = picture.co_line && [picture.co_line.from, picture.co_line.to];
  const isFigure = ({ reading }: PicturePoint) => reading.co_ppm !== undefined;
  const at = { x: "x", y: shown_ppm };
  return onePicture(
    Plot.plot({
      ...frameOf(picture, label, width),
      y: {
        type: "log",
        domain,
        label: null,
        grid: true,
        ticks: CO_TICKS.filter((tick) => tick >= domain[0] && tick <= domain[1]),
        tickFormat: (tick: number) => format(tick),
      },
      marks: [
        ...cleaned(picture),
        ...(line
          ? [Plot.line(line, { x: "x", y: "ppm", className: "curve", strokeWidth: 2.5 })]
          : []),
        Plot.dot(
          read.filter((one) => isFigure(one) && !one.compares),
          { ...at, r: 4, className: "other" },
        ),
        Plot.dot(
          read.filter((one) => isFigure(one) && one.compares),
          { ...at, r: 4, className: "kept" },
        ),
        Plot.dot(
          read.filter((one) => !isFigure(one)),
          { ...at, r: 5, symbol: "triangle", className: "other" },
        ),
        Plot.frame({ className: "chart-frame" }),
      ],
    }) as DrawnPlot,
    "drift-chart",
  );
}

const heightOf = (width: number) => Math.max(180, Math.min(260, width * 0.45));

function frameOf({ points, cleanings }: DriftPicture, label: string, width: number) {
  const xs = [...points.map(({ x }) => x), ...cleanings];
  const [first, last] = [Math.min(...xs), Math.max(...xs)];
  const side = Math.max(1, 0.04 * (last - first));
  const x = [first - side, last + side] as const;
  return {
    width,
    height: heightOf(width),
    marginTop: 12,
    marginLeft: 48,
    ariaLabel: label,
    x: { domain: x, label: null, ...axisTicks(x, width, APART_px.x) },
  };
}

const cleaned = ({ cleanings }: DriftPicture) =>
  cleanings.length > 0 ? [Plot.ruleX(cleanings, { className: "cleaning" })] : [];
