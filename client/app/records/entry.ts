import type { GivenAir } from "../../../model/air.ts";
import type { CoReading } from "../../../model/co-reading.ts";
import type { End } from "../../../model/end.ts";
import type { Found } from "../../../model/fit/row.ts";
import type { EndSetting } from "../../../model/mixture.ts";
import type { MeterKind } from "../../../model/tune.ts";

/** What the logbook keeps, in this browser alone. SI throughout; times are ISO 8601 in UTC, ending in Z. */

/** A heater of one's own. */
export interface LogbookHeater {
  /** Random. */
  id: string;
  /** What its owner calls it. */
  name: string;
  /** Nominal full heat output. */
  heat_kW: number;
  dose_uL?: number | undefined;
  low_fan_rpm?: number | undefined;
  high_fan_rpm?: number | undefined;
  supply_V?: number | undefined;
  tank_L?: number | undefined;
  /** The smallest steps that its controller can be set in; common ones where not given. */
  step_Hz?: number | undefined;
  step_rpm?: number | undefined;
  /** What it is set to, where no meter found it: a tune is an entry. */
  settings?: HeaterSettings | undefined;
  /** Its CO was last read with. */
  meter?: HeaterMeter | undefined;
  /** Running hours before the first entry, where it has no counter of its own. */
  hours?: number | undefined;
  /** Of the last edit: when two copies meet, the newer one stays. */
  changed_at: string;
}

/** Factory settings or guesswork, as they were found set. */
export interface HeaterSettings extends Record<End, EndSetting> {
  /** When they were found so. */
  at: string;
}

export const ENTRY_KINDS = ["tune", "cleaning", "note"] as const;
export type EntryKind = (typeof ENTRY_KINDS)[number];

/** What a sweep found at an end. */
export interface LoggedSweep {
  minimum_Hz: number;
  /** The nearest rates at which CO was clearly higher: the minimum lies between them. */
  lower_Hz: number;
  upper_Hz: number;
  /** Where the two are an interval instead, its level, such as 0.8. */
  level?: number | undefined;
  /** Pump rates as good as the lowest within the meter's noise. */
  flat_lower_Hz?: number | undefined;
  flat_upper_Hz?: number | undefined;
}

/** One end as it was left. */
export interface LoggedEnd extends CoReading {
  pump_Hz: number;
  fan_rpm: number;
  power?: number | undefined;
  sweep?: LoggedSweep | undefined;
}

export interface LoggedSite {
  /** What the person calls the place. */
  place?: string | undefined;
  elevation_m: number;
  /** Standard deviation of an elevation that was worked out; none where its owner knew it. */
  elevation_sd_m?: number | undefined;
  /** Kept here; only the middle of its map cell ever leaves, when the tune is shared. */
  lat?: number | undefined;
  lon?: number | undefined;
}

/** Readings compare only with the same meter at the same spot: all of this the same, name included. */
export interface LoggedMeter {
  /** What its owner calls it, to tell two of a kind apart. */
  name?: string | undefined;
  kind?: MeterKind | undefined;
  /** From the exhaust's mouth. */
  distance_m?: number | undefined;
}

/** A heater's last meter, with what such a meter shows where a sweep has asked. */
export interface HeaterMeter extends LoggedMeter {
  resolution_ppm?: number | undefined;
  floor_ppm?: number | undefined;
  ceiling_ppm?: number | undefined;
  lag_s?: number | undefined;
}

/** Where a shared tune is: on its way under its Idempotency-Key, or arrived, with the receipt that rules it. */
export type SharedTune = { key: string } | { id: string; receipt: string };

/** One line of the logbook. A tune has site and both ends; a cleaning starts a new stretch; a note is words. */
export interface LogbookEntry {
  /** Random. */
  id: string;
  heater_id: string;
  kind: EntryKind;
  /** When it was done. */
  at: string;
  site?: LoggedSite | undefined;
  /** As given; density is worked out from it and the elevation. */
  air?: GivenAir | undefined;
  low?: LoggedEnd | undefined;
  high?: LoggedEnd | undefined;
  /** How both ends were found; what is not known is left out. */
  found?: Found | undefined;
  meter?: LoggedMeter | undefined;
  /** On the heater's counter. */
  hours?: number | undefined;
  /** Burnt since the entry before. */
  fuel_L?: number | undefined;
  notes?: string | undefined;
  /** Scaled down; see photo.ts. */
  photo?: Blob | undefined;
  shared?: SharedTune | undefined;
  changed_at: string;
}

/** All of it, or what a file brings. */
export interface Logbook {
  heaters: LogbookHeater[];
  entries: LogbookEntry[];
}
