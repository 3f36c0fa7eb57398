import { foldName } from "./fold.ts";

/** Languages in which a country is understood that stands behind a place's name: those of the page. */
const LANGUAGES = ["en", "de", "es"];

const named = new Map<string, Intl.DisplayNames>();

/**
 * What a country is called.
 * @param code ISO 3166-1, two letters; anything else is given back as it is
 * @param language BCP 47
 */
export function countryName(code: string, language = "en"): string {
  if (!/^[A-Z]{2}$/.test(code)) return code;
  const names = named.get(language) ?? new Intl.DisplayNames(language, { type: "region" });
  named.set(language, names);
  return names.of(code) ?? code;
}

const folded = new Map<string, string[]>();

/** Its names in all of these languages, folded. */
export function foldedCountryNames(code: string): readonly string[] {
  const known = folded.get(code);
  if (known) return known;
  const names = LANGUAGES.map((language) => foldName(countryName(code, language)));
  folded.set(code, names);
  return names;
}
