export type Theme = "light" | "dark";

/** The colours of both themes by name, out of the rules that the page really has. */
export function themes(): Record<Theme, Map<string, string>> {
  const found = { light: new Map<string, string>(), dark: new Map<string, string>() };
  for (const sheet of document.styleSheets) gather([...sheet.cssRules], "light", found);
  // What the dark theme does not change it shares.
  found.dark = new Map([...found.light, ...found.dark]);
  return found;
}

function gather(rules: CSSRule[], theme: Theme, found: Record<Theme, Map<string, string>>): void {
  for (const rule of rules) {
    if (rule instanceof CSSMediaRule && rule.conditionText.includes("color-scheme: dark")) {
      gather([...rule.cssRules], "dark", found);
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
