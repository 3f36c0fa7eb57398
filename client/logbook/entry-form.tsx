import type { ComponentChildren } from "preact";
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { CO_READINGS } from "../../model/co-reading.ts";
import { ENDS, type End } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { slipsOfEntry } from "../app/heater/mistyped.ts";
import type { LogbookHeater } from "../app/records/entry.ts";
import { putRead } from "../app/records/last-meter.ts";
import { HighCo, highReading, highReadings } from "../share/high-co.tsx";
import { t } from "../texts/app.ts";
import { logbookWords } from "../texts/logbook.ts";
import { shareWords } from "../texts/share.ts";
import { AirFields } from "../ui/air-fields.tsx";
import { ChoiceField } from "../ui/choice-field.tsx";
import { estimateHint } from "../ui/estimate-hint.ts";
import { goToFirstMarked, hasUnread } from "../ui/first-marked.ts";
import { FoundField } from "../ui/found-field.tsx";
import { goToHeading } from "../ui/go-to.ts";
import { MeterKindField } from "../ui/meter-kind-field.tsx";
import { NumberField, useUnit } from "../ui/number-field.tsx";
import { PlaceSearch } from "../ui/place-search.tsx";
import { PositionButton } from "../ui/position-button.tsx";
import { reasonSentence } from "../ui/reason-sentence.tsx";
import { Slips, useSeen } from "../ui/slips.tsx";
import { type EndDraft, type EntryDraft, entryOf, withSuggestions } from "./draft.ts";
import { scaledDown } from "./photo.ts";
import type { Doing } from "./use-doing.tsx";

const words = logbookWords.entry;

interface Fields {
  draft: EntryDraft;
  change: (part: Partial<EntryDraft>) => void;
  errorOf: (field: string) => ComponentChildren;
}

/** A tune, a cleaning or a note, new or changed; a slip must be seen before it can be kept. */
export function LogbookEntryForm(props: {
  fit: PublishedFit;
  heater: LogbookHeater;
  draft: EntryDraft;
  onDraft: (draft: EntryDraft) => void;
  doing: Doing;
  onDone: () => void;
}) {
  const { fit, heater, draft, onDraft, doing, onDone } = props;
  const [tried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => goToHeading(heading.current), []);
  const now = entryOf(draft, new Date());
  // Judged at every change once keeping was tried: what is put right is marked no more.
  const errors: Record<string, string> = tried && "errors" in now ? now.errors : {};
  // By what answers leave out, no more: the place may be Start's still, and the tune found elsewhere.
  const slips = "entry" in now ? slipsOfEntry(now.entry, heater.heat_kW, { fit }) : [];
  const { unseen, see } = useSeen(slips);
  const slipOf = (field: string) => slips.find((slip) => slip.field === field);
  const fields: Fields = {
    draft,
    change: (part) => onDraft({ ...draft, ...part }),
    errorOf: (field) => {
      const slip = slipOf(field);
      return errors[field] ?? (slip && reasonSentence(slip));
    },
  };
  const keep = async () => {
    const made = entryOf(draft, new Date());
    setTried(true);
    see();
    if ("errors" in made || unseen || hasUnread(form.current)) return goToFirstMarked(form.current);
    const kept = await doing(async () => {
      await putRead(made.entry);
      return { text: slips.length > 0 ? words.keptAside : words.kept };
    });
    if (kept) onDone();
  };
  const isTune = draft.kind === "tune";
  return (
    <section class="sheet" aria-labelledby="entry-form">
      <h2 id="entry-form" tabIndex={-1} ref={heading}>
        {words.newTitle[draft.kind]}
      </h2>
      <form
        ref={form}
        noValidate
        onSubmit={(e) => {
          e.preventDefault();
          void keep();
        }}
      >
        <div class="columns">
          <WhenFields {...fields} />
        </div>
        {isTune && (
          <>
            <fieldset class="columns">
              <legend>{words.site}</legend>
              <SiteFields {...fields} />
            </fieldset>
            <fieldset class="columns">
              <legend>{t.air.tunedTitle}</legend>
              <AirFields
                form="logbook"
                air={draft.air}
                elevation_m={draft.elevation_m}
                onAir={(air) => fields.change({ air })}
                errorOf={fields.errorOf}
              />
            </fieldset>
            <div class="columns">
              {ENDS.map((end) => (
                <EndFields key={end} end={end} {...fields} />
              ))}
            </div>
            <div aria-live="polite">
              <HighCo
                advice={highReadings({ low: reading(draft.low), high: reading(draft.high) })}
              />
            </div>
            <FoundField value={draft.found} onValue={(found) => fields.change({ found })} />
            <fieldset class="columns">
              <legend>{words.meter}</legend>
              <MeterFields {...fields} />
            </fieldset>
          </>
        )}
        <WordsAndPhoto {...fields} />
        <Slips
          title={words.looks}
          anyway={words.anyway}
          slips={slips}
          onUse={(suggestions) => onDraft(withSuggestions(draft, suggestions))}
        />
        {Object.keys(errors).length > 0 && (
          <p class="error" role="alert">
            {words.fix}
          </p>
        )}
        <div class="row">
          <button type="submit" class="main">
            {slips.length > 0 && !unseen ? words.saveAsIs : words.save}
          </button>
          <button type="button" onClick={onDone}>
            {words.cancel}
          </button>
        </div>
      </form>
    </section>
  );
}

function WhenFields({ draft, change, errorOf }: Fields) {
  return (
    <>
      <Labelled id="entry-at" label={words.at} error={errorOf("at")}>
        <input
          id="entry-at"
          name="at"
          type="datetime-local"
          value={draft.at_local}
          aria-invalid={errorOf("at") ? "true" : undefined}
          aria-describedby={errorOf("at") ? "entry-at-note" : undefined}
          onInput={(e) => change({ at_local: e.currentTarget.value })}
        />
      </Labelled>
      <NumberField
        label={words.hours}
        field="hours"
        value={draft.hours}
        onValue={(hours) => change({ hours })}
        hint={words.hoursWhy}
        error={errorOf("hours")}
      />
      <NumberField
        label={words.fuel}
        field="fuel_L"
        value={draft.fuel_L}
        onValue={(fuel_L) => change({ fuel_L })}
        error={errorOf("fuel_L")}
      />
    </>
  );
}

function SiteFields({ draft, change, errorOf }: Fields) {
  const [unit, chooseUnit] = useUnit("elevation", "logbook.elevation");
  return (
    <>
      <PlaceSearch
        chosen={draft.place}
        unit={unit}
        onPlace={(found, name) =>
          change({
            place: name,
            lat: found.lat,
            lon: found.lon,
            ...(found.elevation_m !== null && {
              elevation_m: found.elevation_m,
              elevation_sd_m: found.elevation_sd_m ?? undefined,
            }),
          })
        }
      />
      <NumberField
        label={t.site.elevation}
        field="site.elevation_m"
        quantity="elevation"
        unit={unit}
        onUnit={chooseUnit}
        value={draft.elevation_m}
        onValue={(elevation_m) => change({ elevation_m, elevation_sd_m: undefined })}
        hint={estimateHint(draft.elevation_sd_m, unit)}
        error={errorOf("site.elevation_m")}
      />
      <PositionButton
        onPosition={({ lat, lon, elevation_m, sd_m }) =>
          change({
            place: shareWords.thisPosition,
            lat,
            lon,
            elevation_m: Math.round(elevation_m),
            elevation_sd_m: sd_m,
          })
        }
      />
    </>
  );
}

/** A draft's reading under the name of its kind. */
const reading = (end: EndDraft) => ({ [end.reading]: end.ppm });

function EndFields({ end, draft, change, errorOf }: Fields & { end: End }) {
  const values = draft[end];
  const [high] = highReadings({ [end]: reading(values) });
  const set = (part: Partial<EndDraft>) => change({ [end]: { ...values, ...part } });
  return (
    <fieldset>
      <legend>{t[end]}</legend>
      <NumberField
        label={shareWords.pump}
        field={`${end}.pump_Hz`}
        value={values.pump_Hz}
        onValue={(pump_Hz) => set({ pump_Hz })}
        error={errorOf(`${end}.pump_Hz`)}
      />
      <NumberField
        label={shareWords.fan}
        field={`${end}.fan_rpm`}
        value={values.fan_rpm}
        onValue={(fan_rpm) => set({ fan_rpm })}
        error={errorOf(`${end}.fan_rpm`)}
      />
      <ChoiceField
        label={words.reading}
        name={`${end}.reading`}
        value={values.reading}
        options={CO_READINGS.map((kind) => [kind, words.readings[kind]] as const)}
        onValue={(reading) => set({ reading })}
      />
      <NumberField
        label={words.readingOf[values.reading]}
        hint={high && <strong>{highReading(high)}</strong>}
        field={`${end}.ppm`}
        value={values.ppm}
        onValue={(ppm) => set({ ppm })}
        error={errorOf(`${end}.${values.reading}`) ?? errorOf(`${end}.co_ppm`)}
      />
      <NumberField
        label={shareWords.power}
        field={`${end}.power`}
        value={values.power}
        onValue={(power) => set({ power })}
        error={errorOf(`${end}.power`)}
      />
    </fieldset>
  );
}

function MeterFields({ draft, change, errorOf }: Fields) {
  const { meter } = draft;
  return (
    <>
      <p class="hint wide">{words.meterWhy}</p>
      <MeterKindField
        value={meter.kind}
        onValue={(kind) => change({ meter: { ...meter, kind } })}
      />
      <NumberField
        label={shareWords.meterDistance}
        field="meter.distance_m"
        value={meter.distance_m}
        onValue={(distance_m) => change({ meter: { ...meter, distance_m } })}
        error={errorOf("meter.distance_m")}
      />
      <Labelled id="entry-meter-name" label={words.meterName} error={errorOf("meter.name")}>
        <input
          id="entry-meter-name"
          name="meter.name"
          type="text"
          autoComplete="off"
          maxLength={80}
          value={meter.name ?? ""}
          onInput={(e) => change({ meter: { ...meter, name: e.currentTarget.value || undefined } })}
        />
      </Labelled>
    </>
  );
}

function WordsAndPhoto({ draft, change, errorOf }: Fields) {
  const [bad, setBad] = useState(false);
  const take = async (file: File | undefined) => {
    if (!file) return;
    try {
      const photo = await scaledDown(file);
      change({ photo });
      setBad(false);
    } catch {
      setBad(true);
    }
  };
  return (
    <>
      <Labelled id="entry-notes" label={words.notes} error={errorOf("notes")}>
        <textarea
          id="entry-notes"
          name="notes"
          rows={3}
          maxLength={10_000}
          value={draft.notes}
          onInput={(e) => change({ notes: e.currentTarget.value })}
        />
      </Labelled>
      <Labelled
        id="entry-photo"
        label={words.photo}
        hint={words.photoHint}
        error={bad ? words.photoBad : errorOf("photo")}
      >
        <input
          id="entry-photo"
          name="photo"
          type="file"
          accept="image/*"
          aria-describedby="entry-photo-note"
          onChange={(e) => void take(e.currentTarget.files?.[0])}
        />
      </Labelled>
      {draft.photo && (
        <button
          type="button"
          onClick={() => {
            change({ photo: undefined });
            setBad(false);
          }}
        >
          {words.photoDrop}
        </button>
      )}
    </>
  );
}

function Labelled(props: {
  id: string;
  label: string;
  hint?: string;
  error?: ComponentChildren;
  children: ComponentChildren;
}) {
  const { id, label, hint, error, children } = props;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {children}
      {(error || hint) && (
        <p id={`${id}-note`} class={error ? "error" : "hint"}>
          {error ?? hint}
        </p>
      )}
    </div>
  );
}
