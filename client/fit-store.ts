import { useEffect, useState } from "preact/hooks";
import type { PublishedFit } from "../model/fit/group.ts";
import { api } from "./api.ts";
import { recall, remember } from "./remember.ts";

export interface FitState {
  fit: PublishedFit | undefined;
  /** The atlas could not be reached; `fit`, if any, is the one kept. */
  stale: boolean;
  reload: () => Promise<void>;
}

/** The published fit: the kept one at once, the newest as soon as the atlas answers. */
export function useFit(): FitState {
  const [fit, setFit] = useState<PublishedFit | undefined>(() => recall<PublishedFit>("fit"));
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
  useEffect(() => {
    void reload();
  }, []);
  return { fit, stale, reload };
}
