import type { StartEnd } from "../../../model/start.ts";
import { basisWords } from "../../texts/basis.ts";
import { styleWords as words } from "../../texts/style.ts";
import { BandDrawing } from "../../ui/band-drawing.tsx";
import { LineKey } from "../../ui/charts/line-key.tsx";
import { format } from "../../units.ts";

/** Every kind of control, in every state it can be seen in. */
export function StyleControls() {
  return (
    <section class="sheet" aria-labelledby="style-controls">
      <h2 id="style-controls">{words.controls}</h2>
      <div class="row">
        <button type="button">{words.button}</button>
        <button type="button" class="main">
          {words.main}
        </button>
        <button type="button" class="danger">
          {words.danger}
        </button>
        <button type="button" class="plain">
          {words.plain}
        </button>
      </div>
      <div class="columns">
        <div class="field">
          <label for="style-field">{words.field}</label>
          <input id="style-field" type="text" aria-describedby="style-hint" />
          <p id="style-hint" class="hint">
            {words.hint}
          </p>
        </div>
        <div class="field">
          <label for="style-wrong">{words.wrong}</label>
          <input id="style-wrong" type="text" aria-invalid="true" aria-describedby="style-error" />
          <p id="style-error" class="error">
            {words.error}
          </p>
        </div>
        <div class="field">
          <label for="style-choice">{words.choice}</label>
          <select id="style-choice">
            {words.options.map((option) => (
              <option key={option}>{option}</option>
            ))}
          </select>
        </div>
        <label class="check">
          <input type="checkbox" />
          {words.check}
        </label>
      </div>
      <p class="warning">{words.warning}</p>
      <details>
        <summary>{words.more}</summary>
        <p>{words.text}</p>
      </details>
    </section>
  );
}

/** Invented: only the form of the drawing is meant. */
const SHOWN: StartEnd = {
  fan_rpm: 1650,
  pump_Hz: 1.1,
  pump_Hz_exact: 1.083,
  mean_band_Hz: { level: 0.95, lower: 1.05, upper: 1.12 },
  new_heater_bands_Hz: [
    { level: 0.8, lower: 0.95, upper: 1.23 },
    { level: 0.95, lower: 0.86, upper: 1.35 },
  ],
};

const span = ({ lower, upper }: { lower: number; upper: number }) =>
  basisWords.span(format(lower, 2), format(upper, 2));

/** How bands and lines are drawn. */
export function StyleCharts() {
  return (
    <section class="sheet" aria-labelledby="style-charts">
      <h2 id="style-charts">{words.charts}</h2>
      <p class="note">{words.chartsNote}</p>
      <div class="style-drawing">
        <BandDrawing answer={SHOWN} now_Hz={1.4} />
      </div>
      <dl class="bands">
        <div>
          <dt class="key-mean">{basisWords.mean}</dt>
          <dd>{span(SHOWN.mean_band_Hz)}</dd>
        </div>
        {SHOWN.new_heater_bands_Hz.map((band, i) => (
          <div key={band.level}>
            <dt class={i === 0 ? "key-inner" : "key-outer"}>
              {basisWords.heaters(format(100 * band.level))}
            </dt>
            <dd>{span(band)}</dd>
          </div>
        ))}
      </dl>
      <LineKey labels={["1", "2", "3", "4", "5", "6"]} />
    </section>
  );
}
