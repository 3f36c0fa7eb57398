import type { GivenAir } from "../../model/air.ts";
import type { FinalCo } from "../../model/co-reading.ts";
import type { End } from "../../model/end.ts";
import type { Found } from "../../model/fit/row.ts";
import { USUAL_CLASS_kW } from "../../model/heater.ts";
import type { MeterKind, Tune } from "../../model/tune.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { coarseElevation } from "./coarse-position.ts";

/** One end as far as it is filled in; `nothing_shown`: the meter is below its floor. */
export interface DraftEnd extends FinalCo {
  pump_Hz?: number | undefined;
  fan_rpm?: number | undefined;
  power?: number | undefined;
  nothing_shown: boolean;
}

/** A tune as far as its form is filled in, SI throughout. */
export interface Draft {
  heater: { heat_kW: number; dose_uL?: number | undefined; supply_V?: number | undefined };
  site: {
    elevation_m?: number | undefined;
    /** Of an elevation that was worked out; what is typed in its place has none. */
    elevation_sd_m?: number | undefined;
    lat?: number | undefined;
    lon?: number | undefined;
  };
  /** What the person calls the place; stays in this browser. */
  place: string | null;
  air: GivenAir;
  low: DraftEnd;
  high: DraftEnd;
  found?: Found | undefined;
  meter: { kind?: MeterKind | undefined; distance_m?: number | undefined };
  /** What was known of the heater's meter when this one was filled in: once another is known, that stands in its place. */
  meter_over?: string | undefined;
  tuned_on?: string | undefined;
}

/** The floor that many room alarms have, ppm: nothing below is shown. */
export const USUAL_FLOOR_ppm = 30;

export function emptyDraft(): Draft {
  return {
    heater: { heat_kW: USUAL_CLASS_kW },
    site: {},
    place: null,
    air: {},
    low: { nothing_shown: false },
    high: { nothing_shown: false },
    meter: {},
  };
}

/** The same heater and meter at another place. */
export function nextDraft({ heater, meter, meter_over }: Draft): Draft {
  return { ...emptyDraft(), heater, meter, meter_over };
}

/** The draft for my heater: its facts and its meter, and its fan speeds where none is typed yet. */
export function draftFor(draft: Draft, { heater }: MyHeater): Draft {
  const { heat_kW, dose_uL, supply_V, low_fan_rpm, high_fan_rpm } = heater;
  const { low, high } = draft;
  const { kind, distance_m } = heater.meter ?? {};
  const known = JSON.stringify([heater.id, kind, distance_m]);
  const isNews = heater.meter && draft.meter_over !== known;
  return {
    ...draft,
    heater: { heat_kW, dose_uL, supply_V },
    ...(isNews && { meter: { kind, distance_m }, meter_over: known }),
    low: { ...low, fan_rpm: low.fan_rpm ?? low_fan_rpm },
    high: { ...high, fan_rpm: high.fan_rpm ?? high_fan_rpm },
  };
}

/** Year and month however they are parted, as the schema has them; anything else as it is. */
function monthOf(typed: string): string {
  return typed.trim().replace(/^(\d{4})[\s./\u2010-\u2015\u2212-]?(\d{2})$/, "$1-$2");
}

/** What a draft says, as a tune would say it: for the schema to judge. */
export function tuneOf(draft: Draft, contributor: string): unknown {
  const end = ({ pump_Hz, fan_rpm, power, ...shown }: DraftEnd) => ({
    ...{ pump_Hz, fan_rpm, power },
    ...readingOf(shown),
  });
  const { heater, air, low, high, found, meter } = draft;
  const { elevation_m, elevation_sd_m, ...position } = draft.site;
  const tuned_on = draft.tuned_on && monthOf(draft.tuned_on);
  const site = { ...coarseElevation({ elevation_m, elevation_sd_m }), ...position };
  // Undefined fields fall away in JSON; empty parts are left out with them.
  const ends = { low: end(low), high: end(high), found };
  const said = { heater, site, air, ...ends, meter, tuned_on, contributor };
  const plain = JSON.parse(JSON.stringify(said));
  for (const part of ["air", "meter"]) {
    if (Object.keys(plain[part]).length === 0) delete plain[part];
  }
  return plain;
}

/** What an end's meter showed: a figure typed before "the meter shows nothing" is none. */
export function readingOf({ nothing_shown, co_ppm, co_below_ppm }: DraftEnd): FinalCo {
  return nothing_shown ? { co_below_ppm } : { co_ppm };
}

/** A shared tune back in the form, to revise it. */
export function draftOf(tune: Omit<Tune, "contributor">, place: string | null): Draft {
  const end = (which: End): DraftEnd => ({
    ...tune[which],
    nothing_shown: tune[which].co_below_ppm !== undefined,
  });
  return {
    ...emptyDraft(),
    heater: tune.heater,
    site: tune.site,
    place,
    air: tune.air ?? {},
    low: end("low"),
    high: end("high"),
    found: tune.found,
    meter: tune.meter ?? {},
    tuned_on: tune.tuned_on,
  };
}

/** The number at a path such as "low.pump_Hz". */
export function valueAt(draft: Draft, path: string): number | undefined {
  const [part, field] = path.split(".") as [keyof Draft, string];
  const value = (draft[part] as unknown as Record<string, unknown> | undefined)?.[field];
  return typeof value === "number" ? value : undefined;
}

/** The draft with another number at a path. An elevation that somebody states is no estimate any more. */
export function withValue(draft: Draft, path: string, value: number | undefined): Draft {
  if (path === "site.elevation_m") {
    const { elevation_sd_m: _, ...site } = draft.site;
    return { ...draft, site: { ...site, elevation_m: value } };
  }
  const [part, field] = path.split(".") as ["low", "pump_Hz"];
  return { ...draft, [part]: { ...draft[part], [field]: value } };
}

/** The draft with suggestions taken. */
export function withValues(draft: Draft, changes: { field: string; value: number }[]): Draft {
  return changes.reduce((next, { field, value }) => withValue(next, field, value), draft);
}
