import { useEffect, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { MyHeater } from "../heater/my-heater.ts";
import { later } from "../parts/later.tsx";
import { useUnit } from "../parts/number-field.tsx";
import { atPoint, type Question } from "../question.ts";
import { t } from "../texts/app.ts";
import { dataWords } from "../texts/data.ts";

// Fetched when first opened: each brings its charts, cells or words along.
const MapPanel = later(() => import("./map-panel.tsx").then((m) => m.MapPanel));
const Scaling = later(() => import("./scaling.tsx").then((m) => m.Scaling));
const DataBands = later(() => import("./data-bands.tsx").then((m) => m.DataBands));
const Method = later(() => import("./method.tsx").then((m) => m.Method));
const DataDownload = later(() => import("./data-download.tsx").then((m) => m.DataDownload));
const Share = later(() => import("./share.tsx").then((m) => m.Share));
const DataStyle = later(() => import("./data-style.tsx").then((m) => m.DataStyle));

/** The pages by their addresses, in the order of their links. */
const ADDRESSES = {
  map: "#/map",
  scaling: "#/scaling",
  bands: "#/data/bands",
  method: "#/data/method",
  download: "#/data",
  share: "#/share",
  style: "#/data/style",
} as const;
type Page = keyof typeof ADDRESSES;
const PAGES = Object.keys(ADDRESSES) as Page[];

/** An address within the data that leads nowhere leads to all of it. */
function pageInAddress(): Page {
  const { hash } = location;
  const exact = PAGES.find((page) => ADDRESSES[page] === hash);
  const within = PAGES.find((page) => hash.startsWith(`${ADDRESSES[page]}/`));
  return exact ?? within ?? "map";
}

interface AtlasProps {
  fit: PublishedFit;
  question: Question;
  mine: MyHeater | null | undefined;
  onQuestion: (question: Question) => void;
  onShared: () => void;
}

/** Where one looks round: the map, how settings scale, the bands, the method, all tunes, and where a tune is shared. */
export function Atlas(props: AtlasProps) {
  const { fit, question, onQuestion } = props;
  const [page, setPage] = useState(pageInAddress);
  const [unit] = useUnit("elevation", "atlas.elevation");
  useEffect(() => {
    const onHash = () => setPage(pageInAddress());
    addEventListener("hashchange", onHash);
    return () => removeEventListener("hashchange", onHash);
  }, []);
  useEffect(() => {
    document.title = `${dataWords.pages[page]} · ${t.places.atlas} · ${t.name}`;
  }, [page]);
  return (
    <>
      <nav class="pages" aria-label={dataWords.pagesLabel}>
        {PAGES.map((name) => (
          <a key={name} href={ADDRESSES[name]} aria-current={name === page ? "page" : undefined}>
            {dataWords.pages[name]}
          </a>
        ))}
      </nav>
      {page === "map" && (
        <MapPanel
          fit={fit}
          question={question}
          unit={unit}
          onPoint={(found) => onQuestion(atPoint(question, found))}
          onQuestion={onQuestion}
        />
      )}
      {page === "scaling" && <Scaling fit={fit} />}
      {page === "bands" && <DataBands fit={fit} />}
      {page === "method" && <Method />}
      {page === "download" && <DataDownload />}
      {page === "share" && <Share fit={fit} mine={props.mine} onShared={props.onShared} />}
      {page === "style" && <DataStyle />}
    </>
  );
}
