import { useEffect, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { later } from "../parts/later.tsx";
import { t } from "../texts/app.ts";
import { dataWords } from "../texts/data.ts";
import { DataDownload } from "./data-download.tsx";

// Fetched when first opened: one brings the charts and the study along, the others their words.
const DataBands = later(() => import("./data-bands.tsx").then((m) => m.DataBands));
const DataStyle = later(() => import("./data-style.tsx").then((m) => m.DataStyle));
const Method = later(() => import("./method.tsx").then((m) => m.Method));

const PAGES = ["download", "bands", "method", "style"] as const;
type Page = (typeof PAGES)[number];

const addressOf = (page: Page) => (page === "download" ? "#/data" : `#/data/${page}`);

function pageInAddress(): Page {
  return PAGES.find((page) => addressOf(page) === location.hash) ?? "download";
}

/** Download, how well the bands hold, method, the parts of the page: pages with links between them. */
export function Data({ fit }: { fit: PublishedFit }) {
  const [page, setPage] = useState(pageInAddress);
  useEffect(() => {
    const onHash = () => setPage(pageInAddress());
    addEventListener("hashchange", onHash);
    return () => removeEventListener("hashchange", onHash);
  }, []);
  useEffect(() => {
    const within = `${t.views.data} · ${t.name}`;
    document.title = page === "download" ? within : `${dataWords.pages[page]} · ${within}`;
  }, [page]);
  return (
    <>
      <nav class="pages" aria-label={dataWords.pagesLabel}>
        {PAGES.map((name) => (
          <a key={name} href={addressOf(name)} aria-current={name === page ? "page" : undefined}>
            {dataWords.pages[name]}
          </a>
        ))}
      </nav>
      {page === "download" && <DataDownload />}
      {page === "bands" && <DataBands fit={fit} />}
      {page === "method" && <Method />}
      {page === "style" && <DataStyle />}
    </>
  );
}
