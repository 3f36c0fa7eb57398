import type { Unit } from "../../units.ts";
import type { MyHeater } from "../heater/my-heater.ts";

// An answer is written into an address without the schemas that read one: they are fetched with a link that is opened.

/** Values as an address has them, empty ones left out; commas and blanks stay readable. */
export function writeValues(values: Record<string, string | number | undefined>): string {
  return Object.entries(values)
    .filter(([, value]) => value !== undefined && value !== "")
    .map(([name, value]) => `${name}=${plain(String(value))}`)
    .join("&");
}

function plain(text: string): string {
  return encodeURIComponent(text).replaceAll("%20", "+").replaceAll("%2C", ",");
}

/** At most so many decimals: as fine as anybody reads it. */
export const to = (value: number | undefined, decimals: number) =>
  value === undefined ? undefined : Number(value.toFixed(decimals));

/** "m,C" and the like: the unit of elevations, then that of temperatures. */
export function unitsText(elevation: Unit, temperature: Unit): string {
  return `${elevation.name},${temperature.name.replace("°", "")}`;
}

/** A heater's own tunes with the day each was found; a link has no finer time. */
export const ownTunesOf = ({ bracketed, own_tunes, found_at }: MyHeater) => ({
  bracketed,
  tunes: own_tunes.map((tune, i) => [tune, (found_at[i] ?? "").slice(0, 10)]),
});
