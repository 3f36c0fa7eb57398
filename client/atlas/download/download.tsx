import { dataWords } from "../../texts/data.ts";
import { DataFitAgain } from "./fit-again-panel.tsx";

/** Downloads, method, privacy, licences. */
export function DataDownload() {
  return (
    <div class="page">
      <section class="sheet" aria-labelledby="data">
        <h2 id="data">{dataWords.title}</h2>
        <p>{dataWords.intro}</p>
        <ul class="files">
          {dataWords.files.map(([href, what]) => (
            <li key={href}>
              <a href={href}>{what}</a> <code>{href}</code>
            </li>
          ))}
        </ul>
      </section>
      <DataFitAgain />
      <section class="sheet" aria-labelledby="method">
        <h2 id="method">{dataWords.method}</h2>
        {dataWords.methodText.map((paragraph) => (
          <p key={paragraph}>{paragraph}</p>
        ))}
      </section>
      <section class="sheet" aria-labelledby="privacy">
        <h2 id="privacy">{dataWords.privacy}</h2>
        <p>{dataWords.privacyText}</p>
      </section>
      <section class="sheet" aria-labelledby="licences">
        <h2 id="licences">{dataWords.licence}</h2>
        <ul>
          {dataWords.licences.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
    </div>
  );
}
