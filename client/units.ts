import { PUMP_STEP_Hz } from "../model/heater.ts";
import {
  decimalsOfFineRate,
  decimalsOfRate,
  decimalsOfRates,
  isOnStep,
  onStep,
  stepsFrom,
  stepsUpTo,
  toStep,
  wholePercent,
} from "../model/rounding.ts";
import { FOOT_m, INCH_OF_MERCURY_hPa } from "../model/units.ts";
import { locale } from "./language.ts";

/** Units a person may choose, field by field. Everything inside the app is SI; conversion happens here alone. */
export interface Unit {
  name: string;
  /** Shown value = SI value × factor + offset. */
  factor: number;
  offset: number;
  decimals: number;
}

export const UNITS = {
  elevation: [
    { name: "m", factor: 1, offset: 0, decimals: 0 },
    { name: "ft", factor: 1 / FOOT_m, offset: 0, decimals: 0 },
  ],
  temperature: [
    { name: "°C", factor: 1, offset: 0, decimals: 0 },
    { name: "°F", factor: 1.8, offset: 32, decimals: 0 },
  ],
  pressure: [
    { name: "hPa", factor: 1, offset: 0, decimals: 1 },
    { name: "inHg", factor: 1 / INCH_OF_MERCURY_hPa, offset: 0, decimals: 2 },
  ],
} as const satisfies Record<string, readonly Unit[]>;

export type Quantity = keyof typeof UNITS;

/**
 * Quantities that may lie below 0. Some phones' keypads for decimals have no minus sign, so their fields ask for the
 * keyboard that has one.
 */
export const MAY_BE_NEGATIVE: Record<Quantity, boolean> = {
  elevation: true,
  temperature: true,
  pressure: false,
};

export function toShown(si: number, unit: Unit): number {
  return si * unit.factor + unit.offset;
}

export function toSi(shown: number, unit: Unit): number {
  return (shown - unit.offset) / unit.factor;
}

const formats = new Map<number, Intl.NumberFormat>();

/** Made once for each number of decimals: making one costs as much as writing hundreds of numbers. */
function formatOf(decimals: number): Intl.NumberFormat {
  const made =
    formats.get(decimals) ??
    new Intl.NumberFormat(locale, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      // What rounds to nothing is no less than nothing.
      signDisplay: "negative",
    });
  formats.set(decimals, made);
  return made;
}

// The first takes longest of all, so it is made before there is anything to show.
formatOf(0);

/** How a language parts thousands and decimals. */
interface Marks {
  thousands: string;
  decimal: string;
}

const MARKS: Marks = {
  // Five digits: some languages part no four.
  thousands: formatOf(0).format(10_000)[2] ?? ",",
  decimal: formatOf(1).format(0.5)[1] ?? ".",
};

/** A number as people of the page's language write it, with a true minus sign. */
export function format(value: number, decimals = 0): string {
  return formatOf(decimals).format(value).replace("-", "−");
}

/** A pump rate that is set or was set, Hz: no digit of it is lost, and a whole step has the step's decimals. */
export function formatRate(pump_Hz: number, step_Hz = PUMP_STEP_Hz): string {
  return format(pump_Hz, decimalsOfRate(pump_Hz, step_Hz));
}

/** The same for rates in one column or pair, Hz: all with the decimals of the finest. */
export function formatOfRates(rates_Hz: readonly number[]): (pump_Hz: number) => string {
  const decimals = decimalsOfRates(rates_Hz);
  return (pump_Hz) => format(pump_Hz, decimals);
}

/** A pump rate that nobody sets, Hz: the edge of a band, the bottom of a curve. */
export function formatFineRate(pump_Hz: number, step_Hz = PUMP_STEP_Hz): string {
  const decimals = decimalsOfFineRate(step_Hz);
  return format(toStep(pump_Hz, 10 ** -decimals), decimals);
}

/** A shift or a share, in the whole percents it is judged in. */
export function formatPercent(pct: number): string {
  return format(wholePercent(pct));
}

/** What somebody set or is left of it: a whole number where it is whole, else to a tenth. */
export function formatTenths(value: number): string {
  return format(toStep(value, 0.1), isOnStep(value, 1) ? 0 : 1);
}

/** Rounded up to tenths or to whole ones: what is needed, or how far something may be off, is never called less than it is. */
export function formatUp(value: number, step: 0.1 | 1): string {
  return format(onStep(stepsFrom(value, step), step), step === 1 ? 0 : 1);
}

/** Rounded down: what is left, or lasts, is never called more than it is. */
export function formatDown(value: number, step: 0.1 | 1): string {
  return format(onStep(stepsUpTo(value, step), step), step === 1 ? 0 : 1);
}

/** A figure and its unit, on one line. */
export const ofUnit = (figure: string, unit: string): string => `${figure}\u00a0${unit}`;

export function formatIn(si: number, unit: Unit): string {
  return ofUnit(format(toShown(si, unit), unit.decimals), unit.name);
}

/** A number as it stands in a field: with the language's decimal mark, nothing else added. */
export function asTyped(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals))).replace(".", MARKS.decimal);
}

/** Every minus sign, hyphen or dash that a keyboard, its corrections or a copied text may bring. */
const MINUS = /^[\u2010-\u2015\u2212\ufe58\ufe63\uff0d]/;

/** Whether this is no number yet and may become one: a sign alone. */
export function isBegun(text: string): boolean {
  return /^[+-]$/.test(text.trim().replace(MINUS, "-"));
}

/**
 * A decimal number as typed, with point or comma and any minus sign; null when it is none. Thousands may be parted by
 * the language's own mark or by spaces: 1,700 in English and 1.700 in German are more than a thousand.
 */
export function parseNumber(text: string, { thousands, decimal } = MARKS): number | null {
  const typed = text
    .trim()
    .replace(MINUS, "-")
    .replace(/^([+-])\s+/, "$1");
  const parted = new RegExp(`^[+-]?[1-9]\\d{0,2}([${thousands}\\s]\\d{3})+([${decimal}]\\d*)?$`);
  const whole = parted.test(typed)
    ? typed.replace(new RegExp(`[${thousands}\\s]`, "g"), "")
    : typed;
  const plain = whole.replace(",", ".");
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}
