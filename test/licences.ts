/** Licences that the project can live with. */
const FINE =
  /^(MIT|MIT-0|ISC|0BSD|BSD-[23]-Clause|Apache-2\.0|BlueOak-1\.0\.0|BSL-1\.0|CC0-1\.0|CC-BY-[34]\.0|Unlicense|Python-2\.0|MPL-2\.0|OFL-1\.1|WTFPL|Zlib)$/;
/** Of tools alone: libraries linked at run time, in binaries of their own, which nothing of the page or the server takes along. */
const FINE_FOR_TOOLS = /^LGPL-3\.0-or-later$/;

/**
 * Whether a package may be used under its licence, an SPDX expression: every part of an AND must be fine, and one of an OR.
 * What cannot be read is not.
 */
export function isFine(expression: string, isTool = false): boolean {
  const words = expression.match(/[()]|[^\s()]+/g) ?? [];
  const one = (): boolean => {
    const word = words.shift() ?? "";
    if (word !== "(") return FINE.test(word) || (isTool && FINE_FOR_TOOLS.test(word));
    const within = any();
    return words.shift() === ")" && within;
  };
  const all = (): boolean => {
    const fits = [one()];
    while (words[0] === "AND" && words.shift()) fits.push(one());
    return fits.every(Boolean);
  };
  const any = (): boolean => {
    const fits = [all()];
    while (words[0] === "OR" && words.shift()) fits.push(all());
    return fits.some(Boolean);
  };
  return any() && words.length === 0;
}
