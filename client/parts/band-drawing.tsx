import type { StartEnd } from "../../model/start.ts";
import { averageReachesBeyond } from "../charts/average-band.ts";
import { figuresAt, roundTicks } from "../charts/axis-ticks.ts";

const WIDTH = 220;
const HEIGHT = 67;
const MIDDLE = 26;
/** Half the width of a figure below its tick. */
const HALF_FIGURE = 20;
const MOST_TICKS = 5;

/** Bands nested like contour steps: the wider the claim, the thinner and paler the bar. */
export function BandDrawing({ answer }: { answer: StartEnd }) {
  const [inner, outer] = answer.new_heater_bands_Hz;
  if (!inner || !outer) return null;
  const average = answer.mean_band_Hz;
  const margin = (outer.upper - outer.lower) * 0.08;
  const [from, to] = [outer.lower - margin, outer.upper + margin];
  const x = (value: number) => ((value - from) / (to - from)) * WIDTH;
  const bar = (band: { lower: number; upper: number }, height: number, name: string) => (
    <rect
      class={name}
      x={x(band.lower)}
      y={MIDDLE - height / 2}
      width={Math.max(1, x(band.upper) - x(band.lower))}
      height={height}
    />
  );
  const ticks = roundTicks(from, to, MOST_TICKS).filter((value) => isWhole(x(value)));
  const figure = figuresAt(ticks);
  return (
    <svg class="band-drawing" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      {bar(outer, 12, "band-outer")}
      {bar(inner, 22, "band-inner")}
      {bar(average, 32, averageReachesBeyond(average, inner) ? "edge-mean" : "band-mean")}
      {["band-value-edge", "band-value"].map((name) => (
        <line
          key={name}
          class={name}
          x1={x(answer.pump_Hz_exact)}
          x2={x(answer.pump_Hz_exact)}
          y1={4}
          y2={48}
        />
      ))}
      {ticks.map((value) => (
        <g key={value}>
          <line class="tick" x1={x(value)} x2={x(value)} y1={44} y2={49} />
          <text x={x(value)} y={62} text-anchor="middle">
            {figure(value)}
          </text>
        </g>
      ))}
    </svg>
  );
}

/** Whether a figure centred here is not cut off by the edge. */
function isWhole(x: number): boolean {
  return x > HALF_FIGURE && x < WIDTH - HALF_FIGURE;
}
