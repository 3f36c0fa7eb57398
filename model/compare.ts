import { atPower, ENDS, type End } from "./end.ts";
import { bandsAt } from "./fit/bands.ts";
import type { PublishedFit } from "./fit/group.ts";
import { type EndSetting, mixtureShift } from "./mixture.ts";
import { wholePercent } from "./rounding.ts";
import { groupOf } from "./start.ts";

/** How one end of a tune stands beside the atlas at the same density. */
export interface Compared {
  end: End;
  /** Mixture shift against the expected tune, %: plus is rich, minus is lean. */
  mixture_shift_pct: number;
  /** Whether it lies inside the 95 % new-heater band. */
  inside_band: boolean;
  sentence: string;
}

/** How a tune compares with the published fit at both ends, each with a sentence for people. */
export function compareWithAtlas(
  fit: PublishedFit,
  heat_kW: number,
  density_kg_m3: number,
  tune: Record<End, EndSetting>,
): Compared[] {
  return ENDS.map((end) => {
    const group = groupOf(fit, heat_kW, end);
    const bands = bandsAt(group, density_kg_m3, { mean_levels: [], new_heater_levels: [0.95] });
    const perKrpm = tune[end].pump_Hz / (tune[end].fan_rpm / 1000);
    const [band] = bands.new_heater_bands;
    const shift = mixtureShift(perKrpm, bands.pump_Hz_per_krpm);
    return {
      end,
      mixture_shift_pct: shift,
      inside_band: band !== undefined && perKrpm >= band.lower && perKrpm <= band.upper,
      sentence: sentence(end, shift, group.contributors === 0),
    };
  });
}

function sentence(end: End, shift: number, priorOnly: boolean): string {
  const expects = priorOnly ? "physics alone expects" : "the atlas expects";
  const size = wholePercent(Math.abs(shift));
  const how = size === 0 ? "just what" : `${size} % ${shift > 0 ? "richer" : "leaner"} than`;
  return `The tune ${atPower(end)} is ${how} ${expects} at this density.`;
}
