import type { GivenAir } from "../../model/air.ts";
import { ENDS, type End } from "../../model/end.ts";
import type { Band } from "../../model/fit/bands.ts";
import { PUMP_STEP_Hz } from "../../model/heater.ts";
import type { StartTune } from "../../model/start.ts";
import { COMMON_PRACTICE } from "../../model/sweep/common-practice.ts";
import type { SweepSetup } from "../../model/sweep/setup.ts";
import type { MeterKind } from "../../model/tune.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import type { HeaterMeter } from "../app/records/entry.ts";
import type { Question } from "../base/question.ts";

/** What the meter at the exhaust can show. */
export interface MeterChoice {
  /** What its owner calls it, as the logbook knows it. */
  name?: string | undefined;
  kind: MeterKind;
  resolution_ppm: number;
  floor_ppm: number;
  ceiling_ppm: number;
  lag_s: number;
  distance_m: number;
}

/** What is filled in before a sweep beside the question of Start; left empty where undefined. */
export interface Preparation {
  /** The logbook's heater whose rates these are. */
  heater_id?: string | undefined;
  /** What was known of the heater when rates and meter were typed: once more is known, that stands in their place. */
  typed_over?: string | undefined;
  low_before_Hz: number | undefined;
  high_before_Hz: number | undefined;
  step_Hz: number | undefined;
  supply_V: number | undefined;
  meter: { [K in keyof MeterChoice]: MeterChoice[K] | undefined } & { kind: MeterKind };
}

/** Everything a sweep rests on, fixed when it begins: a new fit or another question does not move it. */
export interface Plan {
  heater: { heat_kW: number; dose_uL?: number | undefined; supply_V?: number | undefined };
  heater_id?: string | undefined;
  place: string | null;
  lat: number | null;
  lon: number | null;
  elevation_m: number;
  /** Of an elevation that was worked out. */
  elevation_sd_m?: number | undefined;
  /** Of the moment, where the heater draws it in. */
  air: GivenAir;
  /** The coming night's temperature, which is another thing; the owner may not have said. */
  night_C?: number | undefined;
  meter: MeterChoice;
  step_Hz: number;
  /** Of the fan speed, where it is known. */
  step_rpm?: number | undefined;
  ends: Record<End, PlanEnd>;
  fit: string;
}

export interface PlanEnd {
  fan_rpm: number;
  /** What the pump is set to before anything is touched: to be put back when the sweep is left. */
  before_Hz: number;
  /** The fan speed as the owner gave it; without one `fan_rpm` is the heat class's usual. */
  given_rpm?: number | undefined;
  start_Hz: number;
  bands_Hz: Band[];
}

/** What meters of a kind usually show (common practice, no source): a start for the fields, no more. */
export function usualMeter(kind: MeterKind): MeterChoice {
  const usual = { kind, resolution_ppm: 1, distance_m: COMMON_PRACTICE.meter_distance_m };
  if (kind === "room alarm") return { ...usual, floor_ppm: 30, ceiling_ppm: 999, lag_s: 45 };
  if (kind === "flue analyser") return { ...usual, floor_ppm: 0, ceiling_ppm: 2000, lag_s: 20 };
  return { ...usual, floor_ppm: 0, ceiling_ppm: 1000, lag_s: 25 };
}

export function firstPreparation(): Preparation {
  return {
    low_before_Hz: undefined,
    high_before_Hz: undefined,
    step_Hz: PUMP_STEP_Hz,
    supply_V: undefined,
    meter: usualMeter("portable meter"),
  };
}

/** The preparation with what is known of my heater; the rates that another one was set to are not its own. */
export function preparationFor(typed: Preparation, mine: MyHeater | null | undefined): Preparation {
  if (!mine) return { ...typed, heater_id: undefined };
  const { heater, settings } = mine;
  const known = JSON.stringify([heater.id, settings?.at, heater.meter]);
  const isItsOwn = typed.typed_over === known;
  return {
    ...typed,
    heater_id: heater.id,
    typed_over: known,
    meter: isItsOwn ? typed.meter : knownMeter(heater.meter, typed.meter),
    low_before_Hz: isItsOwn ? typed.low_before_Hz : settings?.low.pump_Hz,
    high_before_Hz: isItsOwn ? typed.high_before_Hz : settings?.high.pump_Hz,
    step_Hz: heater.step_Hz ?? typed.step_Hz,
    supply_V: heater.supply_V ?? typed.supply_V,
  };
}

/** The heater's own meter, with what such meters usually show where that was never asked. */
function knownMeter(
  known: HeaterMeter | undefined,
  typed: Preparation["meter"],
): Preparation["meter"] {
  if (!known) return typed;
  const { kind } = known;
  return { ...(kind ? usualMeter(kind) : typed), ...known, kind: kind ?? typed.kind };
}

/** What is kept of it: the heater's own step and supply stay in the logbook. */
export function preparationKept(
  next: Preparation,
  typed: Preparation,
  mine: MyHeater | null | undefined,
): Preparation {
  const { step_Hz, supply_V } = mine?.heater ?? {};
  return {
    ...next,
    ...(step_Hz !== undefined && { step_Hz: typed.step_Hz }),
    ...(supply_V !== undefined && { supply_V: typed.supply_V }),
  };
}

/** Least and most of each field; all of them are needed but the supply. */
export const RANGES = {
  low_before_Hz: [0.3, 12],
  high_before_Hz: [0.3, 12],
  step_Hz: [0.01, 0.5],
  supply_V: [6, 36],
  "meter.resolution_ppm": [0.1, 20],
  "meter.floor_ppm": [0, 100],
  "meter.ceiling_ppm": [50, 10_000],
  "meter.lag_s": [1, 300],
  "meter.distance_m": [0.01, 10],
} as const satisfies Record<string, readonly [number, number]>;

export type PreparationField = keyof typeof RANGES;

export function valueIn(preparation: Preparation, field: PreparationField): number | undefined {
  const [first, second] = field.split(".") as [keyof Preparation, keyof MeterChoice | undefined];
  return second
    ? (preparation.meter[second] as number | undefined)
    : (preparation[first] as number | undefined);
}

export function withField(
  preparation: Preparation,
  field: PreparationField,
  value: number | undefined,
): Preparation {
  const [first, second] = field.split(".") as [string, string | undefined];
  return second
    ? { ...preparation, meter: { ...preparation.meter, [second]: value } }
    : { ...preparation, [first]: value };
}

export type FieldFault = "missing" | "range" | "ends";

/** What keeps a sweep from beginning, by field. */
export function faultsOf(preparation: Preparation): Partial<Record<PreparationField, FieldFault>> {
  const faults: Partial<Record<PreparationField, FieldFault>> = {};
  for (const field of Object.keys(RANGES) as PreparationField[]) {
    const value = valueIn(preparation, field);
    const [least, most] = RANGES[field];
    if (value === undefined) {
      if (field !== "supply_V") faults[field] = "missing";
    } else if (value < least || value > most) faults[field] = "range";
  }
  const { low_before_Hz, high_before_Hz } = preparation;
  if ((low_before_Hz ?? 0) >= (high_before_Hz ?? Number.POSITIVE_INFINITY))
    faults.high_before_Hz ??= "ends";
  return faults;
}

/**
 * @param question with the air of the moment
 * @throws RangeError when the preparation still has faults
 */
export function planOf(
  question: Question,
  tune: StartTune,
  preparation: Preparation,
  night_C?: number,
): Plan {
  const [fault] = Object.entries(faultsOf(preparation));
  if (fault) throw new RangeError(`${fault[0]}: ${fault[1]}`);
  const { heat_kW, dose_uL, place, lat, lon, site, air, step_rpm } = question;
  const { supply_V, step_Hz, low_before_Hz, high_before_Hz, meter } = preparation;
  const before = { low: low_before_Hz as number, high: high_before_Hz as number };
  const endOf = (end: End): PlanEnd => ({
    fan_rpm: tune[end].fan_rpm,
    before_Hz: before[end],
    given_rpm: question[`${end}_fan_rpm`],
    start_Hz: tune[end].pump_Hz,
    bands_Hz: tune[end].new_heater_bands_Hz,
  });
  return {
    heater: { heat_kW, dose_uL, supply_V },
    heater_id: preparation.heater_id,
    place,
    lat,
    lon,
    elevation_m: site.elevation_m,
    ...(site.elevation_sd_m > 0 && { elevation_sd_m: site.elevation_sd_m }),
    air,
    night_C,
    meter: meter as MeterChoice,
    step_Hz: step_Hz as number,
    step_rpm,
    ends: Object.fromEntries(ENDS.map((end) => [end, endOf(end)])) as Record<End, PlanEnd>,
    fit: tune.basis.fit,
  };
}

/** What the sweep at an end starts from; begun again, it has learnt some of it on the way. */
export function setupOf(
  { ends, step_Hz, meter }: Plan,
  end: End,
  learnt: Pick<SweepSetup, "flame_outs_Hz" | "relights_used"> & {
    present_Hz?: number | undefined;
  } = {},
): SweepSetup {
  const { before_Hz, start_Hz: suggested_Hz, bands_Hz } = ends[end];
  const { resolution_ppm, floor_ppm, ceiling_ppm, lag_s } = meter;
  return {
    end,
    suggested_Hz,
    bands_Hz,
    step_Hz,
    meter: { resolution_ppm, floor_ppm, ceiling_ppm, lag_s },
    ...learnt,
    present_Hz: learnt.present_Hz ?? before_Hz,
  };
}
