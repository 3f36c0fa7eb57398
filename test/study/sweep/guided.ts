import type { SweepAnswer } from "../../../model/sweep/answer.ts";
import { confirmedStep } from "../../../model/sweep/confirming.ts";
import type { SweepReading, SweepSetup } from "../../../model/sweep/setup.ts";
import type { AtTheHeater } from "./at-the-heater.ts";

/** How a search for the minimum went. */
export interface Found {
  /** Undefined when it said that there is none to be seen. */
  minimum_Hz?: number;
  sit_Hz: number;
  /** Settled readings taken, and all that were looked at. */
  settled: number;
  /** Settled readings with the confirming one at the rate to stay at. */
  confirmed: number;
  looks: number;
  flame_outs: number;
  minutes: number;
  /** Every rate the pump was set to, in order. */
  set_Hz: number[];
  /** Where the 95 % interval lies. */
  interval_Hz?: { lower: number; upper: number };
  answers: SweepAnswer[];
}

const ANSWERS_MOST = 120;
/** Seconds a person takes to set the pump and to type a reading. */
const HANDS_s = 8;

/** A person who does what the sweep says, and nothing else. */
export function guided(setup: SweepSetup, heater: AtTheHeater): Found {
  const readings: SweepReading[] = [];
  const answers: SweepAnswer[] = [];
  const set_Hz: number[] = [];
  let set_s = 0;
  let toConfirm = false;
  let found: number | undefined;
  for (let k = 0; k < ANSWERS_MOST; k++) {
    const { answer } = confirmedStep(setup, readings);
    answers.push(answer);
    const confirming = answer.kind === "set" && answer.why === "confirm";
    if (confirming) found ??= answer.settled;
    if (answer.kind === "set") {
      toConfirm = confirming;
      set_Hz.push(answer.pump_Hz);
      set_s = heater.time_s;
    }
    if (answer.kind === "set" || answer.kind === "wait") {
      const reading = heater.read(answer.pump_Hz, answer.wait_s + HANDS_s, set_s);
      readings.push({ ...reading, confirming: toConfirm });
      continue;
    }
    return {
      ...(answer.kind === "minimum" && {
        minimum_Hz: answer.minimum_Hz,
        interval_Hz: answer.intervals_Hz.at(-1) as { lower: number; upper: number },
      }),
      sit_Hz: answer.kind === "stop" ? (set_Hz.at(-1) ?? setup.start_Hz) : answer.sit_Hz,
      settled: found ?? answer.settled,
      confirmed: answer.settled,
      looks: readings.length,
      flame_outs: heater.flame_outs,
      minutes: heater.time_s / 60,
      set_Hz,
      answers,
    };
  }
  throw new Error(`No end after ${ANSWERS_MOST} answers: ${JSON.stringify(answers.at(-1))}`);
}
