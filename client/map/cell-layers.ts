import type { StyleSpecification } from "maplibre-gl";
import { LETTERS } from "./letters.ts";
import type { Palette } from "./palette.ts";

/** Zoom from which a cell of about 250 km² is wider than its disc: none are counted together any more. */
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

/** Layers of the discs that open: the numbers lie on them. */
export const DISCS = ["cell-discs", "cell-counts"];
/** Names of places keep so far off a number as its disc is wide. */
const DISC_px = 12;

/** The edges of the cells, which are seen from near: the land within keeps its colour, by which rates are read. */
export function cellEdges({ mark }: Palette): StyleSpecification["layers"] {
  return [
    {
      id: "cell-edges",
      type: "line",
      source: "cells",
      paint: { "line-color": mark, "line-width": 1.2 },
    },
  ];
}

/**
 * A disc with the number of tunes, above the names of places: numbers are placed before names, which keep clear of
 * them.
 */
export function cellDiscs({ mark }: Palette): StyleSpecification["layers"] {
  return [
    {
      id: "cell-discs",
      type: "circle",
      source: "cell-centres",
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
        ...LETTERS,
        "text-overlap": "always",
        "text-padding": DISC_px,
      },
      paint: { "text-color": "#ffffff", "text-halo-color": mark, "text-halo-width": 1.2 },
    },
  ];
}
