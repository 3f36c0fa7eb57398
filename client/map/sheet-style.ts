import type { StyleSpecification } from "maplibre-gl";
import { cellAreas, cellDiscs, cellSources } from "./cell-layers.ts";
import { TILE_px } from "./ground.ts";
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
}

/** What a configured basemap takes the place of: our own waters, borders and labels. */
export const OWN_GEOGRAPHY = ["coast", "lakes", "rivers", "borders", "labels"] as const;
/** Below this layer a basemap's own are put in: the tunes stay on top. */
export const FIRST_CELL_LAYER = "cells";

/** The map as a sheet: tinted land, hatching, sea, water, borders, labels, community cells. */
export function sheetStyle(options: SheetOptions): StyleSpecification {
  const { elevationTiles, deepest, palette, land, tuned } = options;
  const geojson = (name: string) => ({ type: "geojson" as const, data: `/geography/${name}.json` });
  const relief = (id: string, colour: ReliefColour) => ({
    id,
    type: "color-relief" as const,
    source: "elevation",
    paint: { "color-relief-color": colour },
  });
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
      sea: { type: "raster", tiles: [seaTiles(palette.sea)], tileSize: TILE_px },
      land: geojson("land"),
      lakes: geojson("lakes"),
      rivers: geojson("rivers"),
      borders: geojson("borders"),
      labels: { type: "geojson", data: { type: "FeatureCollection", features: [] } },
      ...cellSources(),
    },
    layers: [
      { id: "paper", type: "background", paint: { "background-color": palette.sea } },
      // Stripes lie between two tints of the same land: the upper one leaves out what they are to show on.
      relief("land", land),
      { id: "stripes", type: "background", paint: { "background-pattern": STRIPES } },
      relief("tuned", tuned),
      { id: "sea", type: "raster", source: "sea", paint: { "raster-fade-duration": 0 } },
      {
        id: "coast",
        type: "line",
        source: "land",
        paint: { "line-color": palette.coast, "line-width": 0.7 },
      },
      { id: "lakes", type: "fill", source: "lakes", paint: { "fill-color": palette.sea } },
      {
        id: "rivers",
        type: "line",
        source: "rivers",
        minzoom: 2.5,
        paint: { "line-color": palette.river, "line-width": 0.6 },
      },
      {
        id: "borders",
        type: "line",
        source: "borders",
        paint: {
          "line-color": palette.border,
          "line-width": 0.6,
          "line-dasharray": [4, 3],
          "line-opacity": 0.6,
        },
      },
      ...cellAreas(palette),
      {
        id: "labels",
        type: "symbol",
        source: "labels",
        // From afar the largest alone: each one more is looked at again whenever the map moves.
        filter: ["<", ["get", "rank"], ["step", ["zoom"], 400, 2, 1000, 3, 2500, 4, 10_000]],
        layout: {
          "text-field": ["get", "text"],
          "text-font": ["Noto Sans"],
          "text-size": 12,
          "text-anchor": "top",
          "text-offset": [0, 0.2],
          "symbol-sort-key": ["get", "rank"],
          "text-padding": 6,
        },
        paint: {
          "text-color": palette.text,
          "text-halo-color": palette.halo,
          "text-halo-width": 1.4,
        },
      },
      ...cellDiscs(palette),
    ],
  };
}
