import type { Band } from "../../model/fit/bands.ts";
import type { Picture } from "../../model/sweep/picture.ts";

/** Where things lie in the chart of CO over pump rate, px. */
export interface ChartLayout {
  width: number;
  height: number;
  x: (pump_Hz: number) => number;
  y: (co_ppm: number) => number;
  curve: string;
  band: string;
  minimum: { from: number; to: number; at: number };
  xTicks: number[];
  yTicks: number[];
}

const WIDTH = 340;
const HEIGHT = 240;
export const MARGIN = { top: 22, bottom: 40, start: 40, end: 10 };
/** CO is drawn in equal steps for equal ratios: the bottom and the limbs are both seen. */
const CO_TICKS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];
const TICKS_MOST = 6;

export function layOut(
  { curve, levels }: Picture,
  estimate: { minimum_Hz: number; intervals_Hz: readonly Band[] },
  others_Hz: readonly number[],
): ChartLayout {
  const rates = [...curve.map(({ pump_Hz }) => pump_Hz), ...others_Hz];
  const [left, right] = [Math.min(...rates), Math.max(...rates)];
  // The band's reach where nothing was read is anybody's guess: the chart ends at what was seen and believed.
  const seen = [...curve.map(({ co_ppm }) => co_ppm), ...levels.map(({ ppm }) => ppm)];
  const low = Math.max(1, Math.min(...seen) / 1.6);
  const high = Math.min(5000, Math.max(...levels.map(({ ppm }) => ppm), ...median(seen)) * 1.6);
  const x = (pump_Hz: number) =>
    MARGIN.start + ((pump_Hz - left) / (right - left)) * (WIDTH - MARGIN.start - MARGIN.end);
  const y = (co_ppm: number) => {
    const share = Math.log(Math.min(high, Math.max(low, co_ppm)) / low) / Math.log(high / low);
    return HEIGHT - MARGIN.bottom - share * (HEIGHT - MARGIN.bottom - MARGIN.top);
  };
  const at = (pump_Hz: number, co_ppm: number) =>
    `${x(pump_Hz).toFixed(1)} ${y(co_ppm).toFixed(1)}`;
  const upper = curve.map((point) => at(point.pump_Hz, point.upper_ppm));
  const lower = curve.map((point) => at(point.pump_Hz, point.lower_ppm)).reverse();
  const wide = estimate.intervals_Hz.at(-1);
  return {
    width: WIDTH,
    height: HEIGHT,
    x,
    y,
    curve: `M${curve.map((point) => at(point.pump_Hz, point.co_ppm)).join("L")}`,
    band: `M${[...upper, ...lower].join("L")}Z`,
    minimum: {
      from: x(Math.max(left, wide?.lower ?? left)),
      to: x(Math.min(right, wide?.upper ?? right)),
      at: x(estimate.minimum_Hz),
    },
    xTicks: ticksBetween(left, right),
    yTicks: CO_TICKS.filter((tick) => tick >= low && tick <= high),
  };
}

/** The curve's own middle height, so that a chart without readings shows most of it. */
function median(values: readonly number[]): number[] {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.slice(Math.floor(0.8 * sorted.length)).slice(0, 1);
}

function ticksBetween(from: number, to: number): number[] {
  const step = [0.05, 0.1, 0.2, 0.5, 1].find((s) => (to - from) / s <= TICKS_MOST) ?? 2;
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.floor(to / step + 1e-9) - first + 1;
  return Array.from({ length: count }, (_, i) => Number(((first + i) * step).toFixed(2)));
}
