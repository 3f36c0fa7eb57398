import { useEffect, useRef, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { USUAL_CLASS_kW } from "../../model/heater.ts";
import type { Logbook, LogbookHeater } from "../logbook/entry.ts";
import { errorsOf, heaterSchema } from "../logbook/schema.ts";
import { putAll, putHeater, removeHeater } from "../logbook/store.ts";
import { ChoiceField } from "../parts/choice-field.tsx";
import { goToFirstMarked, hasUnread } from "../parts/first-marked.ts";
import { classesOf, HeatClassField } from "../parts/heat-class-field.tsx";
import { NumberField } from "../parts/number-field.tsx";
import { randomText } from "../share/random.ts";
import { t } from "../texts/app.ts";
import { logbookWords } from "../texts/logbook.ts";
import { shareWords } from "../texts/share.ts";
import { format } from "../units.ts";
import type { Doing } from "./logbook.tsx";

const words = logbookWords.heater;

/** Which heater; add, change, remove. */
export function LogbookHeaters(props: {
  book: Logbook;
  fit: PublishedFit;
  chosen: LogbookHeater | undefined;
  choose: (id: string) => void;
  doing: Doing;
}) {
  const { book, fit, chosen, choose, doing } = props;
  const [draft, setDraft] = useState<LogbookHeater | null>(null);
  const [asked, setAsked] = useState<string | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const entries = book.entries.filter(({ heater_id }) => heater_id === chosen?.id);
  const remove = (heater: LogbookHeater) =>
    doing(async () => {
      await removeHeater(heater.id);
      setAsked(null);
      return {
        text: words.removed(heater.name),
        undo: () => putAll({ heaters: [heater], entries }),
      };
    });
  return (
    <section class="sheet" aria-labelledby="heaters">
      <h2 id="heaters" tabIndex={-1} ref={heading}>
        {words.title}
      </h2>
      {!chosen && !draft && <p>{logbookWords.empty}</p>}
      {chosen && (
        <ChoiceField
          label={words.choose}
          name="heater"
          value={chosen.id}
          options={book.heaters.map(
            ({ id, name, heat_kW }) => [id, `${name}, ${t.heater.heatOption(heat_kW)}`] as const,
          )}
          onValue={choose}
        />
      )}
      {draft ? (
        <HeaterForm
          draft={draft}
          fit={fit}
          doing={doing}
          onDraft={(next) => {
            setDraft(next);
            if (next === null) heading.current?.focus();
          }}
          onKept={(id) => {
            setDraft(null);
            heading.current?.focus();
            choose(id);
          }}
        />
      ) : (
        <div class="row">
          <button
            type="button"
            class={chosen ? undefined : "main"}
            onClick={() =>
              setDraft({ id: randomText(), name: "", heat_kW: USUAL_CLASS_kW, changed_at: "" })
            }
          >
            {words.add}
          </button>
          {chosen && (
            <>
              <button type="button" onClick={() => setDraft(chosen)}>
                {words.edit}
              </button>
              {asked === chosen.id ? (
                <>
                  <button type="button" class="danger" onClick={() => void remove(chosen)}>
                    {words.removeSure(entries.length)}
                  </button>
                  <button type="button" onClick={() => setAsked(null)}>
                    {shareWords.keep}
                  </button>
                </>
              ) : (
                <button type="button" onClick={() => setAsked(chosen.id)}>
                  {words.remove}
                </button>
              )}
            </>
          )}
        </div>
      )}
    </section>
  );
}

/** Figures a heater may have, all of them optional. */
const FIGURES = [
  ["dose_uL", words.dose],
  ["low_fan_rpm", words.lowFan],
  ["high_fan_rpm", words.highFan],
  ["supply_V", words.supply],
  ["tank_L", words.tank],
  ["hours", words.hours],
] as const;

function HeaterForm(props: {
  draft: LogbookHeater;
  fit: PublishedFit;
  doing: Doing;
  onDraft: (draft: LogbookHeater | null) => void;
  onKept: (id: string) => void;
}) {
  const { draft, fit, doing, onDraft, onKept } = props;
  const [tried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const name = useRef<HTMLInputElement>(null);
  // Its button is gone; the form begins with the name.
  useEffect(() => name.current?.focus(), []);
  const parsed = heaterSchema.safeParse({
    ...JSON.parse(JSON.stringify(draft)),
    name: draft.name.trim(),
    changed_at: new Date().toISOString(),
  });
  // Judged at every change once keeping was tried: what is put right is marked no more.
  const errors: Record<string, string> =
    tried && !parsed.success ? Object.fromEntries(errorsOf(parsed.error)) : {};
  const keep = async () => {
    setTried(true);
    if (!parsed.success || hasUnread(form.current)) return goToFirstMarked(form.current);
    const kept = await doing(async () => {
      await putHeater(parsed.data);
      return { text: logbookWords.entry.kept };
    });
    if (kept) onKept(draft.id);
  };
  return (
    <form
      ref={form}
      noValidate
      class="columns"
      onSubmit={(e) => {
        e.preventDefault();
        void keep();
      }}
    >
      <div class="field">
        <label for="heater-name">{words.name}</label>
        <input
          id="heater-name"
          ref={name}
          name="heater.name"
          type="text"
          autoComplete="off"
          value={draft.name}
          aria-invalid={errors.name ? "true" : undefined}
          aria-describedby={errors.name ? "heater-name-note" : undefined}
          onInput={(e) => onDraft({ ...draft, name: e.currentTarget.value })}
        />
        {errors.name && (
          <p id="heater-name-note" class="error">
            {errors.name}
          </p>
        )}
      </div>
      <HeatClassField
        id="heater-class"
        value={draft.heat_kW}
        classes={classesOf(fit, draft.heat_kW)}
        onValue={(heat_kW) => onDraft({ ...draft, heat_kW })}
      />
      {FIGURES.map(([field, label]) => (
        <NumberField
          key={field}
          label={label}
          field={`heater.${field}`}
          value={draft[field]}
          onValue={(value) => onDraft({ ...draft, [field]: value })}
          error={errors[field] && `${format(draft[field] ?? 0, 1)} ${errors[field]}.`}
        />
      ))}
      <div class="row wide">
        <button type="submit" class="main">
          {words.save}
        </button>
        <button type="button" onClick={() => onDraft(null)}>
          {logbookWords.entry.cancel}
        </button>
      </div>
    </form>
  );
}
