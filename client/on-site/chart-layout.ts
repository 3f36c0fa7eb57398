import type { Picture } from "../../model/sweep/picture.ts";

/** Where things lie in the chart of CO over pump rate, px. */
export interface ChartLayout {
  width: number;
  height: number;
  x: (pump_Hz: number) => number;
  y: (co_ppm: number) => number;
  /** The line through the readings. */
  line: string;
  /** Between the nearest rates with clearly more CO, to the chart's edge where none was seen yet. */
  between: { from: number; to: number };
  xTicks: number[];
  /** Decimals that tell one tick from the next. */
  xDecimals: number;
  yTicks: number[];
}

const WIDTH = 340;
const HEIGHT = 240;
export const MARGIN = { top: 22, bottom: 40, start: 40, end: 10 };
/** CO is drawn in equal steps for equal ratios: the bottom and the limbs are both seen. */
const CO_TICKS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];
const TICKS_MOST = 6;
/** Air around the readings: of the pump rates' span, and as a ratio of CO. */
const SIDE = 0.08;
const ABOVE = 1.6;

export function layOut(
  { rates, levels, risen_Hz }: Picture,
  others_Hz: readonly number[],
): ChartLayout {
  const pumps = [...rates.map(({ pump_Hz }) => pump_Hz), ...others_Hz];
  const [first, last] = [Math.min(...pumps), Math.max(...pumps)];
  const side = Math.max(0.1, SIDE * (last - first));
  const [left, right] = [first - side, last + side];
  const shown = levels.map(({ ppm }) => Math.max(1, ppm));
  const low = Math.max(1, Math.min(...shown) / ABOVE);
  const high = Math.max(...shown) * ABOVE;
  const x = (pump_Hz: number) =>
    MARGIN.start + ((pump_Hz - left) / (right - left)) * (WIDTH - MARGIN.start - MARGIN.end);
  const y = (co_ppm: number) => {
    const share = Math.log(Math.min(high, Math.max(low, co_ppm)) / low) / Math.log(high / low);
    return HEIGHT - MARGIN.bottom - share * (HEIGHT - MARGIN.bottom - MARGIN.top);
  };
  const step = [0.1, 0.2, 0.5, 1].find((s) => (right - left) / s <= TICKS_MOST) ?? 2;
  return {
    width: WIDTH,
    height: HEIGHT,
    x,
    y,
    line: `M${rates.map(({ pump_Hz, ppm }) => `${x(pump_Hz).toFixed(1)} ${y(ppm).toFixed(1)}`).join("L")}`,
    between: { from: x(risen_Hz.lean ?? left), to: x(risen_Hz.rich ?? right) },
    xTicks: ticksBetween(left, right, step),
    xDecimals: step < 1 ? 1 : 0,
    yTicks: CO_TICKS.filter((tick) => tick >= low && tick <= high),
  };
}

function ticksBetween(from: number, to: number, step: number): number[] {
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.floor(to / step + 1e-9) - first + 1;
  return Array.from({ length: count }, (_, i) => Number(((first + i) * step).toFixed(2)));
}
