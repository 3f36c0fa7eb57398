import { chooseLanguage, LANGUAGE_NAMES, LANGUAGES, language } from "../language.ts";
import { t } from "../texts/app.ts";

/** The languages the page speaks, each named in itself. A choice loads the page again; what was typed is remembered. */
export function LanguageChoice() {
  return (
    <fieldset class="languages">
      <legend>{t.language}</legend>
      {LANGUAGES.map((one) => (
        <button
          type="button"
          key={one}
          lang={one}
          aria-pressed={one === language}
          onClick={() => chooseLanguage(one)}
        >
          {LANGUAGE_NAMES[one]}
        </button>
      ))}
    </fieldset>
  );
}
