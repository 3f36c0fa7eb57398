import { t } from "../texts/en.ts";
import { DataFitAgain } from "./data-fit-again.tsx";

/** Downloads, method, privacy, licences. */
export function DataDownload() {
  return (
    <div class="page">
      <section class="sheet" aria-labelledby="data">
        <h2 id="data">{t.data.title}</h2>
        <p>{t.data.intro}</p>
        <ul class="files">
          {t.data.files.map(([href, what]) => (
            <li key={href}>
              <a href={href}>{what}</a> <code>{href}</code>
            </li>
          ))}
        </ul>
      </section>
      <DataFitAgain />
      <section class="sheet" aria-labelledby="method">
        <h2 id="method">{t.data.method}</h2>
        {t.data.methodText.map((paragraph) => (
          <p key={paragraph}>{paragraph}</p>
        ))}
      </section>
      <section class="sheet" aria-labelledby="privacy">
        <h2 id="privacy">{t.data.privacy}</h2>
        <p>{t.data.privacyText}</p>
      </section>
      <section class="sheet" aria-labelledby="licences">
        <h2 id="licences">{t.data.licence}</h2>
        <ul>
          {t.data.licences.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
    </div>
  );
}
