import type { GivenAir } from "../model/air.ts";
import type { PublishedFit } from "../model/fit/group.ts";
import { USUAL_CLASS_kW } from "../model/heater.ts";
import { type StartSite, type StartTune, startTune } from "../model/start.ts";

/** What the Atlas view is asked: a site, its air, a heater. */
export interface Question {
  heat_kW: number;
  site: StartSite;
  /** Name of the place, when it was chosen by name. */
  place: string | null;
  lat: number | null;
  lon: number | null;
  /** 95 % half-width of an estimated elevation, m. */
  uncertainty_95_m: number | null;
  air: GivenAir;
  low_fan_rpm: number | undefined;
  high_fan_rpm: number | undefined;
  dose_uL: number | undefined;
}

export const FIRST_QUESTION: Question = {
  heat_kW: USUAL_CLASS_kW,
  site: { elevation_m: 1000, elevation_sd_m: 0, elevation_source: "given" },
  place: null,
  lat: null,
  lon: null,
  uncertainty_95_m: null,
  air: {},
  low_fan_rpm: undefined,
  high_fan_rpm: undefined,
  dose_uL: undefined,
};

/** The start tune for a question, or null while its numbers cannot stand together. */
export function answer(fit: PublishedFit, question: Question): StartTune | null {
  try {
    return startTune(fit, question);
  } catch {
    return null;
  }
}

/** An elevation typed in: no place any more, no doubt about the number. */
export function atElevation(question: Question, elevation_m: number): Question {
  return {
    ...question,
    site: { elevation_m, elevation_sd_m: 0, elevation_source: "given" },
    uncertainty_95_m: null,
  };
}
