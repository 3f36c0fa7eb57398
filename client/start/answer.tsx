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

/**
 * The starting settings: what to set at both ends, side by side; how sure that is, in words; then the bands. It is read
 * aloud in the same order.
 */
export function Answer(props: AnswerProps) {
  return (
    <div class="answer">
      {ENDS.map((end) => (
        <Setting key={end} end={end} {...props} />
      ))}
      <Certainty tune={props.tune} />
      {ENDS.map((end) => (
        <Range key={end} end={end} {...props} />
      ))}
    </div>
  );
}

/** What can be set at an end. */
function Setting({ end, tune, steps }: AnswerProps & { end: End }) {
  const answer = tune[end];
  const [inner] = answer.new_heater_bands_Hz;
  const [first, second] = settablePairsOf(tune, end, steps);
  if (!first || !inner) return null;
  const rate = (pump_Hz: number) => formatRate(pump_Hz, steps.step_Hz);
  return (
    <section class="end" aria-labelledby={`answer-${end}`} data-end={end}>
      <h3 id={`answer-${end}`}>{t[end]}</h3>
      <p class="rate">
        <output data-value={answer.pump_Hz_exact}>{rate(first.pump_Hz)}</output> Hz
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
    </section>
  );
}

/** The band that the best setting of an end lies in, 8 in 10 times, with what is set now. */
function Range({ end, tune, now }: AnswerProps & { end: End }) {
  const answer = tune[end];
  const [inner] = answer.new_heater_bands_Hz;
  if (!inner) return null;
  return (
    <div class="range" data-end={end}>
      <BandDrawing answer={answer} now_Hz={now && atFan(now[end], answer.fan_rpm)} />
      <p class="times">
        <span class="visually-hidden">{t[end]}: </span>
        {span(inner).join("–")} Hz
      </p>
    </div>
  );
}

/** The rate that makes the same mixture at another fan speed, Hz. */
function atFan(setting: EndSetting, fan_rpm: number): number {
  return (setting.pump_Hz * fan_rpm) / setting.fan_rpm;
}
