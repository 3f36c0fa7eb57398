/** Letters that decomposition does not take apart. */
const APART: Record<string, string> = {
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ø: "o",
  đ: "d",
  ð: "d",
  þ: "th",
  ł: "l",
  ı: "i",
  ħ: "h",
  ŋ: "n",
};

/** Most names are folded once they are in lower case. */
const PLAIN = /^[a-z0-9]+(?: [a-z0-9]+)*$/;

/**
 * A name as search sees it: compatibility decomposition, accents off, lower case, punctuation as spaces. Other
 * scripts keep their letters.
 * @example foldName("Zürich") // "zurich"
 * @example foldName("São  Paulo") // "sao paulo"
 */
export function foldName(name: string): string {
  const lower = name.toLowerCase();
  if (PLAIN.test(lower)) return lower;
  return name
    .normalize("NFKD")
    .toLowerCase()
    .replaceAll(/\p{M}/gu, "")
    .replaceAll(/[ʻʼʾʿ]/g, "")
    .replaceAll(/[ßæœøđðþłıħŋ]/g, (letter) => APART[letter] ?? letter)
    .replaceAll(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}
