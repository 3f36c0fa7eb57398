import { t } from "../texts/app.ts";

/** Where the alarm's screen is. */
export const ALARM = "#/alarm";

/** The way to the alarm's screen. */
export function AlarmLink() {
  return (
    <a class="alarm-link" href={ALARM}>
      {t.alarm.open}
    </a>
  );
}
