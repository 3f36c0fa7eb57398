import type { End } from "../../model/end.ts";
import { t } from "../texts/app.ts";
import { shareWords } from "../texts/share.ts";
import { NumberField } from "../ui/number-field.tsx";
import { readingOf, USUAL_FLOOR_ppm, withValue } from "./draft.ts";
import { highReading, highReadings } from "./high-co.tsx";
import type { TuneForm } from "./use-tune-form.tsx";

/** What was set at one end, and what the meter showed there. */
export function EndFields({ end, form }: { end: End; form: TuneForm }) {
  const { draft, setDraft, errorOf } = form;
  const values = draft[end];
  const field = (name: "pump_Hz" | "fan_rpm" | "co_ppm" | "co_below_ppm" | "power") => ({
    field: `${end}.${name}`,
    value: values[name],
    onValue: (value: number | undefined) => setDraft(withValue(draft, `${end}.${name}`, value)),
    error: errorOf(`${end}.${name}`),
  });
  const [high] = highReadings({ [end]: readingOf(values) });
  const floor = { ...field("co_below_ppm") };
  return (
    <fieldset>
      <legend>{t[end]}</legend>
      <NumberField label={shareWords.pump} {...field("pump_Hz")} />
      <NumberField label={shareWords.fan} {...field("fan_rpm")} />
      {values.nothing_shown ? (
        <NumberField
          key="floor"
          label={shareWords.coFloor}
          {...floor}
          error={floor.error ?? errorOf(`${end}.co_ppm`)}
        />
      ) : (
        <NumberField
          key="reading"
          label={shareWords.co}
          {...field("co_ppm")}
          hint={high ? <strong>{highReading(high)}</strong> : shareWords.coHint}
        />
      )}
      <label class="check">
        <input
          type="checkbox"
          name={`${end}.nothing_shown`}
          checked={values.nothing_shown}
          onChange={(e) =>
            setDraft({
              ...draft,
              [end]: {
                ...values,
                nothing_shown: e.currentTarget.checked,
                co_below_ppm: values.co_below_ppm ?? USUAL_FLOOR_ppm,
              },
            })
          }
        />
        {shareWords.coBelow}
      </label>
      <NumberField label={shareWords.power} {...field("power")} />
    </fieldset>
  );
}
