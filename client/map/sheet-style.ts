import type { LineLayerSpecification, StyleSpecification } from "maplibre-gl";
import { cellDiscs, cellEdges, cellSources } from "./cell-layers.ts";
import { CONTOURS, contourLabels, contourLines, contourSource } from "./contour-layers.ts";
import { TILE_px } from "./ground.ts";
import { NAMES, nameLayers } from "./names.ts";
import { NEAR_TILES, NEAR_ZOOM } from "./near.ts";
import type { Palette } from "./palette.ts";
import { seaTiles } from "./protocols.ts";
import { type ReliefColour, STRIPES } from "./relief.ts";

interface SheetOptions {
  /** Address of terrarium tiles, and the zoom of the deepest there are. */
  elevationTiles: string;
  deepest: number;
  palette: Palette;
  land: ReliefColour;
  /** The land once more, where it is not hatched. */
  tuned: ReliefColour;
  /** Address of tiles of contours. */
  contours: string;
}

/** What a configured basemap takes the place of: our own waters, borders and labels. */
export const OWN_GEOGRAPHY = [
  ...["coast", "near-coast", "lakes", "rivers", "borders", "near-borders", "near-regions"],
  ...NAMES,
];
/** Lines that give way to finer ones from near. */
export const FAR_LINES = ["coast", "borders"] as const;
/** The layer of stripes, hidden until the land is drawn. */
export const HATCHING = "stripes";
/** Below this layer a basemap's own are put in: the tunes stay on top. */
export const FIRST_CELL_LAYER = "cell-edges";

type LineSource = Pick<LineLayerSpecification, "source" | "source-layer" | "minzoom">;
type LinePaint = NonNullable<LineLayerSpecification["paint"]>;

/** The map as a sheet: tinted land, hatching, sea, water, borders, labels, community cells. */
export function sheetStyle(options: SheetOptions): StyleSpecification {
  const { elevationTiles, deepest, palette, land, tuned, contours } = options;
  const geojson = (name: string) => ({ type: "geojson" as const, data: `/geography/${name}.json` });
  const relief = (id: string, colour: ReliefColour) => ({
    id,
    type: "color-relief" as const,
    source: "elevation",
    paint: { "color-relief-color": colour },
  });
  const line = (id: string, from: LineSource, paint: LinePaint) =>
    ({ id, type: "line", ...from, paint }) as const;
  const near = (layer: string) => ({
    source: "near",
    "source-layer": layer,
    minzoom: NEAR_ZOOM,
  });
  const coast = { "line-color": palette.coast, "line-width": 0.7 };
  const border: LinePaint = {
    "line-color": palette.border,
    "line-width": 0.6,
    "line-dasharray": [4, 3],
    "line-opacity": 0.6,
  };
  return {
    version: 8,
    sources: {
      elevation: {
        type: "raster-dem",
        tiles: [elevationTiles],
        tileSize: TILE_px,
        // Each is made of four.
        maxzoom: deepest - 1,
        encoding: "terrarium",
      },
      [CONTOURS]: contourSource(contours, deepest - 1),
      sea: { type: "raster", tiles: [seaTiles(palette.sea)], tileSize: TILE_px },
      land: geojson("land"),
      lakes: geojson("lakes"),
      rivers: geojson("rivers"),
      borders: geojson("borders"),
      near: {
        type: "vector",
        tiles: [location.origin + NEAR_TILES],
        minzoom: NEAR_ZOOM,
        maxzoom: NEAR_ZOOM,
      },
      labels: { type: "geojson", data: { type: "FeatureCollection", features: [] } },
      ...cellSources(),
    },
    layers: [
      { id: "paper", type: "background", paint: { "background-color": palette.sea } },
      // Stripes lie between two tints of the same land: the upper one leaves out what they are to show on.
      relief("land", land),
      // Before that one has come all would be hatched: they are shown once it is there.
      {
        id: HATCHING,
        type: "background",
        layout: { visibility: "none" },
        paint: { "background-pattern": STRIPES },
      },
      relief("tuned", tuned),
      contourLines(palette),
      { id: "sea", type: "raster", source: "sea", paint: { "raster-fade-duration": 0 } },
      line("coast", { source: "land" }, coast),
      line("near-coast", near("land"), coast),
      { id: "lakes", type: "fill", source: "lakes", paint: { "fill-color": palette.sea } },
      {
        id: "rivers",
        type: "line",
        source: "rivers",
        minzoom: 2.5,
        paint: { "line-color": palette.river, "line-width": 0.6 },
      },
      line("borders", { source: "borders" }, border),
      line("near-borders", near("borders"), border),
      line("near-regions", near("regions"), { ...border, "line-opacity": 0.3 }),
      ...cellEdges(palette),
      contourLabels(palette),
      ...nameLayers(palette),
      ...cellDiscs(palette),
    ],
  };
}
