import { finalCoOf, isFinalCo } from "../../../model/co-reading.ts";
import type { PublishedFit } from "../../../model/fit/group.ts";
import type { OwnTune } from "../../../model/tune.ts";
import { recall, remember } from "../../base/remember.ts";
import type {
  HeaterSettings,
  Logbook,
  LogbookEntry,
  LogbookHeater,
  LoggedEnd,
  LoggedSite,
} from "../records/entry.ts";
import { logbook, onLogbookChange } from "../records/store.ts";
import { slipsOfEntry, slipsOfSettings } from "./mistyped.ts";

/** A heater of the logbook as every view takes it: its facts, its own tunes, and what it is set to. */
export interface MyHeater {
  /** With the fan speeds it is set to, where it was not told any, and the meter it was last read with. */
  heater: LogbookHeater;
  /** Found with a CO meter at both ends, newest first, at most {@link MOST_OWN_TUNES}. */
  own_tunes: OwnTune[];
  /** When each own tune was found, in the same order. */
  found_at: string[];
  /** How many of the own tunes had CO seen to rise on both sides; what looks mistyped is none of them. */
  bracketed: number;
  /** What it was last known to be set to: by its newest tune, or without a meter. Nothing that looks mistyped. */
  settings: HeaterSettings | undefined;
}

/** All heaters of the logbook, and the one chosen: null where there is none, or the average one was asked for. */
export interface MyHeaters {
  heaters: LogbookHeater[];
  mine: MyHeater | null;
}

/** The model takes no more of them (MOST_OWN_ROWS; tests compare). */
export const MOST_OWN_TUNES = 10;

/** Chosen in place of a heater: the average one, with the usual fans. */
export const NO_HEATER = "none";

const KEPT_AS = "logbook.heater";
const CHOSEN = "hypsotune-heater";

export function chooseHeater(id: string): void {
  remember(KEPT_AS, id);
  dispatchEvent(new Event(CHOSEN));
}

/** The heater chosen, or {@link NO_HEATER}, or nothing yet. */
export function chosenHeater(): string | undefined {
  return recall<string>(KEPT_AS);
}

/** Tells the chosen heater now, and again whenever it, its entries or the choice change. @returns what ends it */
export function followMyHeaters(fit: PublishedFit, tell: (now: MyHeaters) => void): () => void {
  let turn = 0;
  let ended = false;
  const look = async () => {
    turn += 1;
    const mine = turn;
    // Where storage is forbidden there is no heater; the logbook says so.
    const book = await logbook().catch((): Logbook => ({ heaters: [], entries: [] }));
    // A later look has begun: its answer is the one to tell.
    if (mine === turn && !ended) tell(myHeaters(book, chosenHeater(), fit));
  };
  const onChange = () => void look();
  onChange();
  const end = onLogbookChange(onChange);
  addEventListener(CHOSEN, onChange);
  // Chosen in another tab.
  addEventListener("storage", onChange);
  return () => {
    ended = true;
    end();
    removeEventListener(CHOSEN, onChange);
    removeEventListener("storage", onChange);
  };
}

/** The chosen one of a logbook's heaters; the first where none was chosen, or the chosen one is gone. */
export function myHeaters(
  { heaters, entries }: Logbook,
  chosen: string | undefined,
  fit: PublishedFit,
): MyHeaters {
  if (chosen === NO_HEATER) return { heaters, mine: null };
  const heater = heaters.find(({ id }) => id === chosen) ?? heaters[0];
  return { heaters, mine: heater ? myHeater(heater, entries, fit) : null };
}

function myHeater(
  heater: LogbookHeater,
  entries: readonly LogbookEntry[],
  fit: PublishedFit,
): MyHeater {
  const { heat_kW } = heater;
  const tunes = entries
    .filter(({ heater_id, kind }) => heater_id === heater.id && kind === "tune")
    .sort((p, q) => (p.at < q.at ? 1 : -1));
  const own = tunes.filter(isOwnTune).slice(0, MOST_OWN_TUNES);
  const isSound = (tune: LogbookEntry) => slipsOfEntry(tune, heat_kW, { fit }).length === 0;
  const given = heater.settings;
  const settings = newerOf(
    given && slipsOfSettings(given, heat_kW, { fit }).length === 0 ? given : undefined,
    tunes.find(isSound),
  );
  const { low_fan_rpm = settings?.low.fan_rpm, high_fan_rpm = settings?.high.fan_rpm } = heater;
  // Logbooks from before meters were kept with their heaters have them with their tunes.
  const meter = heater.meter ?? tunes.find((tune) => tune.meter)?.meter;
  return {
    heater: { ...heater, low_fan_rpm, high_fan_rpm, ...(meter && { meter }) },
    own_tunes: own.map(ownTuneOf),
    found_at: own.map(({ at }) => at),
    bracketed: own.filter((tune) => tune.found === "bracketed" && isSound(tune)).length,
    settings,
  };
}

interface FoundTune extends LogbookEntry {
  site: LoggedSite;
  low: LoggedEnd;
  high: LoggedEnd;
}

/** A CO at both ends, or a meter below its floor; off its scale no meter has found anything. */
function isOwnTune(entry: LogbookEntry): entry is FoundTune {
  const isRead = (end: LoggedEnd | undefined) => end !== undefined && isFinalCo(end);
  return entry.site !== undefined && isRead(entry.low) && isRead(entry.high);
}

function ownTuneOf({ site, air, low, high, at }: FoundTune): OwnTune {
  const end = ({ pump_Hz, fan_rpm, ...shown }: LoggedEnd) => ({
    pump_Hz,
    fan_rpm,
    ...finalCoOf(shown),
  });
  const { elevation_m, elevation_sd_m } = site;
  return {
    site: { elevation_m, ...(elevation_sd_m !== undefined && { elevation_sd_m }) },
    ...(air && { air }),
    low: end(low),
    high: end(high),
    tuned_on: at.slice(0, "2026-10".length),
  };
}

function newerOf(
  settings: HeaterSettings | undefined,
  tune: LogbookEntry | undefined,
): HeaterSettings | undefined {
  if (!tune?.low || !tune.high || (settings && settings.at >= tune.at)) return settings;
  const set = ({ pump_Hz, fan_rpm }: LoggedEnd) => ({ pump_Hz, fan_rpm });
  return { at: tune.at, low: set(tune.low), high: set(tune.high) };
}
