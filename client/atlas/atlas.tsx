import { useEffect, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { atPoint, type Question } from "../base/question.ts";
import { t } from "../texts/app.ts";
import { dataWords } from "../texts/data.ts";
import { useAddressChange } from "../ui/address-change.ts";
import { later } from "../ui/later.tsx";
import { useUnit } from "../ui/number-field.tsx";

// Fetched when first opened: each brings its charts, cells or words along.
const MapPanel = later(() => import("../map/map-panel.tsx").then((m) => m.MapPanel));
const Scaling = later(() => import("./scaling/scaling.tsx").then((m) => m.Scaling));
const DataBands = later(() => import("./bands/bands.tsx").then((m) => m.DataBands));
const Method = later(() => import("./method.tsx").then((m) => m.Method));
const DataDownload = later(() => import("./download/download.tsx").then((m) => m.DataDownload));
const Share = later(() => import("../share/share.tsx").then((m) => m.Share));
const DataStyle = later(() => import("./signs/signs.tsx").then((m) => m.DataStyle));

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
  useAddressChange(() => setPage(pageInAddress()));
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
          mine={props.mine}
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
