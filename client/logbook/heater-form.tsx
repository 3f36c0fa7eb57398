import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { USUAL_CLASS_kW } from "../../model/heater.ts";
import { screenDose } from "../../model/screen/bounds.ts";
import type { LogbookHeater } from "../app/records/entry.ts";
import { errorsOf, heaterSchema } from "../app/records/schema.ts";
import { putHeater } from "../app/records/store.ts";
import { randomText } from "../base/random.ts";
import { heaterWords } from "../texts/heater.ts";
import { logbookWords } from "../texts/logbook.ts";
import { goToFirstMarked, hasUnread } from "../ui/first-marked.ts";
import { classesOf, HeatClassField } from "../ui/heat-class-field.tsx";
import { NumberField } from "../ui/number-field.tsx";
import { reasonSentence } from "../ui/reason-sentence.tsx";
import { Slips, useSeen } from "../ui/slips.tsx";
import { format } from "../units.ts";
import type { Doing } from "./use-doing.tsx";

const words = logbookWords.heater;

/** Figures a heater may have, all of them optional. */
const FIGURES = [
  ["dose_uL", words.dose],
  ["low_fan_rpm", words.lowFan],
  ["high_fan_rpm", words.highFan],
  ["supply_V", words.supply],
  ["tank_L", words.tank],
  ["step_Hz", heaterWords.step],
  ["step_rpm", heaterWords.fanStep],
  ["hours", words.hours],
] as const;

/** A heater not named yet. */
export function newHeater(): LogbookHeater {
  return { id: randomText(), name: "", heat_kW: USUAL_CLASS_kW, changed_at: "" };
}

/** A heater's facts, new or changed. */
export function HeaterForm(props: {
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
  useLayoutEffect(() => name.current?.focus(), []);
  const parsed = heaterSchema.safeParse({
    ...JSON.parse(JSON.stringify(draft)),
    name: draft.name.trim(),
    changed_at: new Date().toISOString(),
  });
  // Judged at every change once keeping was tried: what is put right is marked no more.
  const errors: Record<string, string> =
    tried && !parsed.success ? Object.fromEntries(errorsOf(parsed.error)) : {};
  // A dose in mL must be seen before it is kept: every tune of this heater is read with it.
  const slips = screenDose(draft.dose_uL);
  const { unseen, see } = useSeen(slips);
  const errorOf = (field: (typeof FIGURES)[number][0]) => {
    const [slip] = field === "dose_uL" ? slips : [];
    if (slip) return reasonSentence(slip);
    const error = errors[field];
    return error && `${format(draft[field] ?? 0, field === "step_Hz" ? 3 : 1)} ${error}.`;
  };
  const keep = async () => {
    setTried(true);
    see();
    if (!parsed.success || unseen || hasUnread(form.current)) return goToFirstMarked(form.current);
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
          error={errorOf(field)}
        />
      ))}
      <div class="wide">
        <Slips
          title={logbookWords.entry.looks}
          anyway={logbookWords.entry.anyway}
          slips={slips}
          onUse={([dose]) => dose && onDraft({ ...draft, dose_uL: dose.value })}
        />
      </div>
      <div class="row wide">
        <button type="submit" class="main">
          {parsed.success && slips.length > 0 && !unseen ? logbookWords.entry.saveAsIs : words.save}
        </button>
        <button type="button" onClick={() => onDraft(null)}>
          {logbookWords.entry.cancel}
        </button>
      </div>
    </form>
  );
}
