import type { Question } from "../../base/question.ts";
import type { LogbookHeater } from "../records/entry.ts";
import type { MyHeater } from "./my-heater.ts";

/** What every view asks about a heater. */
export type Facts = Pick<
  LogbookHeater,
  "heat_kW" | "low_fan_rpm" | "high_fan_rpm" | "dose_uL" | "step_Hz" | "step_rpm"
>;

export function factsOf(heater: Facts): Facts {
  const { heat_kW, low_fan_rpm, high_fan_rpm, dose_uL, step_Hz, step_rpm } = heater;
  return { heat_kW, low_fan_rpm, high_fan_rpm, dose_uL, step_Hz, step_rpm };
}

/** The question asked for my heater: its facts are never asked twice. */
export function askedFor(question: Question, mine: MyHeater | null | undefined): Question {
  return mine ? { ...question, ...factsOf(mine.heater) } : question;
}

/** What is kept of a question asked for my heater: its facts stay with the heater. */
export function keptOf(
  next: Question,
  before: Question,
  mine: MyHeater | null | undefined,
): Question {
  return mine ? { ...next, ...factsOf(before) } : next;
}
