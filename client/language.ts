/** Languages the app speaks; each has a folder of words here. */
export const LANGUAGES = ["en", "de", "es"] as const;
export type Language = (typeof LANGUAGES)[number];

/** Each in itself. */
export const LANGUAGE_NAMES: Record<Language, string> = {
  en: "English",
  de: "Deutsch",
  es: "Español",
};

/** All of them run from left to right; the styles would serve one that does not. */
export const direction: "ltr" | "rtl" = "ltr";

const CHOICE = "hypsotune.language";

function chosen(): string | null {
  try {
    return globalThis.localStorage?.getItem(CHOICE) ?? null;
  } catch {
    return null;
  }
}

/** The person's choice, else the first of the browser's languages that the app speaks, else English. */
function languageHere(): Language {
  const wanted = [chosen(), ...("document" in globalThis ? navigator.languages : [])];
  for (const tag of wanted) {
    const found = LANGUAGES.find((language) => tag?.split("-")[0] === language);
    if (found) return found;
  }
  return "en";
}

/** Settled when the page loads: words are constants, so a new choice takes a new load. */
export const language = languageHere();

/** How numbers and dates are written: the browser's own variant of the language, if it names one. */
export const locale =
  ("document" in globalThis ? navigator.languages : []).find(
    (tag) => tag.split("-")[0] === language && isKnown(tag),
  ) ?? language;

/** Several, as people of the page's language say them: "A, B and C". */
export const listed = (several: readonly string[]): string =>
  new Intl.ListFormat(locale, { type: "conjunction" }).format(several);

/** A browser may name what is no language to itself, "en-US@posix", and then cannot write a number in it. */
function isKnown(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length > 0;
  } catch {
    return false;
  }
}

export function chooseLanguage(next: Language): void {
  try {
    localStorage.setItem(CHOICE, next);
  } catch {
    // Storage forbidden: the browser's language stays.
  }
  location.reload();
}

/**
 * One section of words in the page's language. Only that language is fetched.
 * A file of words imports nothing that waits for words: the two would wait for each other.
 */
export function inLanguage<Words>(
  words: { en: () => Promise<Words> } & Partial<Record<Language, () => Promise<Words>>>,
): Promise<Words> {
  return (words[language] ?? words.en)();
}
