import type { Outcome, Stopped, SweepAnswer } from "../../../model/sweep/answer.ts";
import type { SweepReading, SweepSetup } from "../../../model/sweep/setup.ts";
import { nextStep } from "../../../model/sweep/sweep.ts";
import type { AtTheHeater } from "./at-the-heater.ts";

/** A guided sweep as somebody beside the heater could have written it down. */
export interface Sweeping {
  answers: SweepAnswer[];
  /** Missing when it did not end. */
  end?: Outcome | Stopped;
  /** What the meter showed, in order of time, each with when the pump had been set there. */
  record: SweepReading[];
  /** Every rate the pump was set to, in order. */
  set_Hz: number[];
  minutes: number;
}

/** Far more than the sweep promises: whoever gets here was led round in circles. */
const ANSWERS_MOST = 200;
/** Seconds a person takes to set the pump and to type a reading. */
const HANDS_s = 8;

/** A person who does what the sweep says, and nothing else; some watch the figure before they type it. */
export function guided(setup: SweepSetup, heater: AtTheHeater, watches: boolean): Sweeping {
  const answers: SweepAnswer[] = [];
  const record: SweepReading[] = [];
  const set_Hz: number[] = [];
  const sweeping = { answers, record, set_Hz };
  let set_s = 0;
  let confirming = false;
  heater.warm(setup.present_Hz);
  for (let k = 0; k < ANSWERS_MOST; k++) {
    const answer = nextStep(setup, record);
    answers.push(answer);
    if (answer.kind !== "set" && answer.kind !== "wait") {
      return { ...sweeping, end: answer, minutes: heater.time_s / 60 };
    }
    if (answer.kind === "set") {
      confirming = answer.why === "confirm";
      set_Hz.push(answer.pump_Hz);
      set_s = heater.time_s;
    }
    const reading = heater.read(answer.pump_Hz, answer.wait_s + HANDS_s, set_s, watches);
    record.push({ ...reading, confirming });
  }
  return { ...sweeping, minutes: heater.time_s / 60 };
}
