import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { Cell } from "../../server/contract.ts";
import { api } from "../base/answers/api.ts";
import { mapWords } from "../texts/map.ts";
import { nearScreen } from "../ui/near-screen.ts";
import type { Unit } from "../units.ts";
import type { AtlasMap, MapPlace } from "./atlas-map.ts";
import { contoursOf } from "./contours.ts";
import { drawsMaps } from "./draws-maps.ts";
import { LandPicture } from "./land-picture.tsx";
import type { Palette } from "./palette.ts";
import { type Asked, tintStops, tunedElevations } from "./tint.ts";

interface MapCanvasProps {
  asked: Asked;
  palette: Palette;
  unit: Unit;
  cells: readonly Cell[];
  /** The chosen point; near: brought into view from near. */
  point: { lat: number | null; lon: number | null; near: boolean };
  /** What the keyboard's way to a point is called. */
  takeMiddle: string;
  onPoint: (lat: number, lon: number) => void;
  onCell?: (cell: string) => void;
  /** Cells that stand for several are seen from near. */
  onWide?: (cells: readonly string[]) => void;
  /** What a tap has come to. */
  children?: ComponentChildren;
}

type State = "loading" | "ready" | "lost" | "none";

/** The map; a still picture and a word where it cannot be drawn. Its library is fetched when it is near the screen. */
export function MapCanvas(props: MapCanvasProps) {
  const { asked, palette, unit, cells, point, takeMiddle, onPoint, onCell, onWide } = props;
  const container = useRef<HTMLDivElement>(null);
  const foot = useRef<HTMLDivElement>(null);
  const map = useRef<AtlasMap | null>(null);
  const place = useRef<MapPlace | undefined>(undefined);
  const [state, setState] = useState<State>("loading");
  const [tries, setTries] = useState(0);
  const [instead, setInstead] = useState<{ ground?: boolean; basemap?: boolean }>({});
  const look = {
    stops: tintStops(asked, palette),
    tuned: tunedElevations(asked),
    contours: contoursOf(asked),
  };
  const now = useRef({ look, onPoint, onCell, onWide });
  now.current = { look, onPoint, onCell, onWide };

  useEffect(() => {
    let gone = false;
    const open = async () => {
      if (container.current) await nearScreen(container.current);
      if (gone) return;
      if (!drawsMaps()) return setState("none");
      const [{ AtlasMap }, configuration] = await Promise.all([
        import("./atlas-map.ts"),
        api.map().catch(() => ({ basemap_style: null, elevation_tiles: null })),
        // What the map writes in a font that is not there yet it would not write anew later.
        document.fonts.load('12px "Noto Sans"').catch(() => {}),
      ]);
      if (gone || !container.current) return;
      map.current = new AtlasMap({
        container: container.current,
        configuration,
        label: mapWords.label,
        beyond: mapWords.beyond,
        palette,
        look: now.current.look,
        view: place.current,
        onPoint: (lat, lon) => now.current.onPoint(lat, lon),
        onCell: (cell) => now.current.onCell?.(cell),
        onWide: (cells) => now.current.onWide?.(cells),
        onLost: () => setState("lost"),
        onRestored: () => setState("ready"),
        onFallback: (of) => setInstead((known) => (known[of] ? known : { ...known, [of]: true })),
      });
      setState("ready");
    };
    open().catch(() => setState("none"));
    return () => {
      gone = true;
      place.current = map.current?.place;
      map.current?.remove();
      map.current = null;
      setState("loading");
    };
  }, [palette, tries]);

  const ready = state === "ready" ? map.current : null;
  useEffect(() => void ready?.tint(look), [ready, JSON.stringify(look)]);
  useEffect(() => void ready?.label(unit), [ready, unit]);
  useEffect(() => void ready?.showCells(cells), [ready, cells]);
  useEffect(() => {
    const { lat, lon, near } = point;
    if (lat !== null && lon !== null)
      ready?.show(lat, lon, near, overlap_px(container.current, foot.current));
  }, [ready, point.lat, point.lon, point.near]);

  const still = state === "none" || state === "lost";
  return (
    <>
      <div class="map" ref={container} data-state={state}>
        {state === "loading" && <p class="map-word">{mapWords.loading}</p>}
      </div>
      {still && (
        <>
          <p class="warning">{state === "none" ? mapWords.none : mapWords.lost}</p>
          <LandPicture look={look} palette={palette} {...point} onPoint={onPoint} />
        </>
      )}
      <div class="map-foot-place" ref={foot}>
        {props.children}
      </div>
      {(state === "lost" || (state === "none" && drawsMaps())) && (
        <button type="button" onClick={() => setTries(tries + 1)}>
          {mapWords.again}
        </button>
      )}
      {instead.ground && <p class="note">{mapWords.builtInGround}</p>}
      {instead.basemap && <p class="note">{mapWords.builtInBasemap}</p>}
      {state === "ready" && (
        <div class="row">
          <button
            type="button"
            onClick={() => {
              const [lon, lat] = map.current?.place.center ?? [0, 0];
              onPoint(lat, ((((lon + 180) % 360) + 360) % 360) - 180);
            }}
          >
            {takeMiddle}
          </button>
        </div>
      )}
    </>
  );
}

/** How much of the map's foot lies under what a tap has come to, px. */
function overlap_px(map: HTMLElement | null, foot: HTMLElement | null): number {
  const over = foot?.firstElementChild?.getBoundingClientRect();
  const under = map?.getBoundingClientRect();
  return over && under ? Math.max(0, under.bottom - over.top) : 0;
}
