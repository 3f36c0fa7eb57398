import { ENDS, type End } from "../../model/end.ts";
import type { StartEnd, StartTune } from "../../model/start.ts";
import { t } from "../texts/app.ts";
import { basisWords as words } from "../texts/basis.ts";
import { OpensOnPaper } from "../ui/opens-on-paper.tsx";
import { format, formatFineRate, formatPercent } from "../units.ts";
import { span } from "./answer.tsx";

const percent = (level: number) => formatPercent(level * 100);

/** Fuel and heat, where the dose is known; folded, every figure of both ends. */
export function AllFigures({ tune, isMine }: { tune: StartTune; isMine: boolean }) {
  return (
    <>
      {ENDS.map((end) => (
        <Burn key={end} end={end} answer={tune[end]} />
      ))}
      <OpensOnPaper summary={words.figures}>
        <div class="both-ends">
          {ENDS.map((end) => (
            <Figures key={end} end={end} answer={tune[end]} isMine={isMine} />
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
      {t[end]}: {words.burn(format(fuel_L_h, 2), format(heat_kW, 1))}
    </p>
  );
}

/** Where others are, or where the heater itself is that has tunes of its own. */
function Figures({ end, answer, isMine }: OfEnd & { isMine: boolean }) {
  const { mean_band_Hz: mean, new_heater_bands_Hz: bands } = answer;
  const ofMean = isMine ? words.meanBandMine : words.meanBand;
  const ofBand = isMine ? words.heatersMine : words.heaters;
  return (
    <div class="of-end" data-figures={end}>
      <h3>{t[end]}</h3>
      <dl class="bands">
        <div>
          <dt>{ofMean(percent(mean.level))}</dt>
          <dd>{words.span(...span(mean))}</dd>
        </div>
        {bands.map((band, i) => (
          <div key={band.level}>
            <dt class={i === 0 ? "key-inner" : "key-outer"}>{ofBand(percent(band.level))}</dt>
            <dd>{words.span(...span(band))}</dd>
          </div>
        ))}
        <div>
          <dt>{words.exact(formatFineRate(answer.pump_Hz_exact))}</dt>
        </div>
      </dl>
    </div>
  );
}
