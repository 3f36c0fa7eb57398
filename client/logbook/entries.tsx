import { useEffect, useRef, useState } from "preact/hooks";
import { ENDS } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { LogbookEntry, LogbookHeater, LoggedEnd } from "../app/records/entry.ts";
import { putEntry, removeEntry } from "../app/records/store.ts";
import { locale } from "../language.ts";
import { HighCo, highReadings } from "../share/high-co.tsx";
import { t } from "../texts/app.ts";
import { heaterWords } from "../texts/heater.ts";
import { logbookWords } from "../texts/logbook.ts";
import { coInPpm } from "../ui/co-text.ts";
import { format, formatFineRate, formatIn, formatRate, UNITS } from "../units.ts";
import { densityOf } from "./density.ts";
import { draftOfEntry, type EntryDraft } from "./draft.ts";
import { LogbookShare } from "./share-button.tsx";
import type { Doing } from "./use-doing.tsx";

const words = logbookWords.entry;
const when = new Intl.DateTimeFormat(locale, { dateStyle: "medium", timeStyle: "short" });

/** The entry whose form was closed: its reader goes on there, or where new ones begin if it was not kept. */
export interface Landing {
  on: string;
}

interface EntriesProps {
  entries: readonly LogbookEntry[];
  heater: LogbookHeater;
  /** Keys of tunes that were to be shared and are nowhere any more. */
  gone: ReadonlySet<string>;
  fit: PublishedFit;
  doing: Doing;
  onShared: () => void;
  editing: string | undefined;
  onEdit: (draft: EntryDraft) => void;
  landing: Landing | null;
  onLanded: () => void;
}

/** A heater's entries, the newest first. */
export function LogbookEntries(props: EntriesProps) {
  const { entries, landing, onLanded } = props;
  const newestFirst = [...entries].reverse();
  const section = useRef<HTMLElement>(null);
  // A new entry comes a moment after its form is gone.
  useEffect(() => {
    if (!landing || !entries.some(({ id }) => id === landing.on)) return;
    const entry = section.current?.querySelector<HTMLElement>(`[data-entry="${landing.on}"]`);
    entry?.scrollIntoView({ block: "nearest" });
    entry?.querySelector("h3")?.focus({ preventScroll: true });
    onLanded();
  }, [landing, entries]);
  return (
    <section class="sheet" aria-labelledby="entries" ref={section}>
      <h2 id="entries">{words.title}</h2>
      {newestFirst.length === 0 && <p>{words.none}</p>}
      <ul class="entries">
        {newestFirst.map((entry) => (
          <Entry key={entry.id} entry={entry} {...props} />
        ))}
      </ul>
    </section>
  );
}

function Entry(props: EntriesProps & { entry: LogbookEntry }) {
  const { entry, heater, gone, fit, doing, onShared, editing, onEdit } = props;
  const { site, low, high } = entry;
  const title = `${logbookWords.kinds[entry.kind]}, ${when.format(new Date(entry.at))}`;
  const remove = () =>
    void doing(async () => {
      await removeEntry(entry.id);
      return { text: words.removed(title), undo: () => putEntry(entry) };
    });
  return (
    <li data-kind={entry.kind} data-entry={entry.id}>
      <h3 tabIndex={-1}>{title}</h3>
      <p>{aboutLine(entry)}</p>
      {low && high && (
        <dl class="ends-line">
          {ENDS.map((end) => (
            <div key={end}>
              <dt>{t[end]}</dt>
              <dd>{endLine(end === "low" ? low : high)}</dd>
            </div>
          ))}
        </dl>
      )}
      <HighCo advice={highReadings({ low, high })} />
      {entry.notes && <p class="notes">{entry.notes}</p>}
      {entry.photo && <Photo photo={entry.photo} alt={words.photoAlt(title)} />}
      {editing !== entry.id && (
        <div class="row">
          <button
            type="button"
            aria-label={words.editThis(title)}
            onClick={() => onEdit(draftOfEntry(entry))}
          >
            {words.edit}
          </button>
          <button type="button" aria-label={words.removeThis(title)} onClick={remove}>
            {words.remove}
          </button>
        </div>
      )}
      {entry.kind === "tune" && site && (
        <LogbookShare {...{ entry, heater, gone, fit, title, doing, onShared }} />
      )}
    </li>
  );
}

/** Place, air, hours, fuel and meter, as far as they are known. */
function aboutLine(entry: LogbookEntry): string {
  const { site, air, hours, fuel_L, meter } = entry;
  const density = densityOf(entry);
  const kind = meter?.name ?? (meter?.kind && heaterWords.meterKinds[meter.kind]);
  return [
    site?.place,
    site && formatIn(site.elevation_m, UNITS.elevation[0]),
    air?.temperature_C !== undefined && formatIn(air.temperature_C, UNITS.temperature[0]),
    density !== undefined && words.density(format(density, 3)),
    hours !== undefined && words.atHours(format(hours, hours % 1 ? 1 : 0)),
    fuel_L !== undefined && words.fuelLine(format(fuel_L, 1)),
    kind && meter?.distance_m !== undefined
      ? words.meterLine(kind, format(meter.distance_m, 2))
      : kind,
  ]
    .filter(Boolean)
    .join(" · ");
}

function endLine({ pump_Hz, fan_rpm, power, sweep, ...reading }: LoggedEnd): string {
  return [
    words.setTo(formatRate(pump_Hz), format(fan_rpm)),
    coInPpm(reading),
    power !== undefined && words.power(format(power, power % 1 ? 1 : 0)),
    sweep &&
      words.swept(
        formatFineRate(sweep.minimum_Hz),
        formatFineRate(sweep.lower_Hz),
        formatFineRate(sweep.upper_Hz),
      ),
  ]
    .filter(Boolean)
    .join(", ");
}

function Photo({ photo, alt }: { photo: Blob; alt: string }) {
  const [source, setSource] = useState<string>();
  useEffect(() => {
    const made = URL.createObjectURL(photo);
    setSource(made);
    return () => URL.revokeObjectURL(made);
  }, [photo]);
  return source ? <img class="photo" src={source} alt={alt} /> : null;
}
