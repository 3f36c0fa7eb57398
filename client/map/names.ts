import type { ExpressionSpecification, StyleSpecification } from "maplibre-gl";
import { locale } from "../language.ts";
import type { Unit } from "../units.ts";
import { LETTERS } from "./letters.ts";
import { NEAR_ZOOM } from "./near.ts";
import type { Palette } from "./palette.ts";

/** Layers of places' names: the larger ones, and those that are seen from near. */
export const NAMES = ["labels", "near-labels"] as const;
/** Name of the picture of a place's point. */
export const DOT = "dot";
const DOT_px = 10;
/** From this zoom on a name has the point it belongs to. */
const DOTS_FROM_ZOOM = 5;

/** A place's name, and below it its elevation in a unit. */
export function nameText({ name, factor }: Unit): ExpressionSpecification {
  const shown: ExpressionSpecification = [
    "number-format",
    ["*", ["get", "elevation_m"], factor],
    { locale, "max-fraction-digits": 0 },
  ];
  return ["concat", ["get", "name"], "\n", shown, ` ${name}`];
}

/** The names that there is room for, the first ones first. */
export function nameLayers({ text, halo }: Palette): StyleSpecification["layers"] {
  const both = {
    type: "symbol" as const,
    layout: {
      ...LETTERS,
      "text-anchor": "top" as const,
      "text-offset": [0, 0.3] as [number, number],
      "icon-image": ["step", ["zoom"], "", DOTS_FROM_ZOOM, DOT] as ExpressionSpecification,
      "text-padding": 6,
    },
    paint: { "text-color": text, "text-halo-color": halo, "text-halo-width": 1.4 },
  };
  return [
    {
      ...both,
      id: "near-labels",
      source: "near",
      "source-layer": "places",
      minzoom: NEAR_ZOOM,
      filter: ["<=", ["get", "zoom"], ["zoom"]],
    },
    {
      ...both,
      id: "labels",
      source: "labels",
      // From afar the largest alone: each one more is looked at again whenever the map moves.
      filter: ["<", ["get", "rank"], ["step", ["zoom"], 400, 2, 1000, 3, 2500, 4, 10_000]],
      layout: { ...both.layout, "symbol-sort-key": ["get", "rank"] },
    },
  ];
}

/** A place's point as pixels. */
export function dot([red, green, blue]: readonly number[]) {
  const data = new Uint8ClampedArray(4 * DOT_px ** 2);
  const middle = (DOT_px - 1) / 2;
  for (let i = 0; i < DOT_px ** 2; i++) {
    const off = Math.hypot((i % DOT_px) - middle, Math.floor(i / DOT_px) - middle);
    const alpha = Math.min(1, Math.max(0, DOT_px / 2 - off));
    data.set([red as number, green as number, blue as number, 255 * alpha], 4 * i);
  }
  return { width: DOT_px, height: DOT_px, data };
}
