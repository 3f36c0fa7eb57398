import { airAt, ELEVATION_RANGE_m } from "../../model/air.ts";
import { bandsAt } from "../../model/fit/bands.ts";
import type { End, PublishedFit } from "../../model/fit/group.ts";
import { usualFans } from "../../model/heater.ts";
import { groupOf } from "../../model/start.ts";
import type { Question } from "../question.ts";

/**
 * Our own hypsometric ramp, from the least pump rate (thin air) to the most (dense air): lightness falls in even
 * steps, so the order is seen without colour. OKLab lightness 0.93 … 0.45.
 */
export const RAMP = [
  "#f3ecdf",
  "#e6d3b1",
  "#d4b785",
  "#b69b5f",
  "#8d8a4c",
  "#617847",
  "#3c6350",
] as const;
export const SEA_COLOUR = "#b9cdd8";

/** Pump rates the ramp spans for an end: from the highest camps on a warm night to the sea on a cold one. */
export interface TintRange {
  from_Hz: number;
  to_Hz: number;
}

const WARM_HIGH = { elevation_m: 5500, temperature_C: 10 };
const COLD_LOW = { elevation_m: 0, temperature_C: -25 };
const STEP_m = 250;

/** Range of the tint: fixed for a heater and fit, so that another night re-tints the land instead of the legend. */
export function tintRange(fit: PublishedFit, question: Question, end: End): TintRange {
  const at = ({ elevation_m, temperature_C }: typeof WARM_HIGH) =>
    pumpAt(fit, { ...question, air: { temperature_C } }, end, elevation_m);
  return { from_Hz: at(WARM_HIGH), to_Hz: at(COLD_LOW) };
}

/** The map asks for the rate at dozens of elevations at once, and draws no bands. */
const NO_BANDS = { mean_levels: [], new_heater_levels: [] };

/** Suggested pump rate at an elevation for the present night, heater and fan, Hz. */
export function pumpAt(
  fit: PublishedFit,
  question: Question,
  end: End,
  elevation_m: number,
): number {
  const { density_kg_m3 } = airAt(elevation_m, nightAir(question));
  const fan_rpm = question[`${end}_fan_rpm`] ?? usualFans(question.heat_kW)[`${end}_fan_rpm`];
  const { pump_Hz_per_krpm } = bandsAt(
    groupOf(fit, question.heat_kW, end),
    density_kg_m3,
    NO_BANDS,
  );
  return pump_Hz_per_krpm * (fan_rpm / 1000);
}

/** What of the air holds for the whole map: temperature and humidity; a pressure belongs to one place. */
function nightAir({ air: { temperature_C, humidity_pct } }: Question) {
  return { temperature_C, humidity_pct };
}

/** Colour stops over elevation for the land: [elevation, colour, elevation, colour, …]. */
export function tintStops(fit: PublishedFit, question: Question, end: End): (number | string)[] {
  const range = tintRange(fit, question, end);
  const [lowest, highest] = ELEVATION_RANGE_m;
  const stops: (number | string)[] = [];
  for (let elevation_m = lowest; elevation_m <= highest; elevation_m += STEP_m) {
    stops.push(elevation_m, colourOf(pumpAt(fit, question, end, elevation_m), range));
  }
  return stops;
}

/** Colour of a pump rate: linear between the ramp's steps. */
export function colourOf(pump_Hz: number, { from_Hz, to_Hz }: TintRange): string {
  const share = Math.min(1, Math.max(0, (pump_Hz - from_Hz) / (to_Hz - from_Hz)));
  const at = share * (RAMP.length - 1);
  const below = Math.min(RAMP.length - 2, Math.floor(at));
  const [a, b] = [channels(RAMP[below] as string), channels(RAMP[below + 1] as string)];
  const mixed = a.map((value, i) => Math.round(value + (at - below) * ((b[i] as number) - value)));
  return `#${mixed.map((v) => v.toString(16).padStart(2, "0")).join("")}`;
}

function channels(hex: string): number[] {
  return [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16));
}

/** Elevations between which someone has tuned in such air, m; null when nobody has anywhere. */
export function tunedElevations(
  fit: PublishedFit,
  question: Question,
  end: End,
): [number, number] | null {
  const range = groupOf(fit, question.heat_kW, end).density_range;
  if (!range) return null;
  const densityAt = (elevation_m: number) => airAt(elevation_m, nightAir(question)).density_kg_m3;
  return [elevationOf(range[1], densityAt), elevationOf(range[0], densityAt)];
}

/** Elevation at which a falling density is reached, by halving; the range's ends when it never is. */
function elevationOf(density_kg_m3: number, densityAt: (elevation_m: number) => number): number {
  let [low, high] = ELEVATION_RANGE_m;
  for (let i = 0; i < 20; i++) {
    const middle = (low + high) / 2;
    if (densityAt(middle) > density_kg_m3) low = middle;
    else high = middle;
  }
  return low;
}
