import { airAt, STANDARD_DENSITY_kg_m3 } from "./air.ts";
import { screenDose, screenMonth, screenTemperature } from "./screen/bounds.ts";
import type { Reason, ScreenContext, Verdict } from "./screen/reason.ts";
import { screenSettings } from "./screen/settings.ts";
import { screenSite } from "./screen/site.ts";
import type { Tune } from "./tune.ts";

export type { Reason, ScreenContext, Verdict } from "./screen/reason.ts";

export function screen(
  tune: Tune,
  context: ScreenContext = {},
): { verdict: Verdict; reasons: Reason[] } {
  const { site, reasons: siteReasons } = screenSite(tune, context);
  const temperatureReasons = screenTemperature(tune.air?.temperature_C);
  const reasons = [
    ...siteReasons,
    ...temperatureReasons,
    ...screenDose(tune.heater.dose_uL),
    ...screenSettings(tune, densityRatio(tune, site, temperatureReasons), context.fit ?? null),
    ...screenMonth(tune, context),
  ];
  return { verdict: reasons.length === 0 ? "accepted" : "held", reasons };
}

/** Density ratio at the site as it most likely is: with what was repaired in place of what was typed. */
function densityRatio(
  tune: Tune,
  site: { elevation_m: number; pressure_hPa: number | undefined },
  temperatureReasons: readonly Reason[],
): number {
  const temperature_C =
    temperatureReasons.length === 0 ? tune.air?.temperature_C : temperatureReasons[0]?.suggestion;
  const { density_kg_m3 } = airAt(site.elevation_m, {
    temperature_C,
    pressure_hPa: site.pressure_hPa,
    qnh_hPa: tune.air?.qnh_hPa,
    humidity_pct: tune.air?.humidity_pct,
  });
  return density_kg_m3 / STANDARD_DENSITY_kg_m3;
}
