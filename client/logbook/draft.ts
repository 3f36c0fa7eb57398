import type { GivenAir } from "../../model/air.ts";
import { type CoReadingKind, kindOfReading } from "../../model/co-reading.ts";
import { usualFans } from "../../model/heater.ts";
import type {
  EntryKind,
  LogbookEntry,
  LogbookHeater,
  LoggedEnd,
  LoggedMeter,
  LoggedSite,
} from "../app/records/entry.ts";
import { entrySchema, errorsOf } from "../app/records/schema.ts";
import { FIRST_QUESTION, type Question } from "../base/question.ts";
import { randomText } from "../base/random.ts";

/** One end as far as it is filled in: the figure, and what kind of reading it is. */
export interface EndDraft {
  pump_Hz?: number | undefined;
  fan_rpm?: number | undefined;
  reading: CoReadingKind;
  ppm?: number | undefined;
  power?: number | undefined;
  sweep?: LoggedEnd["sweep"];
}

/** An entry as far as its form is filled in. */
export interface EntryDraft {
  id: string;
  heater_id: string;
  kind: EntryKind;
  /** As a date-time field has it: where the heater stands, no zone. */
  at_local: string;
  place: string | null;
  elevation_m?: number | undefined;
  /** Of an elevation that was worked out; what is typed in its place has none. */
  elevation_sd_m?: number | undefined;
  lat?: number | undefined;
  lon?: number | undefined;
  air: GivenAir;
  low: EndDraft;
  high: EndDraft;
  found?: LogbookEntry["found"];
  meter: LoggedMeter;
  hours?: number | undefined;
  fuel_L?: number | undefined;
  notes: string;
  photo?: Blob | undefined;
  shared?: LogbookEntry["shared"];
}

/** The place that Start was asked about last. While only its first elevation stands there, none; a position without a name may be the device's. */
function siteAsked(question: Question | undefined): LoggedSite | null {
  if (!question) return null;
  const { place, site, lat, lon } = question;
  const first = FIRST_QUESTION.site;
  if (place === null && site.elevation_m === first.elevation_m && site.elevation_sd_m === 0)
    return null;
  return {
    ...(place !== null && { place, lat: lat ?? undefined, lon: lon ?? undefined }),
    elevation_m: Math.round(site.elevation_m),
    elevation_sd_m: site.elevation_sd_m || undefined,
  };
}

/**
 * A new entry: meter and fans as they were last, a tune's place as Start was asked about it, else as it was last.
 * @param question Start's, as this browser remembers it
 */
export function newDraft(
  kind: EntryKind,
  heater: LogbookHeater,
  entries: readonly LogbookEntry[],
  now: Date,
  question: Question | undefined,
): EntryDraft {
  const last = [...entries].reverse().find((entry) => entry.kind === "tune");
  const usual = usualFans(heater.heat_kW);
  const site = kind === "tune" ? (siteAsked(question) ?? last?.site) : undefined;
  return {
    id: randomText(),
    heater_id: heater.id,
    kind,
    at_local: localOf(now.toISOString()),
    place: site?.place ?? null,
    elevation_m: site?.elevation_m,
    elevation_sd_m: site?.elevation_sd_m,
    lat: site?.lat,
    lon: site?.lon,
    air: {},
    low: {
      fan_rpm: last?.low?.fan_rpm ?? heater.low_fan_rpm ?? usual.low_fan_rpm,
      reading: "co_ppm",
    },
    high: {
      fan_rpm: last?.high?.fan_rpm ?? heater.high_fan_rpm ?? usual.high_fan_rpm,
      reading: "co_ppm",
    },
    meter: meterOf(heater.meter ?? last?.meter),
    notes: "",
  };
}

/** As much of a meter as an entry holds. */
function meterOf({ name, kind, distance_m }: LoggedMeter = {}): LoggedMeter {
  return { name, kind, distance_m };
}

/** A kept entry back in the form. */
export function draftOfEntry(entry: LogbookEntry): EntryDraft {
  const { site, low, high, notes, at, changed_at: _, ...rest } = entry;
  return {
    ...rest,
    at_local: localOf(at),
    place: site?.place ?? null,
    elevation_m: site?.elevation_m,
    elevation_sd_m: site?.elevation_sd_m,
    lat: site?.lat,
    lon: site?.lon,
    air: entry.air ?? {},
    low: endDraft(low),
    high: endDraft(high),
    meter: entry.meter ?? {},
    notes: notes ?? "",
  };
}

function endDraft(end: LoggedEnd | undefined): EndDraft {
  if (!end) return { reading: "co_ppm" };
  const { pump_Hz, fan_rpm, power, sweep } = end;
  const reading = kindOfReading(end) ?? "co_ppm";
  return { pump_Hz, fan_rpm, power, sweep, reading, ppm: end[reading] };
}

/** The entry a draft makes, or what keeps it from being one, by field. */
export function entryOf(
  draft: EntryDraft,
  now: Date,
): { entry: LogbookEntry } | { errors: Record<string, string> } {
  const { kind, at_local, place, elevation_m, elevation_sd_m, lat, lon, ...more } = draft;
  const { low, high, notes, photo, ...rest } = more;
  const isTune = kind === "tune";
  const end = ({ reading, ppm, ...settings }: EndDraft) => ({ ...settings, [reading]: ppm });
  const at = new Date(at_local);
  const said = {
    ...rest,
    kind,
    at: Number.isNaN(at.getTime()) ? at_local : at.toISOString(),
    site:
      isTune || elevation_m !== undefined
        ? { place: place || undefined, elevation_m, elevation_sd_m, lat, lon }
        : undefined,
    air: isTune && Object.keys(draft.air).length > 0 ? draft.air : undefined,
    low: isTune ? end(low) : undefined,
    high: isTune ? end(high) : undefined,
    found: isTune ? draft.found : undefined,
    meter:
      isTune && Object.values(draft.meter).some((v) => v !== undefined) ? draft.meter : undefined,
    notes: notes.trim() || undefined,
    changed_at: now.toISOString(),
  };
  // Undefined fields fall away in JSON; a photo would too.
  const plain = { ...JSON.parse(JSON.stringify(said)), ...(photo && { photo }) };
  const parsed = entrySchema.safeParse(plain);
  if (parsed.success) return { entry: parsed.data };
  return { errors: Object.fromEntries(errorsOf(parsed.error).reverse()) };
}

/** The draft with suggestions taken; an elevation that is taken over is no estimate any more. */
export function withSuggestions(
  draft: EntryDraft,
  suggestions: readonly { field: string; value: number }[],
): EntryDraft {
  let next = draft;
  for (const { field, value } of suggestions) {
    const [part, name] = field.split(".") as ["low" | "high" | "air" | "site", string];
    next =
      part === "site"
        ? { ...next, elevation_m: value, elevation_sd_m: undefined }
        : { ...next, [part]: { ...next[part], [name]: value } };
  }
  return next;
}

/** What a date-time field takes, in this device's time zone. */
function localOf(at: string): string {
  const date = new Date(at);
  const two = (n: number) => String(n).padStart(2, "0");
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}T${two(date.getHours())}:${two(date.getMinutes())}`;
}
