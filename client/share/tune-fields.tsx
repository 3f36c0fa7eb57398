import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { ENDS } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { t } from "../texts/app.ts";
import { heaterWords } from "../texts/heater.ts";
import { shareWords } from "../texts/share.ts";
import { AirFields } from "../ui/air-fields.tsx";
import { goToFirstMarked, hasUnread } from "../ui/first-marked.ts";
import { FoundField } from "../ui/found-field.tsx";
import { classesOf } from "../ui/heat-class-field.tsx";
import { Slips, useSeen } from "../ui/slips.tsx";
import { allThatWentWrong } from "../ui/went-wrong.tsx";
import { readingOf, withValues } from "./draft.ts";
import { EndFields } from "./end-fields.tsx";
import { HeaterFields, MeterFields } from "./heater-fields.tsx";
import { HighCo, highReadings } from "./high-co.tsx";
import { SiteFields } from "./site-fields.tsx";
import type { TuneForm } from "./use-tune-form.tsx";

interface TuneFieldsProps {
  form: TuneForm;
  fit: PublishedFit;
  revising: boolean;
  /** What is known of it is not asked again. */
  mine: MyHeater | null | undefined;
  onSend: () => Promise<void>;
  onCancel: () => void;
}

/** The form: what was done, checked while typing; a slip must be seen before it can be sent. */
export function TuneFields({ form, fit, revising, mine, onSend, onCancel }: TuneFieldsProps) {
  const { draft, setDraft, judged, errorOf, showMissing } = form;
  const [consent, setConsent] = useState(false);
  const [tried, setTried] = useState(false);
  const [sending, setSending] = useState(false);
  const [problem, setProblem] = useState<ComponentChildren[]>([]);
  const element = useRef<HTMLFormElement>(null);
  const { unseen, see } = useSeen(judged.slips);
  const ready = judged.tune !== null && consent;

  // What the atlas refused was another tune than the one that stands here now.
  useEffect(() => setProblem([]), [draft]);

  const submit = async () => {
    setTried(true);
    showMissing(true);
    see();
    if (!ready || unseen || hasUnread(element.current)) return goToFirstMarked(element.current);
    setSending(true);
    setProblem([]);
    try {
      await onSend();
      setTried(false);
      setConsent(false);
      showMissing(false);
    } catch (error) {
      setProblem(allThatWentWrong(error));
    }
    setSending(false);
  };
  return (
    <form
      ref={element}
      noValidate
      onSubmit={(e) => {
        e.preventDefault();
        if (!sending) void submit();
      }}
    >
      <fieldset class="columns">
        <legend>{shareWords.whereTuned}</legend>
        <SiteFields form={form} />
      </fieldset>
      <fieldset class="columns">
        <legend>{t.air.tunedTitle}</legend>
        <AirFields
          form="share"
          air={draft.air}
          elevation_m={draft.site.elevation_m}
          onAir={(air) => setDraft({ ...draft, air })}
          errorOf={errorOf}
        />
      </fieldset>
      <fieldset class="columns">
        <legend>{t.heater.title}</legend>
        {mine ? (
          <p class="note wide">{heaterWords.fromMine(mine.heater.name)}</p>
        ) : (
          <HeaterFields form={form} classes={classesOf(fit, draft.heater.heat_kW)} />
        )}
      </fieldset>
      <div class="columns">
        {ENDS.map((end) => (
          <EndFields key={end} end={end} form={form} />
        ))}
      </div>
      <div aria-live="polite">
        <HighCo advice={highReadings({ low: readingOf(draft.low), high: readingOf(draft.high) })} />
      </div>
      <FoundField value={draft.found} onValue={(found) => setDraft({ ...draft, found })} />
      <fieldset class="columns">
        <legend>{shareWords.meter}</legend>
        <MeterFields form={form} />
      </fieldset>
      <Slips
        title={shareWords.slips}
        anyway={shareWords.sendAnyway}
        slips={judged.slips}
        onUse={(suggestions) => setDraft(withValues(draft, suggestions))}
      />
      <label class="check">
        <input
          type="checkbox"
          name="consent"
          checked={consent}
          aria-invalid={tried && !consent ? "true" : undefined}
          onChange={(e) => setConsent(e.currentTarget.checked)}
        />
        {shareWords.consent}
      </label>
      {tried && !consent && <p class="error">{shareWords.needConsent}</p>}
      {tried && judged.tune === null && <p class="error">{shareWords.fix}</p>}
      {problem.length > 0 && (
        <div class="error" role="alert">
          {problem.map((line, i) => (
            <p key={i}>{line}</p>
          ))}
          <p>{shareWords.keptForm}</p>
        </div>
      )}
      <p class="note">{shareWords.acceptedMeans}</p>
      <div class="row">
        <button type="submit" class="main" aria-disabled={sending}>
          {sending
            ? shareWords.sending
            : judged.slips.length > 0 && !unseen
              ? shareWords.sendAsIs
              : revising
                ? shareWords.sendRevision
                : shareWords.send}
        </button>
        {revising && (
          <button type="button" onClick={onCancel}>
            {shareWords.cancelRevision}
          </button>
        )}
      </div>
    </form>
  );
}
