import type { LayerSpecification, SourceSpecification } from "maplibre-gl";
import { locale } from "../language.ts";
import { CONTOUR_LAYER } from "./contour.ts";
import { LETTERS } from "./letters.ts";
import type { Palette } from "./palette.ts";

/** Name of the lines' source. */
export const CONTOURS = "contours";
const LINES = { source: CONTOURS, "source-layer": CONTOUR_LAYER };

/** @param deepest zoom of the deepest tiles */
export function contourSource(tiles: string, deepest: number): SourceSpecification {
  return { type: "vector", tiles: [tiles], minzoom: 0, maxzoom: deepest };
}

/** Lines of equal pump rate, below the sea: what of them lies in it is covered. */
export function contourLines({ contour }: Palette): LayerSpecification {
  return {
    id: "contours",
    type: "line",
    ...LINES,
    layout: { "line-join": "round" },
    paint: {
      "line-color": contour,
      "line-width": ["interpolate", ["linear"], ["zoom"], 1, 0.5, 6, 1.2],
    },
  };
}

/** Their rates, written along them where names and numbers leave room. */
export function contourLabels({ text, halo }: Palette): LayerSpecification {
  return {
    id: "contour-labels",
    type: "symbol",
    ...LINES,
    layout: {
      "symbol-placement": "line",
      "symbol-spacing": 70,
      "text-field": [
        "concat",
        ["number-format", ["get", "pump_Hz"], { locale, "min-fraction-digits": 1 }],
        " Hz",
      ],
      ...LETTERS,
      "text-padding": 2,
      "text-max-angle": 66,
    },
    paint: { "text-color": text, "text-halo-color": halo, "text-halo-width": 1.6 },
  };
}
