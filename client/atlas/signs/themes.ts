import { conditionalTheme, THEMES, type Theme } from "../../base/theme.ts";

type Colours = Map<string, string>;

/** The colours of each theme by name, out of the rules that the page really has. */
export function themes(): Record<Theme, Colours> {
  const found = { light: new Map(), dark: new Map(), contrast: new Map() };
  for (const sheet of document.styleSheets) gather([...sheet.cssRules], "light", found);
  // What another theme does not change it shares.
  return Object.fromEntries(
    THEMES.map((theme) => [theme, new Map([...found.light, ...found[theme]])]),
  ) as Record<Theme, Colours>;
}

function gather(rules: CSSRule[], theme: Theme, found: Record<Theme, Colours>): void {
  for (const rule of rules) {
    if (rule instanceof CSSMediaRule) {
      const its = conditionalTheme(rule);
      if (its) gather([...rule.cssRules], its, found);
    }
    if (!(rule instanceof CSSStyleRule) || rule.selectorText !== ":root") continue;
    for (const name of rule.style) {
      const value = rule.style.getPropertyValue(name).trim();
      if (name.startsWith("--") && value.startsWith("#"))
        found[theme].set(name.slice(2), whole(value));
    }
  }
}

/** "#abc" as "#aabbcc": builds shorten colours. */
function whole(colour: string): string {
  return colour.length === 4 ? colour.replace(/[\da-f]/gi, "$&$&") : colour;
}
