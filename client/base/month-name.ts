import { locale } from "../language.ts";

const month = new Intl.DateTimeFormat(locale, { year: "numeric", month: "short", timeZone: "UTC" });

/** A tune's month in words; of contributors who tuned in several places there is a year alone. @example "2026-10", "2026" */
export function monthName(named: string): string {
  return named.includes("-") ? month.format(new Date(`${named}-01T00:00:00Z`)) : named;
}
