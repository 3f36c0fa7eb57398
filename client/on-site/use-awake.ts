import { useEffect } from "preact/hooks";

/**
 * Keeps the screen on (Screen Wake Lock API). Browsers that cannot, or will not on a low battery, let it go dark as ever:
 * nothing of the sweep depends on it. The lock ends whenever the page is hidden, so it is asked for again on coming back.
 */
export function useAwake(isOn: boolean): void {
  useEffect(() => {
    if (!isOn) return;
    let lock: WakeLockSentinel | undefined;
    let isOver = false;
    const ask = async () => {
      if (document.visibilityState !== "visible") return;
      try {
        const got = await navigator.wakeLock?.request("screen");
        if (isOver) void got?.release();
        else lock = got;
      } catch {
        // Refused.
      }
    };
    const onVisible = () => void ask();
    void ask();
    document.addEventListener("visibilitychange", onVisible);
    return () => {
      isOver = true;
      document.removeEventListener("visibilitychange", onVisible);
      void lock?.release();
    };
  }, [isOn]);
}
