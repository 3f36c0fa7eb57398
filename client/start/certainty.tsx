import type { Band } from "../../model/fit/bands.ts";
import { halfBand_pct } from "../../model/half-band.ts";
import type { StartTune } from "../../model/start.ts";
import { t } from "../texts/app.ts";
import { format, formatPercent } from "../units.ts";

/** Half the band of 8 in 10 up to which an answer is called so, %: our own working values. */
const QUITE_pct = 12;
const FAIRLY_pct = 25;

/** How sure an answer is, in words first. */
export function Certainty({ tune }: { tune: StartTune }) {
  const half = halfBand_pct(tune);
  const { quite, fairly, unsure } = t.answer.certainty;
  const word = half <= QUITE_pct ? quite : half <= FAIRLY_pct ? fairly : unsure;
  const { level } = tune.low.new_heater_bands_Hz[0] as Band;
  return (
    <p class="certainty">
      <strong>{word}</strong>: {t.answer.within(format(level * 10), formatPercent(half))}
    </p>
  );
}
