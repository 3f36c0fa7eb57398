import { ENDS, type End } from "../../model/fit/group.ts";
import type { StartEnd, StartTune } from "../../model/start.ts";
import { averageReachesBeyond } from "../charts/average-band.ts";
import { t } from "../texts/app.ts";
import { format, formatFineRate, formatPercent, formatRate } from "../units.ts";
import { BandDrawing } from "./band-drawing.tsx";

const percent = (level: number) => formatPercent(level * 100);

/** The start tune: both ends side by side, each a value inside its bands. */
export function Answer({ tune }: { tune: StartTune }) {
  return (
    <div class="ends">
      {ENDS.map((end) => (
        <EndAnswer key={end} end={end} answer={tune[end]} />
      ))}
    </div>
  );
}

function EndAnswer({ end, answer }: { end: End; answer: StartEnd }) {
  const outer = answer.new_heater_bands_Hz.at(-1);
  return (
    <section class="end" aria-labelledby={`answer-${end}`} data-end={end}>
      <h3 id={`answer-${end}`}>{t[end]}</h3>
      <p class="rate">
        <output data-value={answer.pump_Hz_exact}>{formatRate(answer.pump_Hz)}</output> Hz
      </p>
      <p class="note">
        {t.answer.fanAt(format(answer.fan_rpm))} ·{" "}
        {t.answer.exact(formatFineRate(answer.pump_Hz_exact))}
      </p>
      {outer && (
        <p class="visually-hidden" aria-live="polite">
          {t.answer.spoken(
            t.endWord[end],
            formatRate(answer.pump_Hz),
            percent(outer.level),
            formatFineRate(outer.lower),
            formatFineRate(outer.upper),
          )}
        </p>
      )}
      <BandDrawing answer={answer} />
      <dl class="bands">
        <div>
          <dt
            class={
              averageReachesBeyond(answer.mean_band_Hz, answer.new_heater_bands_Hz[0])
                ? "key-mean by-edges"
                : "key-mean"
            }
          >
            {t.answer.meanBand(percent(answer.mean_band_Hz.level))}
          </dt>
          <dd>
            {t.answer.range(
              formatFineRate(answer.mean_band_Hz.lower),
              formatFineRate(answer.mean_band_Hz.upper),
            )}
          </dd>
        </div>
        {answer.new_heater_bands_Hz.map((band, i) => (
          <div key={band.level}>
            <dt class={i === 0 ? "key-inner" : "key-outer"}>
              {t.answer.heaters(percent(band.level))}
            </dt>
            <dd>{t.answer.range(formatFineRate(band.lower), formatFineRate(band.upper))}</dd>
          </div>
        ))}
      </dl>
      {answer.fuel_L_h !== undefined && answer.heat_kW !== undefined && (
        <p class="note">{t.answer.burn(format(answer.fuel_L_h, 2), format(answer.heat_kW, 1))}</p>
      )}
    </section>
  );
}
