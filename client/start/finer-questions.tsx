import { usualFans } from "../../model/heater.ts";
import type { Question } from "../base/question.ts";
import { t } from "../texts/app.ts";
import { finerAir } from "../texts/finer-air.ts";
import { PressureFields } from "../ui/air-fields.tsx";
import { NumberField } from "../ui/number-field.tsx";

interface FinerProps {
  question: Question;
  /** Whether fans and dose come with a heater chosen elsewhere. */
  isMine: boolean;
  change: (part: Partial<Question>) => void;
}

/** What an answer can do without: pressure and humidity; fans and dose where no heater says them. */
export function FinerQuestions({ question, isMine, change }: FinerProps) {
  return (
    <details class="sheet finer">
      <summary>{t.answer.finer}</summary>
      <div class="fields">
        <p class="hint wide">{finerAir.temperatureWhy}</p>
        <PressureFields
          form="atlas"
          air={question.air}
          elevation_m={question.site.elevation_m}
          onAir={(air) => change({ air })}
        />
        {!isMine && <HeaterFields question={question} change={change} />}
      </div>
    </details>
  );
}

/** Own fan speeds and dose; the size's usual fans stand in their place until then. */
function HeaterFields({ question, change }: Omit<FinerProps, "isMine">) {
  const usual = usualFans(question.heat_kW);
  return (
    <>
      <p class="hint wide">{t.heater.fanWhy}</p>
      <NumberField
        label={t.heater.lowFan}
        field="low.fan_rpm"
        value={question.low_fan_rpm}
        onValue={(low_fan_rpm) => change({ low_fan_rpm })}
        placeholder={String(usual.low_fan_rpm)}
      />
      <NumberField
        label={t.heater.highFan}
        field="high.fan_rpm"
        value={question.high_fan_rpm}
        onValue={(high_fan_rpm) => change({ high_fan_rpm })}
        placeholder={String(usual.high_fan_rpm)}
      />
      <NumberField
        label={t.heater.dose}
        field="heater.dose_uL"
        value={question.dose_uL}
        onValue={(dose_uL) => change({ dose_uL })}
        hint={t.heater.doseWhy}
      />
    </>
  );
}
