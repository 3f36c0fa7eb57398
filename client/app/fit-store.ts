import { useEffect, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { api, Unreachable } from "../base/answers/api.ts";
import { keptFit } from "../base/answers/kept-fit.ts";
import { remember } from "../base/remember.ts";

export interface FitState {
  fit: PublishedFit | undefined;
  /** The atlas could not be reached; `fit`, if any, is the one kept. */
  stale: boolean;
  reload: () => Promise<void>;
  /** Looks for the version that a tune just sent makes. */
  follow: () => Promise<void>;
}

/** The atlas fits again within a moment of a write; after so many looks at one that makes no new fit there is nothing new. */
const LOOKS = 10;
const BETWEEN_LOOKS_ms = 500;
/** Out of reach, the atlas is asked again so often. */
const TRY_AGAIN_ms = 30_000;

/** The published fit: the kept one at once, the newest as soon as the atlas answers. */
export function useFit(): FitState {
  const [fit, setFit] = useState(keptFit);
  const [stale, setStale] = useState(false);
  const reload = async () => {
    try {
      const newest = await api.fit();
      setFit(newest);
      setStale(false);
      remember("fit", newest);
    } catch (error) {
      // Wiped here, it may still be with the service worker.
      const kept = error instanceof Unreachable && keptFit(error.kept as PublishedFit | undefined);
      if (kept) setFit((shown) => shown ?? kept);
      setStale(true);
    }
  };
  const follow = async () => {
    let isPending = false;
    for (let look = 0; look < LOOKS || isPending; look++) {
      await new Promise((done) => setTimeout(done, BETWEEN_LOOKS_ms));
      const health = await api.health().catch(() => undefined);
      if (health && health.fit !== fit?.version) return reload();
      isPending = health?.fit_pending ?? false;
    }
  };
  useEffect(() => {
    void reload();
    const again = () => void reload();
    addEventListener("online", again);
    return () => removeEventListener("online", again);
  }, []);
  useEffect(() => {
    if (!stale) return;
    const timer = setInterval(() => void reload(), TRY_AGAIN_ms);
    return () => clearInterval(timer);
  }, [stale]);
  return { fit, stale, reload, follow };
}
