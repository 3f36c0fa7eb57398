import { locale } from "./texts/language.ts";

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
    { name: "ft", factor: 1 / 0.3048, offset: 0, decimals: 0 },
  ],
  temperature: [
    { name: "°C", factor: 1, offset: 0, decimals: 0 },
    { name: "°F", factor: 1.8, offset: 32, decimals: 0 },
  ],
  pressure: [
    { name: "hPa", factor: 1, offset: 0, decimals: 1 },
    // 1 inHg = 33.86389 hPa (25.4 mm × 13,595.1 kg/m³ × 9.80665 m/s²).
    { name: "inHg", factor: 1 / 33.86388640341, offset: 0, decimals: 2 },
  ],
} as const satisfies Record<string, readonly Unit[]>;

export type Quantity = keyof typeof UNITS;

export function toShown(si: number, unit: Unit): number {
  return si * unit.factor + unit.offset;
}

export function toSi(shown: number, unit: Unit): number {
  return (shown - unit.offset) / unit.factor;
}

const formats = new Map<number, Intl.NumberFormat>();

/** Made once for each number of decimals: making one costs as much as writing hundreds of numbers. */
function formatOf(decimals: number): Intl.NumberFormat {
  const fixed = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
  const made = formats.get(decimals) ?? new Intl.NumberFormat(locale, fixed);
  formats.set(decimals, made);
  return made;
}

// The first takes longest of all, so it is made before there is anything to show.
formatOf(0);

/** A number as people of the page's language write it. */
export function format(value: number, decimals = 0): string {
  return formatOf(decimals).format(value);
}

export function formatIn(si: number, unit: Unit): string {
  return `${format(toShown(si, unit), unit.decimals)} ${unit.name}`;
}

/** A decimal number as typed, with point or comma and any minus sign; null when it is none. */
export function parseNumber(text: string): number | null {
  const plain = text.trim().replace(/[−–]/, "-").replace(",", ".");
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}
