import { ENDS, type End } from "../../model/end.ts";
import type { EndSetting } from "../../model/mixture.ts";
import { type Steps, settablePairsOf } from "../../model/settable.ts";
import type { StartTune } from "../../model/start.ts";
import { t } from "../texts/app.ts";
import { BandDrawing } from "../ui/band-drawing.tsx";
import { format, formatFineRate, formatRate } from "../units.ts";
import { Certainty } from "./certainty.tsx";

/** A band's two rates as they are written. */
export const span = ({ lower, upper }: { lower: number; upper: number }) =>
  [formatFineRate(lower), formatFineRate(upper)] as const;

interface AnswerProps {
  tune: StartTune;
  /** What the heater's controller can be set in. */
  steps: Steps;
  /** What the heater is set to. */
  now?: Record<End, EndSetting> | undefined;
}

/** The starting settings: both ends side by side, in what can be set, each inside its bands. */
export function Answer(props: AnswerProps) {
  return (
    <div class="answer">
      <div class="ends">
        {ENDS.map((end) => (
          <EndAnswer key={end} end={end} {...props} />
        ))}
      </div>
      <Certainty tune={props.tune} />
    </div>
  );
}

function EndAnswer({ end, tune, steps, now }: AnswerProps & { end: End }) {
  const answer = tune[end];
  const [inner] = answer.new_heater_bands_Hz;
  const { pump_Hz_exact, fan_rpm } = answer;
  const [first, second] = settablePairsOf(tune, end, steps);
  if (!first || !inner) return null;
  const rate = (pump_Hz: number) => formatRate(pump_Hz, steps.step_Hz);
  return (
    <section class="end" aria-labelledby={`answer-${end}`} data-end={end}>
      <h3 id={`answer-${end}`}>{t[end]}</h3>
      <p class="rate">
        <output data-value={pump_Hz_exact}>{rate(first.pump_Hz)}</output> Hz
      </p>
      <p class="fan">{t.answer.fanAt(format(first.fan_rpm))}</p>
      {second && <p class="note">{t.answer.or(rate(second.pump_Hz), format(second.fan_rpm))}</p>}
      <p class="visually-hidden" aria-live="polite">
        {t.answer.spoken(
          t.endWord[end],
          rate(first.pump_Hz),
          format(inner.level * 10),
          ...span(inner),
        )}
      </p>
      <BandDrawing answer={answer} now_Hz={now && atFan(now[end], fan_rpm)} />
      <p class="times">{span(inner).join("–")} Hz</p>
    </section>
  );
}

/** The rate that makes the same mixture at another fan speed, Hz. */
function atFan(setting: EndSetting, fan_rpm: number): number {
  return (setting.pump_Hz * fan_rpm) / setting.fan_rpm;
}
