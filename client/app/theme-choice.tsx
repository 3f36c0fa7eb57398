import { chooseTheme, THEMES, useTheme } from "../base/theme.ts";
import { t } from "../texts/app.ts";

/** The colours as the system has them, or one set of them for good. */
export function ThemeChoice() {
  const { chosen } = useTheme();
  return (
    <fieldset class="languages">
      <legend>{t.theme.title}</legend>
      {[undefined, ...THEMES].map((theme) => (
        <button
          type="button"
          key={theme}
          aria-pressed={theme === chosen}
          onClick={() => chooseTheme(theme)}
        >
          {t.theme[theme ?? "system"]}
        </button>
      ))}
    </fieldset>
  );
}

/** High contrast by one press where the sun shines on the screen, and back by another. */
export function SunButton() {
  const { shown } = useTheme();
  const isOn = shown === "contrast";
  return (
    <button
      type="button"
      class="sun"
      aria-pressed={isOn}
      aria-label={t.theme.contrast}
      title={t.theme.contrast}
      onClick={() =>
        chooseTheme(
          isOn
            ? matchMedia("(prefers-contrast: more)").matches
              ? "light"
              : undefined
            : "contrast",
        )
      }
    >
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <circle cx="12" cy="12" r="9" />
        <path d="M12 3a9 9 0 0 1 0 18z" />
      </svg>
    </button>
  );
}
