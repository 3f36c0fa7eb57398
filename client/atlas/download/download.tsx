import { dataWords } from "../../texts/data.ts";
import { DataFitAgain } from "./fit-again-panel.tsx";

const ADDRESSES = {
  csv: "/api/tunes.csv",
  geojson: "/api/tunes.geojson",
  parquet: "/api/tunes.parquet",
  data: "/api/data",
  dictionary: "/api/dictionary.json",
  metadata: "/api/tunes.csv-metadata.json",
  fit: "/api/fit",
  openapi: "/api/openapi.json",
} as const;
const FILES = Object.keys(ADDRESSES) as (keyof typeof ADDRESSES)[];

/** Downloads, method, privacy, licences. */
export function DataDownload() {
  return (
    <div class="page">
      <section class="sheet" aria-labelledby="data">
        <h2 id="data">{dataWords.title}</h2>
        <p>{dataWords.intro}</p>
        <ul class="files">
          {FILES.map((file) => (
            <li key={file}>
              <a href={ADDRESSES[file]}>{dataWords.files[file]}</a> <code>{ADDRESSES[file]}</code>
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
