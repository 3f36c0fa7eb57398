import { toStep } from "../../model/rounding.ts";
import type { Question } from "../base/question.ts";

/** What tells a device's place apart leaves it no finer than this, m. */
const ELEVATION_STEP_m = 10;

/** What the atlas is asked for tunes like this one. A position without a name may be the device's: it stays here. */
export function nearQuery(question: Question): Record<string, number> {
  const { heat_kW, site, place, lat, lon, position_stays, air } = question;
  const position = place !== null &&
    !position_stays &&
    lat !== null &&
    lon !== null && { lat, lon };
  const given = Object.entries(air).filter(([, value]) => value !== undefined);
  return {
    heat_kW,
    elevation_m: toStep(site.elevation_m, ELEVATION_STEP_m),
    ...(position || {}),
    ...Object.fromEntries(given),
  };
}
