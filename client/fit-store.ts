import { useEffect, useState } from "preact/hooks";
import type { PublishedFit } from "../model/fit/group.ts";
import { api } from "./api.ts";
import { recall, remember } from "./remember.ts";

export interface FitState {
  fit: PublishedFit | undefined;
  /** The atlas could not be reached; `fit`, if any, is the one kept. */
  stale: boolean;
  reload: () => Promise<void>;
  /** Looks for the version that a tune just sent makes. */
  follow: () => Promise<void>;
}

/** The atlas fits again within a moment of a write; after so many looks there is nothing new. */
const LOOKS = 10;
const BETWEEN_LOOKS_ms = 500;

/** The fit kept from an earlier visit, unless an earlier release kept it in another form. */
function keptFit(): PublishedFit | undefined {
  const kept = recall<PublishedFit>("fit");
  return kept && "settings" in kept ? kept : undefined;
}

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
    } catch {
      setStale(true);
    }
  };
  const follow = async () => {
    for (let look = 0; look < LOOKS; look++) {
      await new Promise((done) => setTimeout(done, BETWEEN_LOOKS_ms));
      const newest = await api.fit().catch(() => undefined);
      if (newest && newest.version !== fit?.version) return reload();
    }
  };
  useEffect(() => {
    void reload();
  }, []);
  return { fit, stale, reload, follow };
}
