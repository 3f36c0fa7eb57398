import type { StyleSpecification } from "maplibre-gl";
import type { Palette } from "./palette.ts";

/** Zoom from which a cell of about 250 km² is wider than its disc. */
const CELLS_FROM_ZOOM = 6;

/** Community cells, and their centres: cells whose discs would lie upon each other are counted together. */
export function cellSources(): StyleSpecification["sources"] {
  const empty = { type: "FeatureCollection" as const, features: [] };
  return {
    cells: { type: "geojson", data: empty },
    "cell-centres": {
      type: "geojson",
      data: empty,
      cluster: true,
      clusterRadius: 30,
      clusterMaxZoom: CELLS_FROM_ZOOM,
      clusterProperties: { tunes: ["+", ["get", "tunes"]] },
    },
  };
}

/** A disc with the number of tunes from afar, the cell itself from near. */
export function cellLayers({ mark }: Palette): StyleSpecification["layers"] {
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
