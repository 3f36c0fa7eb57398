import { monthName } from "../base/month-name.ts";
import { locale } from "../language.ts";
import { stewardWords as words } from "../texts/steward.ts";
import { format, formatPercent, formatTenths } from "../units.ts";

/** Richer or leaner than the average, in words. */
export function besideAverage(pct: number): string {
  const size = formatPercent(Math.abs(pct));
  if (size === formatPercent(0)) return words.even;
  return pct > 0 ? words.richer(size) : words.leaner(size);
}

/** The same to a tenth of a percent: a change of a fit is small. */
export function changeInWords(pct: number): string {
  const size = formatTenths(Math.abs(pct));
  if (size === formatTenths(0)) return words.even;
  return pct > 0 ? words.richer(size) : words.leaner(size);
}

/** A shift with its sign, for a line of a list. */
export function signedPercent(pct: number): string {
  const size = formatPercent(pct);
  return pct > 0 && size !== formatPercent(0) ? `+${size}` : size;
}

export const sizeOf = (kW: number) => format(kW, Number.isInteger(kW) ? 0 : 1);

const days = new Intl.DateTimeFormat(locale, { dateStyle: "medium", timeZone: "UTC" });

export const dayOf = (day: string) => days.format(new Date(`${day}T00:00:00Z`));
/** What is decided on a tune has a month, what is about none a day. */
export const dayOrMonthOf = (date: string) =>
  date.length > "YYYY-MM".length ? dayOf(date) : monthName(date);
