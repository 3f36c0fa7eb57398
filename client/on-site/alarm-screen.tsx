import { useEffect, useRef } from "preact/hooks";
import { t } from "../texts/app.ts";
import { ALARM } from "../ui/alarm-link.tsx";

/**
 * Numbers that mobile phones know as emergency calls; where neither is answered there is a local one. Sources:
 * test/reference/emergency-numbers.json.
 */
export const EMERGENCY_NUMBERS = ["112", "911"] as const;

/** Carbon monoxide where people are: out, then the emergency number, and nothing else. It ends a sweep under way. */
export function Alarm() {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    title.current?.focus();
    // A sweep under way was begun in this browser, so its part of the page is here too.
    void import("./alarm.ts").then(({ stopForAlarm }) => stopForAlarm());
  }, []);
  return (
    <main id="content" class="alarm-screen" aria-labelledby="alarm">
      <h1 id="alarm" tabIndex={-1} ref={title}>
        {t.alarm.title}
      </h1>
      <p>{t.alarm.call}</p>
      <p class="alarm-numbers">
        {EMERGENCY_NUMBERS.map((number) => (
          <a key={number} href={`tel:${number}`}>
            {number}
          </a>
        ))}{" "}
        <span>{t.alarm.local}</span>
      </p>
      <a class="alarm-onward" href={`${ALARM}/outside`}>
        {t.alarm.outside}
      </a>
    </main>
  );
}
