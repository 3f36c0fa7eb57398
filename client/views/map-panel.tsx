import { useEffect, useRef, useState } from "preact/hooks";
import type { End, PublishedFit } from "../../model/fit/group.ts";
import type { CellsAnswer, ElevationAnswer } from "../../server/contract.ts";
import { api } from "../api.ts";
import type { AtlasMap, Look } from "../map/atlas-map.ts";
import { CellList } from "../map/cell-list.tsx";
import { Legend } from "../map/legend.tsx";
import { tintStops, tunedElevations } from "../map/tint.ts";
import type { Question } from "../question.ts";
import { t } from "../texts/app.ts";
import { mapWords } from "../texts/map.ts";
import { formatIn, type Unit } from "../units.ts";

interface MapPanelProps {
  fit: PublishedFit;
  question: Question;
  unit: Unit;
  onPoint: (found: ElevationAnswer) => void;
}

/** On a narrow screen the map lies far below the answer; its libraries wait until it is this near. */
const NEAR_px = 400;

/** Settles once an element is on the screen or near it. */
function nearScreen(element: HTMLElement): Promise<void> {
  return new Promise((near) => {
    const watch = new IntersectionObserver(
      (seen) => {
        if (!seen.some(({ isIntersecting }) => isIntersecting)) return;
        watch.disconnect();
        near();
      },
      { rootMargin: `${NEAR_px}px` },
    );
    watch.observe(element);
  });
}

/** The map, loaded after the answer, with its legend and its twin in text. */
export function MapPanel({ fit, question, unit, onPoint }: MapPanelProps) {
  const container = useRef<HTMLDivElement>(null);
  const map = useRef<AtlasMap | null>(null);
  const [state, setState] = useState<"loading" | "ready" | "none" | "lost">("loading");
  const [end, setEnd] = useState<End>("low");
  const [cells, setCells] = useState<CellsAnswer | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  const look = useRef<() => Look>(() => ({ stops: [], tuned: null }));
  look.current = () => ({
    stops: tintStops(fit, question, end),
    tuned: tunedElevations(fit, question, end),
  });
  const pick = useRef<(lat: number, lon: number) => void>(() => {});
  pick.current = async (lat, lon) => {
    try {
      setFailed(null);
      onPoint(await api.elevation(lat, lon));
    } catch (error) {
      setFailed((error as Error).message);
    }
  };

  useEffect(() => {
    let gone = false;
    const open = async () => {
      if (container.current) await nearScreen(container.current);
      if (gone) return;
      const [{ AtlasMap }, configuration] = await Promise.all([
        import("../map/atlas-map.ts"),
        api.map().catch(() => ({ basemap_style: null, elevation_tiles: null })),
      ]);
      if (gone || !container.current) return;
      map.current = new AtlasMap({
        container: container.current,
        configuration,
        label: mapWords.label,
        look: look.current(),
        onPoint: (lat, lon) => pick.current(lat, lon),
        onLost: () => setState("lost"),
      });
      setState("ready");
    };
    open().catch(() => setState("none"));
    return () => {
      gone = true;
      map.current?.remove();
      map.current = null;
    };
  }, []);

  useEffect(() => {
    if (state === "ready") void map.current?.tint(look.current());
  }, [state, fit, question, end]);

  useEffect(() => {
    if (state === "ready") void map.current?.label((m) => formatIn(m, unit));
  }, [state, unit]);

  useEffect(() => {
    api.cells().then(setCells, () => {});
  }, [fit.version]);

  useEffect(() => {
    if (state === "ready" && cells) void map.current?.showCells(cells.cells);
  }, [state, cells]);

  useEffect(() => {
    const { lat, lon, place } = question;
    if (state === "ready" && lat !== null && lon !== null)
      map.current?.show(lat, lon, place !== null);
  }, [state, question.lat, question.lon, question.place]);

  return (
    <section class="map-side sheet" aria-labelledby="map">
      <div class="map-head">
        <h2 id="map">{mapWords.title}</h2>
        <div class="field inline">
          <label for="map-end">{mapWords.end}</label>
          <select id="map-end" value={end} onChange={(e) => setEnd(e.currentTarget.value as End)}>
            <option value="low">{t.low}</option>
            <option value="high">{t.high}</option>
          </select>
        </div>
      </div>
      <div class="map" ref={container} data-state={state}>
        {state === "loading" && <p class="map-word">{mapWords.loading}</p>}
        {state === "none" && <p class="map-word">{mapWords.none}</p>}
      </div>
      {state === "lost" && <p class="warning">{mapWords.lost}</p>}
      {failed && <p class="error">{failed}</p>}
      <Legend fit={fit} question={question} end={end} />
      <p class="hint">
        {state === "ready" && mapWords.click} {mapWords.credit}.
      </p>
      <CellList cells={cells} unit={unit} />
    </section>
  );
}
