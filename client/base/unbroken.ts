/** Units and signs that figures stand before, the longest first where one begins another. */
const UNITS =
  "%|k?Hz|rpm|U/min|ppm|kWh?|Wh?|V|Ah?|L(?:/h)?|[mµ]L|[kcm]?m[²³]?|mi|ft|kg(?:/m³)?|hPa|inHg|°[CF]|K|h|min|s|[kMG]B";
/** The space behind a figure, or behind what will be one in a template (`}`) or in markup (`>`), and before its unit. */
const BETWEEN = new RegExp(`(?<=[\\d}>]) (?=(?:${UNITS})(?![\\p{L}\\d]))`, "gu");

/**
 * The same text with no line's end between a figure and its unit. The page's sources go through it when the page is built,
 * so that they are written with ordinary spaces; it may meet code, where a no-break space is a space like any other.
 */
export const unbroken = (text: string): string => text.replace(BETWEEN, "\u00a0");
