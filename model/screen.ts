import { airAt, ELEVATION_RANGE_m } from "./air.ts";
import { screenDose, screenMonth, screenTemperature } from "./screen/bounds.ts";
import type { Reason, ScreenContext, Verdict } from "./screen/reason.ts";
import { screenSettings } from "./screen/settings.ts";
import { type Site, screenSite } from "./screen/site.ts";
import type { Tune } from "./tune.ts";

export type { Reason, ScreenContext, Verdict } from "./screen/reason.ts";

/**
 * Screens a tune at the door: accepted, or held with a reason for everything that cannot be.
 *
 * Bounds are those that physics sets. A slip has a name when the row becomes plausible once it is undone; its reason
 * then suggests the value meant. A missed slip is better than a held good row: what could be an honest tune, that of
 * a crew that never re-tunes or of an odd dose included, is accepted and left to the robust fit. What that means for each slip, as
 * shares of rows measured over the whole range of heaters, air and elevations:
 *
 * - always: pulses a minute as Hz, fan speed in tens or hundreds of rpm, dose in mL, ends swapped, a pump rate ten
 *   times off, both fan speeds doubled or halved. Up to 1 in 20 of these is held under the name of a neighbouring
 *   slip (both fan speeds halved as the high one only, fan speeds swapped as the low one doubled).
 * - with a stated place: elevation in feet from about 350 m, metres taken for feet from about 1,100 m.
 * - with a station pressure: elevation in feet from about 800 m, metres taken for feet from about 1,600 m.
 * - with neither: elevation in feet only where it exceeds 6,000 (1,829 m). The mixture does not betray it.
 * - QNH as station pressure: from about 1,100 m; without a place about 1 in 10 passes for an elevation in feet.
 * - °F as °C: above 50 °F (10 °C), never below.
 * - one fan speed doubled or halved: always at the high end (1 in 10 under a neighbour's name), at the low end in
 *   half to two thirds of the cases, where the mixture or the usual range betrays it.
 *
 * @param tune as the schema lets it in
 * @param context what is known besides; a part left out is a check left out
 * @returns reasons in the order site, air, heater, settings, month; none when accepted
 * @throws RangeError when a number is not finite, which the schema never lets in
 */
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
function densityRatio(tune: Tune, site: Site, temperatureReasons: readonly Reason[]): number {
  const [questioned] = temperatureReasons;
  const [lowest, highest] = ELEVATION_RANGE_m;
  return airAt(Math.min(highest, Math.max(lowest, site.elevation_m)), {
    temperature_C: questioned ? questioned.suggestion : tune.air?.temperature_C,
    pressure_hPa: site.pressure_hPa,
    qnh_hPa: tune.air?.qnh_hPa,
    humidity_pct: tune.air?.humidity_pct,
  }).density_ratio;
}
