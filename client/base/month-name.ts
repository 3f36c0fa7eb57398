import { locale } from "../language.ts";

const AS = { year: "numeric", month: "short", timeZone: "UTC" } as const;
/** Made with the first month: making it takes longer than writing hundreds. */
let format: Intl.DateTimeFormat | undefined;

/** A tune's month in words; of contributors who tuned in several places there is a year alone. @example "2026-10", "2026" */
export function monthName(named: string): string {
  if (!named.includes("-")) return named;
  format ??= new Intl.DateTimeFormat(locale, AS);
  return format.format(new Date(`${named}-01T00:00:00Z`));
}
