import { useEffect, useState } from "preact/hooks";
import { forget, recall, remember } from "./remember.ts";

/** Colours for the day, for the night, and for bright sun. */
export const THEMES = ["light", "dark", "contrast"] as const;
export type Theme = (typeof THEMES)[number];

/** What the system asks for a theme by, as the style sheets say it; light is what is left. */
const CONDITIONS = {
  dark: "(prefers-color-scheme: dark)",
  contrast: "(prefers-contrast: more)",
} as const;
type Conditional = keyof typeof CONDITIONS;

const CHANGED = "hypsotune-theme";
/** Which theme a rule is for, once its condition has given way to a choice. */
const themeOfRule = new WeakMap<CSSMediaRule, Conditional>();
let now: Theme | undefined;

/** The theme that a rule of the style sheets is for; none, if its condition asks for none. */
export function conditionalTheme(rule: CSSMediaRule): Conditional | undefined {
  const known = themeOfRule.get(rule);
  if (known) return known;
  const found = (Object.keys(CONDITIONS) as Conditional[]).find((theme) =>
    rule.conditionText.includes(CONDITIONS[theme].slice(1, -1)),
  );
  if (found) themeOfRule.set(rule, found);
  return found;
}

/** Makes the style sheets take a theme, whatever the system asks for; without one the system decides. */
function apply(theme: Theme | undefined): void {
  now = theme;
  for (const sheet of document.styleSheets) {
    for (const rule of sheet.cssRules) {
      if (!(rule instanceof CSSMediaRule)) continue;
      const its = conditionalTheme(rule);
      if (its) rule.media.mediaText = theme ? (theme === its ? "all" : "not all") : CONDITIONS[its];
    }
  }
}

/** Takes up what was chosen in this browser. */
export function applyChosenTheme(): void {
  const chosen = recall<Theme>("theme");
  apply(chosen && THEMES.includes(chosen) ? chosen : undefined);
}

export function chooseTheme(theme: Theme | undefined): void {
  if (theme) remember("theme", theme);
  else forget("theme");
  apply(theme);
  dispatchEvent(new Event(CHANGED));
}

/** The theme that the page shows. */
export function shownTheme(): Theme {
  const asks = (theme: Conditional) => matchMedia(CONDITIONS[theme]).matches;
  return now ?? (asks("contrast") ? "contrast" : asks("dark") ? "dark" : "light");
}

/** The theme chosen here and the one shown, also when either changes. */
export function useTheme(): { chosen: Theme | undefined; shown: Theme } {
  const read = () => ({ chosen: now, shown: shownTheme() });
  const [themes, setThemes] = useState(read);
  useEffect(() => {
    const hear = () => setThemes(read());
    const queries = Object.values(CONDITIONS).map((condition) => matchMedia(condition));
    for (const query of queries) query.addEventListener("change", hear);
    addEventListener(CHANGED, hear);
    // It may have changed between the drawing and now.
    hear();
    return () => {
      for (const query of queries) query.removeEventListener("change", hear);
      removeEventListener(CHANGED, hear);
    };
  }, []);
  return themes;
}
