import type { ColorReliefLayerSpecification, StyleSpecification } from "maplibre-gl";
import { HATCH } from "./hatch.ts";
import { SEA, SEA_TILE_px, SEA_TILES } from "./sea.ts";
import { SEA_COLOUR } from "./tint.ts";

interface SheetOptions {
  /** Address of terrarium tiles, and the zoom of the deepest there are. */
  elevationTiles: string;
  deepest: number;
  colour: ReliefColour;
  /** Address of hatch tiles. */
  hatch: string;
}

/** The map as a sheet: tinted land, hatching, sea, water, borders, community cells, labels. */
export function sheetStyle(options: SheetOptions): StyleSpecification {
  const { elevationTiles, deepest, colour, hatch } = options;
  const geojson = (name: string) => ({ type: "geojson" as const, data: `/geography/${name}.json` });
  const empty = { type: "FeatureCollection" as const, features: [] };
  const ink = "#4b3a26";
  return {
    version: 8,
    sources: {
      elevation: {
        type: "raster-dem",
        tiles: [elevationTiles],
        tileSize: 256,
        maxzoom: deepest,
        encoding: "terrarium",
      },
      [HATCH]: {
        type: "raster",
        tiles: [hatch],
        tileSize: 256,
        maxzoom: deepest,
      },
      [SEA]: { type: "raster", tiles: [SEA_TILES], tileSize: SEA_TILE_px },
      land: geojson("land"),
      lakes: geojson("lakes"),
      rivers: geojson("rivers"),
      borders: geojson("borders"),
      cells: { type: "geojson", data: empty },
      // Cells whose discs would lie upon each other are counted together.
      "cell-centres": {
        type: "geojson",
        data: empty,
        cluster: true,
        clusterRadius: 30,
        clusterMaxZoom: CELLS_FROM_ZOOM,
        clusterProperties: { tunes: ["+", ["get", "tunes"]] },
      },
      labels: { type: "geojson", data: empty },
    },
    layers: [
      { id: "paper", type: "background", paint: { "background-color": SEA_COLOUR } },
      {
        id: "tint",
        type: "color-relief",
        source: "elevation",
        paint: { "color-relief-color": colour },
      },
      { id: "hatch", type: "raster", source: HATCH, paint: { "raster-fade-duration": 0 } },
      { id: "sea", type: "raster", source: SEA, paint: { "raster-fade-duration": 0 } },
      {
        id: "coast",
        type: "line",
        source: "land",
        paint: { "line-color": "#6d8797", "line-width": 0.7 },
      },
      { id: "lakes", type: "fill", source: "lakes", paint: { "fill-color": SEA_COLOUR } },
      {
        id: "rivers",
        type: "line",
        source: "rivers",
        minzoom: 2.5,
        paint: { "line-color": "#7f9bab", "line-width": 0.6 },
      },
      {
        id: "borders",
        type: "line",
        source: "borders",
        paint: {
          "line-color": ink,
          "line-width": 0.6,
          "line-dasharray": [4, 3],
          "line-opacity": 0.6,
        },
      },
      ...cellLayers(),
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
        paint: { "text-color": "#2c2216", "text-halo-color": "#fbf8ef", "text-halo-width": 1.4 },
      },
    ],
  };
}

/** Zoom from which a cell of about 250 km² is wider than its disc. */
const CELLS_FROM_ZOOM = 6;

function cellLayers(): StyleSpecification["layers"] {
  const mark = "#7a1f1f";
  return [
    {
      id: "cells",
      type: "fill",
      source: "cells",
      paint: { "fill-color": mark, "fill-opacity": 0.3 },
    },
    {
      id: "cell-edges",
      type: "line",
      source: "cells",
      paint: { "line-color": mark, "line-width": 1.2 },
    },
    {
      id: "cell-discs",
      type: "circle",
      source: "cell-centres",
      maxzoom: CELLS_FROM_ZOOM,
      paint: {
        "circle-color": mark,
        "circle-radius": ["interpolate", ["linear"], ["sqrt", ["get", "tunes"]], 1, 8, 10, 16],
        "circle-stroke-color": "#fbf8ef",
        "circle-stroke-width": 1.5,
      },
    },
    {
      id: "cell-counts",
      type: "symbol",
      source: "cell-centres",
      layout: {
        "text-field": ["to-string", ["get", "tunes"]],
        "text-font": ["Noto Sans"],
        "text-size": 12,
        "text-overlap": "always",
      },
      paint: { "text-color": "#ffffff", "text-halo-color": mark, "text-halo-width": 1.2 },
    },
  ];
}

type ReliefColour = NonNullable<
  NonNullable<ColorReliefLayerSpecification["paint"]>["color-relief-color"]
>;

/** Colours over elevation, m: [elevation, colour, elevation, colour, …]. */
export function reliefColour(stops: (number | string)[]): ReliefColour {
  return ["interpolate", ["linear"], ["elevation"], ...stops] as unknown as ReliefColour;
}
