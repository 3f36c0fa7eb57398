import { useEffect, useState } from "preact/hooks";
import type { PublishedFit } from "../../../model/fit/group.ts";

type Offline = typeof import("./offline.ts");

/** What works without a network, once the first answer is on the screen; nothing until then. */
export function useOffline(
  fit: PublishedFit | undefined,
  heat_kW: number,
  onArrived: () => void,
): Offline | undefined {
  const [parts, setParts] = useState<Offline>();
  const shown = fit !== undefined;
  useEffect(() => {
    if (!shown) return;
    const wait = globalThis.requestIdleCallback ?? ((work: () => void) => setTimeout(work, 200));
    wait(async () => {
      // Without this part the page works, with a network.
      const offline = await import("./offline.ts").catch(() => undefined);
      if (!offline) return;
      setParts(offline);
      await offline.startOffline(onArrived);
    });
  }, [shown]);
  useEffect(() => {
    if (fit) void parts?.keepAnswers(fit, heat_kW);
  }, [parts, fit?.version, heat_kW]);
  return parts;
}
