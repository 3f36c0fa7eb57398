import { type Air, airAt, ELEVATION_RANGE_m, standardTemperature } from "../../model/air.ts";
import type { End } from "../../model/end.ts";
import { bandsAt } from "../../model/fit/bands.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { usualFans } from "../../model/heater.ts";
import { groupOf } from "../../model/start.ts";
import { gain, oneMoreTune } from "../../model/wanted.ts";
import type { Question } from "../base/question.ts";
import { colourAt, type Palette } from "./palette.ts";

/**
 * What the land's colour tells: the suggested pump rate, how far off it may be for one more heater, or how much one more
 * tune would narrow the band of the average.
 */
export const ASPECTS = ["rate", "sure", "wanted"] as const;
export type Aspect = (typeof ASPECTS)[number];

/** What the map is asked: a fit, a night and heater, an end, and which of the three. */
export interface Asked {
  fit: PublishedFit;
  question: Question;
  end: End;
  aspect: Aspect;
}

/** Values the ramp spans: Hz, ± % of the pump rate, or percentage points. */
export interface TintRange {
  from: number;
  to: number;
}

const LEVEL = 0.95;
const STEP_m = 250;
const [LOWEST_m, HIGHEST_m] = ELEVATION_RANGE_m;
/** From the highest camps on a warm night to the sea on a cold one. */
const WARM_HIGH = { elevation_m: 5500, temperature_C: 10 };
const COLD_LOW = { elevation_m: 0, temperature_C: -25 };

/** The map asks for the rate at dozens of elevations at once, and draws no bands. */
const NO_BANDS = { mean_levels: [], new_heater_levels: [] };

/**
 * Range of the tint: fixed for a heater and fit, so that another night re-tints the land instead of the legend. Where a
 * tune is wanted is asked of one night: the range is that night's.
 */
export function tintRange(asked: Asked): TintRange {
  const on = (temperature_C: number | undefined): Asked => ({
    ...asked,
    question: { ...asked.question, air: { temperature_C } },
  });
  const at = ({ elevation_m, temperature_C }: typeof WARM_HIGH) =>
    valueAt(on(temperature_C), elevation_m);
  switch (asked.aspect) {
    case "rate":
      return { from: at(WARM_HIGH), to: at(COLD_LOW) };
    case "sure": {
      const nights = [undefined, COLD_LOW.temperature_C, WARM_HIGH.temperature_C].map(on);
      return rangeOf(nights, [LOWEST_m, 0, 1500, 3000, 4500, HIGHEST_m], 1);
    }
    case "wanted":
      return rangeOf([asked], [0, 1000, 2000, 3000, 4000, WARM_HIGH.elevation_m], 100);
  }
}

/** Least and greatest value at some elevations, outwards to so many steps of one. */
function rangeOf(nights: readonly Asked[], elevations_m: readonly number[], steps: number) {
  const values = nights.flatMap((night) => elevations_m.map((m) => valueAt(night, m)));
  return {
    from: Math.floor(steps * Math.min(...values)) / steps,
    to: Math.ceil(steps * Math.max(...values)) / steps,
  };
}

/**
 * What the tint tells at an elevation: Hz; the 95 % new-heater band's half-width in % of the pump rate; or by how many
 * percentage points one more tune, sent with its temperature, would narrow the average's.
 */
export function valueAt(asked: Asked, elevation_m: number): number {
  if (asked.aspect === "rate") return pumpAt(asked, elevation_m);
  const { fit, question, end } = asked;
  if (asked.aspect === "wanted") {
    const { temperature_C = standardTemperature(elevation_m), humidity_pct } = question.air;
    const group = groupOf(fit, question.heat_kW, end);
    return gain(oneMoreTune(group, airAt(elevation_m, { temperature_C, humidity_pct })));
  }
  const { density_kg_m3, ln_density_sd } = nightAir(question, elevation_m);
  const { pump_Hz_per_krpm, new_heater_bands } = bandsAt(
    groupOf(fit, question.heat_kW, end),
    density_kg_m3,
    { ln_density_sd, mean_levels: [], new_heater_levels: [LEVEL] },
  );
  const [{ lower, upper } = { lower: 0, upper: 0 }] = new_heater_bands;
  return (50 * (upper - lower)) / pump_Hz_per_krpm;
}

/** Suggested pump rate at an elevation for the present night, heater and fan, Hz. */
export function pumpAt({ fit, question, end }: Omit<Asked, "aspect">, elevation_m: number): number {
  const fan_rpm = question[`${end}_fan_rpm`] ?? usualFans(question.heat_kW)[`${end}_fan_rpm`];
  const { pump_Hz_per_krpm } = bandsAt(
    groupOf(fit, question.heat_kW, end),
    nightAir(question, elevation_m).density_kg_m3,
    NO_BANDS,
  );
  return pump_Hz_per_krpm * (fan_rpm / 1000);
}

/** What of the air holds for the whole map: temperature and humidity; a pressure belongs to one place. */
function nightAir({ air: { temperature_C, humidity_pct } }: Question, elevation_m: number): Air {
  return airAt(elevation_m, { temperature_C, humidity_pct });
}

/** Colour stops over elevation for the land: [elevation, colour, elevation, colour, …]. */
export function tintStops(asked: Asked, palette: Palette): (number | string)[] {
  const range = tintRange(asked);
  const stops: (number | string)[] = [];
  for (let elevation_m = LOWEST_m; elevation_m <= HIGHEST_m; elevation_m += STEP_m) {
    const share = shareOf(valueAt(asked, elevation_m), range);
    stops.push(elevation_m, colourAt(share, palette[asked.aspect]));
  }
  return stops;
}

/** Where a value lies between the ends of a range: 0 at `from`, 1 at `to`. */
export function shareOf(value: number, { from, to }: TintRange): number {
  return to > from ? (value - from) / (to - from) : 0;
}

/** Values at the steps of the ramp, in its order. */
export function stepsOf({ from, to }: TintRange, ramp: readonly string[]): number[] {
  return ramp.map((_, i) => from + ((to - from) * i) / (ramp.length - 1));
}

/** Elevation at which the present night asks for a pump rate, m; null where no land does. */
export function elevationOfRate(asked: Omit<Asked, "aspect">, pump_Hz: number): number | null {
  if (pump_Hz > pumpAt(asked, LOWEST_m) || pump_Hz < pumpAt(asked, HIGHEST_m)) return null;
  return whereFalls((elevation_m) => pumpAt(asked, elevation_m), pump_Hz);
}

/** Elevations between which someone has tuned in such air, m; null when nobody has anywhere. */
export function tunedElevations({ fit, question, end }: Asked): [number, number] | null {
  const range = groupOf(fit, question.heat_kW, end).density_range;
  if (!range) return null;
  const density = (elevation_m: number) => nightAir(question, elevation_m).density_kg_m3;
  return [whereFalls(density, range[1]), whereFalls(density, range[0])];
}

/** Elevation at which something that falls with height is reached, by halving, m; the range's ends when it never is. */
function whereFalls(at: (elevation_m: number) => number, value: number): number {
  let [low, high] = ELEVATION_RANGE_m;
  for (let i = 0; i < 20; i++) {
    const middle = (low + high) / 2;
    if (at(middle) > value) low = middle;
    else high = middle;
  }
  return low;
}
