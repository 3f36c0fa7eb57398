import { useEffect, useState } from "preact/hooks";
import type { Keeping } from "./keep-geography.ts";
import type { Newer } from "./release.ts";

/** How this browser stands without a network, for the notices and the panel alike. */
export interface Standing {
  keeping: Keeping;
  newer: Newer | null;
  /** Tunes that waited and arrived while this page was open. */
  arrived: number;
  waiting: number;
  /** The browser cleared what was kept while this page was open. */
  wiped: boolean;
}

let now: Standing = {
  keeping: { is: "waiting" },
  newer: null,
  arrived: 0,
  waiting: 0,
  wiped: false,
};
const watchers = new Set<(standing: Standing) => void>();

export function standing(): Standing {
  return now;
}

export function setStanding(part: Partial<Standing>): void {
  now = { ...now, ...part };
  for (const watch of watchers) watch(now);
}

export function useStanding(): Standing {
  const [shown, show] = useState(now);
  useEffect(() => {
    watchers.add(show);
    show(now);
    return () => {
      watchers.delete(show);
    };
  }, []);
  return shown;
}
