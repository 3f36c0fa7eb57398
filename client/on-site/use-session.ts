import { useEffect, useState } from "preact/hooks";
import { forget, recall, remember } from "../base/remember.ts";
import type { Session } from "./session.ts";

const KEPT_AS = "onsite";

export interface SessionState {
  session: Session | undefined;
  /** Whether the browser keeps it: if not, a reload loses the sweep. */
  isKept: boolean;
  keep: (session: Session) => void;
  drop: () => void;
}

export function keptSession(): Session | undefined {
  const kept = recall<Session>(KEPT_AS);
  return kept?.version === 1 ? kept : undefined;
}

/** @returns whether the browser keeps it */
export function keepSession(session: Session): boolean {
  return remember(KEPT_AS, session);
}

/** The sweep under way: in storage at every press, and the same in every tab. */
export function useSession(): SessionState {
  const [state, setState] = useState({ session: keptSession(), isKept: true });
  useEffect(() => {
    const elsewhere = ({ key }: StorageEvent) => {
      if (key === `hypsotune.${KEPT_AS}`) setState({ session: keptSession(), isKept: true });
    };
    addEventListener("storage", elsewhere);
    return () => removeEventListener("storage", elsewhere);
  }, []);
  return {
    ...state,
    keep: (session) => setState({ session, isKept: keepSession(session) }),
    drop: () => {
      forget(KEPT_AS);
      setState({ session: undefined, isKept: true });
    },
  };
}

const SECOND_ms = 1000;

/** The wall clock, looked at every second and whenever the screen comes back: nothing is counted. */
export function useNow(): number {
  const [now, setNow] = useState(Date.now);
  useEffect(() => {
    const look = () => setNow(Date.now());
    const timer = setInterval(look, SECOND_ms);
    document.addEventListener("visibilitychange", look);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", look);
    };
  }, []);
  return now;
}
