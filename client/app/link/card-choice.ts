import type { CardHeater } from "../../../model/card/card-table.ts";
import { FIRST_QUESTION, type Question } from "../../base/question.ts";
import { recall, remember } from "../../base/remember.ts";
import type { Unit } from "../../units.ts";

/** Papers that a card prints on: small ones with a front and a back, large ones to fold in the middle. */
export const PAPERS = ["a6", "index", "a5", "a4", "letter"] as const;
export type Paper = (typeof PAPERS)[number];

export const isFolded = (paper: Paper) => paper === "a4" || paper === "letter";

/** What a card is made for. */
export interface CardChoice {
  heater: CardHeater;
  elevation_m: Span;
  temperature_C: Span;
  paper: Paper;
}

/** The units that a card is drawn in. */
export interface CardUnits {
  elevation: Unit;
  temperature: Unit;
}

export type Span = readonly [from: number, to: number];

/** What may be asked for, and how far apart the two ends of a range must be. */
export const ELEVATIONS_m: Span = [-400, 5800];
export const LEAST_CLIMB_m = 300;
export const TEMPERATURES_C: Span = [-45, 40];
export const LEAST_WARMTH_C = 5;

/** A card for a heater as long as nothing else is chosen. */
export function usualChoice({ heat_kW, low_fan_rpm, high_fan_rpm, dose_uL }: Question): CardChoice {
  return {
    heater: { heat_kW, low_fan_rpm, high_fan_rpm, dose_uL },
    elevation_m: [0, 4500],
    temperature_C: [-30, 20],
    paper: "a6",
  };
}

/** The card remembered; else one for the heater of Start's question. */
export function firstChoice(): CardChoice {
  return {
    ...usualChoice({ ...FIRST_QUESTION, ...recall<Question>("question") }),
    ...recall<CardChoice>("card"),
  };
}

export function keepChoice(choice: CardChoice): void {
  remember("card", choice);
}
