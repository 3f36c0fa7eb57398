import { ENDS } from "./end.ts";
import type { Band } from "./fit/bands.ts";
import type { StartTune } from "./start.ts";

/** Half the width of the band that 8 in 10 fall into, at the wider end, as a factor either way, %. */
export function halfBand_pct(tune: StartTune): number {
  const halves = ENDS.map((end) => {
    const { lower, upper } = tune[end].new_heater_bands_Hz[0] as Band;
    return 100 * (Math.sqrt(upper / lower) - 1);
  });
  return Math.max(...halves);
}
