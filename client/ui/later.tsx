import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { t } from "../texts/app.ts";

/** A part of the page that is fetched when first shown, so that the answer need not wait for it. */
export function later<P extends object>(load: () => Promise<ComponentType<P>>): ComponentType<P> {
  let Loaded: ComponentType<P> | undefined;
  return function Later(props: P) {
    const [state, setState] = useState<"loading" | "ready" | "failed">(
      Loaded ? "ready" : "loading",
    );
    useEffect(() => {
      // It may have come for another between the drawing and now.
      if (Loaded) return setState("ready");
      load().then(
        (part) => {
          Loaded = part;
          setState("ready");
        },
        () => setState("failed"),
      );
    }, []);
    if (Loaded) return <Loaded {...props} />;
    return state === "failed" ? <p class="warning">{t.partMissing}</p> : <p>{t.loading}</p>;
  };
}
