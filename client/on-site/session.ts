import type { CoReading } from "../../model/co-reading.ts";
import type { End } from "../../model/end.ts";
import type { Found } from "../../model/fit/row.ts";
import type { Verdict } from "../../server/contract.ts";
import type { LoggedSweep } from "../app/records/entry.ts";
import type { Plan } from "./plan.ts";

/** What the sweep left an end at. */
export interface EndResult extends CoReading {
  pump_Hz: number;
  /** Missing where no minimum was bracketed. */
  sweep?: LoggedSweep | undefined;
  /** Whether it is a minimum that was seen; missing in sessions from before this was kept. */
  found?: Found | undefined;
  /** The flame went out at this rate, only a little leaner. */
  flame_out_Hz?: number | undefined;
  /** Settled readings it took. */
  settled: number;
}

/** Anything pressed while sweeping, with the wall clock's time in ms: everything else follows from these. */
export type Press = { at: number } & (
  | { is: "lit" }
  | { is: "warm" }
  | { is: "set"; pump_Hz: number; confirming?: boolean }
  | { is: "read"; reading: CoReading; still: boolean }
  | { is: "out" }
  | { is: "relight" }
  | { is: "burns"; pump_Hz?: number }
  | { is: "no light" }
  | { is: "accept"; end: End; result: EndResult }
  | { is: "again" }
  | { is: "skip" }
  | { is: "finish" }
  | { is: "alarm" }
  | { is: "abort" }
);

/** What the heater is checked for before it is lit. */
export const CHECKS = ["air", "alarm", "exhaust", "meter", "fuel", "supply"] as const;
export type Check = (typeof CHECKS)[number];

/** One sweep of both ends. */
export interface Session {
  version: 1;
  /** Random; the logbook's entry and the Idempotency-Key are known by it. */
  id: string;
  begun_at: number;
  plan: Plan;
  checked: Check[];
  presses: Press[];
  /** The coming night's temperature as typed once the sweep was over; null when it was cleared. */
  night_C?: number | null;
  /** The entry is in the logbook. */
  logged?: boolean;
  /** It was sent, or waits to be, with this Idempotency-Key: the session's own id. */
  shared?: "waits" | Arrived;
}

/** What the atlas answered. */
export interface Arrived {
  id: string;
  receipt: string;
  verdict: Verdict;
  kept: boolean;
}

export function newSession(plan: Plan, id: string, begun_at: number): Session {
  return { version: 1, id, begun_at, plan, checked: [], presses: [] };
}

/** One more press; time never runs backwards, whatever the clock does. */
export function pressed(session: Session, press: Press): Session {
  const last = session.presses.at(-1)?.at ?? session.begun_at;
  return {
    ...session,
    presses: [...session.presses, { ...press, at: Math.max(last, press.at) }],
  };
}

/** Without the last press. */
export function undone(session: Session): Session {
  return { ...session, presses: session.presses.slice(0, -1) };
}

export function ticked(session: Session, check: Check, is: boolean): Session {
  const others = session.checked.filter((one) => one !== check);
  return { ...session, checked: is ? [...others, check] : others };
}
