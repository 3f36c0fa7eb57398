import { t } from "../texts/app.ts";
import { shareWords } from "../texts/share.ts";
import { HeatClassField } from "../ui/heat-class-field.tsx";
import { MeterKindField } from "../ui/meter-kind-field.tsx";
import { NumberField } from "../ui/number-field.tsx";
import type { TuneForm } from "./use-tune-form.tsx";

/** The heater: its class, and what is known of pump and supply. */
export function HeaterFields({ form, classes }: { form: TuneForm; classes: number[] }) {
  const { draft, setDraft, errorOf } = form;
  const { heater } = draft;
  const change = (part: Partial<typeof heater>) =>
    setDraft({ ...draft, heater: { ...heater, ...part } });
  return (
    <>
      <HeatClassField
        id="share-heat"
        value={heater.heat_kW}
        classes={classes}
        onValue={(heat_kW) => change({ heat_kW })}
      />
      <NumberField
        label={t.heater.dose}
        field="heater.dose_uL"
        value={heater.dose_uL}
        onValue={(dose_uL) => change({ dose_uL })}
        hint={shareWords.doseHint}
        error={errorOf("heater.dose_uL")}
      />
      <NumberField
        label={shareWords.supply}
        field="heater.supply_V"
        value={heater.supply_V}
        onValue={(supply_V) => change({ supply_V })}
        error={errorOf("heater.supply_V")}
      />
    </>
  );
}

/** The meter, and when. */
export function MeterFields({ form }: { form: TuneForm }) {
  const { draft, setDraft, errorOf } = form;
  const { meter } = draft;
  const error = errorOf("tuned_on");
  return (
    <>
      <MeterKindField
        value={meter.kind}
        onValue={(kind) => setDraft({ ...draft, meter: { ...meter, kind } })}
      />
      <NumberField
        label={shareWords.meterDistance}
        field="meter.distance_m"
        value={meter.distance_m}
        onValue={(distance_m) => setDraft({ ...draft, meter: { ...meter, distance_m } })}
        error={errorOf("meter.distance_m")}
      />
      <div class="field">
        <label for="tuned-on">{shareWords.month}</label>
        <input
          id="tuned-on"
          name="tuned_on"
          type="text"
          spellcheck={false}
          autoComplete="off"
          placeholder="2026-10"
          value={draft.tuned_on ?? ""}
          aria-invalid={error ? "true" : undefined}
          aria-describedby="tuned-on-note"
          onInput={(e) => setDraft({ ...draft, tuned_on: e.currentTarget.value || undefined })}
        />
        <p id="tuned-on-note" class={error ? "error" : "hint"}>
          {error ?? shareWords.monthHint}
        </p>
      </div>
    </>
  );
}
