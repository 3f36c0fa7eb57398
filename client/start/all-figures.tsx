import { ENDS, type End } from "../../model/end.ts";
import type { StartEnd, StartTune } from "../../model/start.ts";
import { t } from "../texts/app.ts";
import { OpensOnPaper } from "../ui/opens-on-paper.tsx";
import { format, formatFineRate, formatPercent } from "../units.ts";
import { span } from "./answer.tsx";

const percent = (level: number) => formatPercent(level * 100);

/** Fuel and heat, where the dose is known; folded, every figure of both ends. */
export function AllFigures({ tune }: { tune: StartTune }) {
  return (
    <>
      {ENDS.map((end) => (
        <Burn key={end} end={end} answer={tune[end]} />
      ))}
      <OpensOnPaper summary={t.answer.figures}>
        <div class="both-ends">
          {ENDS.map((end) => (
            <Figures key={end} end={end} answer={tune[end]} />
          ))}
        </div>
      </OpensOnPaper>
    </>
  );
}

interface OfEnd {
  end: End;
  answer: StartEnd;
}

function Burn({ end, answer: { fuel_L_h, heat_kW } }: OfEnd) {
  if (fuel_L_h === undefined || heat_kW === undefined) return null;
  return (
    <p class="burn">
      {t[end]}: {t.answer.burn(format(fuel_L_h, 2), format(heat_kW, 1))}
    </p>
  );
}

function Figures({ end, answer }: OfEnd) {
  const { mean_band_Hz: mean, new_heater_bands_Hz: bands } = answer;
  return (
    <div class="of-end" data-figures={end}>
      <h3>{t[end]}</h3>
      <dl class="bands">
        <div>
          <dt>{t.answer.meanBand(percent(mean.level))}</dt>
          <dd>{t.answer.range(...span(mean))}</dd>
        </div>
        {bands.map((band, i) => (
          <div key={band.level}>
            <dt class={i === 0 ? "key-inner" : "key-outer"}>
              {t.answer.heaters(percent(band.level))}
            </dt>
            <dd>{t.answer.range(...span(band))}</dd>
          </div>
        ))}
        <div>
          <dt>{t.answer.exact(formatFineRate(answer.pump_Hz_exact))}</dt>
        </div>
      </dl>
    </div>
  );
}
