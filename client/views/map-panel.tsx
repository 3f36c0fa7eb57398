import { useEffect, useRef, useState } from "preact/hooks";
import type { End, PublishedFit } from "../../model/fit/group.ts";
import type { CellsAnswer, ElevationAnswer } from "../../server/contract.ts";
import { api } from "../api.ts";
import type { AtlasMap } from "../map/atlas-map.ts";
import { colourOf, RAMP, tintRange, tintStops, tunedElevations } from "../map/tint.ts";
import type { Question } from "../question.ts";
import { t } from "../texts/en.ts";
import { format, formatIn, type Unit } from "../units.ts";

interface MapPanelProps {
  fit: PublishedFit;
  question: Question;
  unit: Unit;
  onPoint: (found: ElevationAnswer) => void;
}

/** The map, loaded after the answer, with its legend and its twin in text. */
export function MapPanel({ fit, question, unit, onPoint }: MapPanelProps) {
  const container = useRef<HTMLDivElement>(null);
  const map = useRef<AtlasMap | null>(null);
  const [state, setState] = useState<"loading" | "ready" | "none" | "lost">("loading");
  const [end, setEnd] = useState<End>("low");
  const [cells, setCells] = useState<CellsAnswer | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
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
      const [{ AtlasMap }, configuration] = await Promise.all([
        import("../map/atlas-map.ts"),
        api.map().catch(() => ({ basemap_style: null, elevation_tiles: null })),
      ]);
      if (gone || !container.current) return;
      map.current = new AtlasMap({
        container: container.current,
        configuration,
        label: t.map.label,
        onPoint: (lat, lon) => pick.current(lat, lon),
        onLost: () => setState("lost"),
      });
      setState("ready");
    };
    // The answer is painted first.
    const timer = setTimeout(() => open().catch(() => setState("none")), 50);
    return () => {
      gone = true;
      clearTimeout(timer);
      map.current?.remove();
      map.current = null;
    };
  }, []);

  useEffect(() => {
    if (state !== "ready") return;
    void map.current?.tint(tintStops(fit, question, end), tunedElevations(fit, question, end));
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
        <h2 id="map">{t.map.title}</h2>
        <div class="field inline">
          <label for="map-end">{t.map.end}</label>
          <select id="map-end" value={end} onChange={(e) => setEnd(e.currentTarget.value as End)}>
            <option value="low">{t.low}</option>
            <option value="high">{t.high}</option>
          </select>
        </div>
      </div>
      <div class="map" ref={container} data-state={state}>
        {state === "loading" && <p class="map-word">{t.map.loading}</p>}
        {state === "none" && <p class="map-word">{t.map.none}</p>}
      </div>
      {state === "lost" && <p class="warning">{t.map.lost}</p>}
      {failed && <p class="error">{failed}</p>}
      <Legend fit={fit} question={question} end={end} />
      <p class="hint">
        {state === "ready" && t.map.click} {t.map.credit}.
      </p>
      <CellList cells={cells} unit={unit} />
    </section>
  );
}

/** Steps of the tint with their pump rates. */
function Legend({ fit, question, end }: { fit: PublishedFit; question: Question; end: End }) {
  const range = tintRange(fit, question, end);
  const steps = RAMP.map(
    (_, i) => range.from_Hz + ((range.to_Hz - range.from_Hz) * i) / (RAMP.length - 1),
  );
  return (
    <figure class="legend">
      <figcaption>{t.map.legend(t.endWord[end])}</figcaption>
      <ol>
        {steps.map((value) => (
          <li key={value}>
            <svg viewBox="0 0 40 16" aria-hidden="true">
              <rect width="40" height="16" fill={colourOf(value, range)} />
            </svg>
            {format(value, end === "low" ? 2 : 1)}
          </li>
        ))}
      </ol>
      <p class="hint">{t.map.hatched}</p>
    </figure>
  );
}

/** Every fact of the cells as text. */
function CellList({ cells, unit }: { cells: CellsAnswer | null; unit: Unit }) {
  if (!cells) return null;
  return (
    <details>
      <summary>
        {t.map.cells} ({cells.cells.length})
      </summary>
      {cells.cells.length === 0 ? (
        <p>{t.map.cellsNone}</p>
      ) : (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard
        <section class="scrolls" tabIndex={0} aria-label={t.map.cells}>
          <table>
            <thead>
              <tr>
                {t.map.cellColumns.map((column) => (
                  <th key={column} scope="col">
                    {column}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {cells.cells.map((cell) => (
                <tr key={cell.cell}>
                  <th scope="row">
                    {format(cell.lat, 1)}, {format(cell.lon, 1)}
                  </th>
                  <td>{formatIn(cell.elevation_m, unit)}</td>
                  <td>{cell.tunes}</td>
                  <td>{cell.contributors}</td>
                  <td>{t.map.shift(cell.mixture_shift_pct.low)}</td>
                  <td>{t.map.shift(cell.mixture_shift_pct.high)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </details>
  );
}
