import { standardDensity } from "./air.ts";
import { ENDS, type End } from "./end.ts";
import { bandsAt } from "./fit/bands.ts";
import type { PublishedFit } from "./fit/group.ts";
import { groupOf } from "./start.ts";

/** The average heater's tune with its 95 % confidence band, and where 8 in 10 heaters lie, Hz per 1,000 rpm. */
export interface AverageHere {
  pump_Hz_per_krpm: number;
  mean_band: [lower: number, upper: number];
  new_heater_band: [lower: number, upper: number];
}

/** Two fits of a heater size and end at an elevation in standard air. */
export interface TwoFits {
  heat_kW: number;
  end: End;
  elevation_m: number;
  published: AverageHere;
  other: AverageHere;
  /** The other's average against the published one's, %: plus is richer. */
  change_pct: number;
}

/** Where people tune: the coast, the hills, the passes, the highest roads, m. */
export const COMPARED_AT_m = [0, 1500, 3000, 4500] as const;
const MEAN = 0.95;
const NEW_HEATER = 0.8;

/** What another fit would answer beside the published one. */
export function twoFits(
  published: PublishedFit,
  other: Pick<PublishedFit, "groups">,
  sizes_kW: readonly number[],
): TwoFits[] {
  const average = (groups: PublishedFit["groups"], heat_kW: number, end: End, density: number) => {
    const bands = bandsAt(groupOf({ ...published, groups }, heat_kW, end), density, {
      mean_levels: [MEAN],
      new_heater_levels: [NEW_HEATER],
    });
    const pair = ([band]: typeof bands.mean_bands): [number, number] => [
      band?.lower ?? Number.NaN,
      band?.upper ?? Number.NaN,
    ];
    return {
      pump_Hz_per_krpm: bands.pump_Hz_per_krpm,
      mean_band: pair(bands.mean_bands),
      new_heater_band: pair(bands.new_heater_bands),
    };
  };
  return sizes_kW.flatMap((heat_kW) =>
    ENDS.flatMap((end) =>
      COMPARED_AT_m.map((elevation_m) => {
        const density = standardDensity(elevation_m);
        const [now, then] = [published.groups, other.groups].map((groups) =>
          average(groups, heat_kW, end, density),
        ) as [AverageHere, AverageHere];
        return {
          ...{ heat_kW, end, elevation_m, published: now, other: then },
          change_pct: 100 * (then.pump_Hz_per_krpm / now.pump_Hz_per_krpm - 1),
        };
      }),
    ),
  );
}
