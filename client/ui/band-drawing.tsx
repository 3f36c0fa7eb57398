import type { StartEnd } from "../../model/start.ts";
import { t } from "../texts/app.ts";
import { formatFineRate } from "../units.ts";
import { figuresAt, roundTicks } from "./charts/axis-ticks.ts";

const WIDTH = 160;
const HEIGHT = 71;
const MIDDLE = 32;
/** Half the width of a figure below its tick. */
const HALF_FIGURE = 18;
const MOST_TICKS = 4;
/** Present settings further off than this, in widths of the band, are drawn at its edge. */
const FURTHEST_OFF = 1;

/** One thick band, 8 in 10, on a thin one; on it the value, and what is set now. */
export function BandDrawing({ answer, now_Hz }: { answer: StartEnd; now_Hz?: number | undefined }) {
  const [inner, outer] = answer.new_heater_bands_Hz;
  if (!inner || !outer) return null;
  const width = outer.upper - outer.lower;
  const nowAt =
    now_Hz === undefined
      ? undefined
      : Math.max(
          outer.lower - FURTHEST_OFF * width,
          Math.min(outer.upper + FURTHEST_OFF * width, now_Hz),
        );
  const margin = width * 0.08;
  const from = Math.min(outer.lower, nowAt ?? outer.lower) - margin;
  const to = Math.max(outer.upper, nowAt ?? outer.upper) + margin;
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
      {bar(outer, 8, "band-outer")}
      {bar(inner, 20, "band-inner")}
      {["band-value-edge", "band-value"].map((name) => (
        <line
          key={name}
          class={name}
          x1={x(answer.pump_Hz_exact)}
          x2={x(answer.pump_Hz_exact)}
          y1={MIDDLE - 14}
          y2={MIDDLE + 14}
        />
      ))}
      {now_Hz !== undefined && nowAt !== undefined && (
        <>
          <path class="band-now" d={`M${x(nowAt)} ${MIDDLE - 5}l-6 -10h12z`} />
          <text
            x={x(nowAt) > WIDTH / 2 ? Math.min(WIDTH, x(nowAt) + 8) : Math.max(0, x(nowAt) - 8)}
            y={16.5}
            text-anchor={x(nowAt) > WIDTH / 2 ? "end" : "start"}
          >
            {t.answer.now(formatFineRate(now_Hz))}
          </text>
        </>
      )}
      {ticks.map((value) => (
        <g key={value}>
          <line class="tick" x1={x(value)} x2={x(value)} y1={MIDDLE + 13} y2={MIDDLE + 17} />
          <text x={x(value)} y={HEIGHT - 5} text-anchor="middle">
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
