import "maplibre-gl/dist/maplibre-gl.css";
import {
  type GeoJSONSource,
  Map as GlMap,
  Marker,
  NavigationControl,
  type RasterTileSource,
  setWorkerUrl,
} from "maplibre-gl";
import workerUrl from "maplibre-gl/dist/maplibre-gl-worker.mjs?url";
import type { Cell, MapConfiguration } from "../../server/contract.ts";
import { HATCH, hatchTiles, registerHatch, type Tuned } from "./hatch.ts";
import { registerSea } from "./sea.ts";
import { reliefColour, sheetStyle } from "./sheet-style.ts";
import { SEA_COLOUR } from "./tint.ts";

setWorkerUrl(workerUrl);
registerHatch();
registerSea(SEA_COLOUR);

/** The built-in elevation tiles, zooms 0–4. */
const BUILT_IN_TILES = "/geography/tiles/{z}/{x}/{y}.png";
const DEEPEST_BUILT_IN_ZOOM = 4;
const DEEPEST_CONFIGURED_ZOOM = 12;

/** What the map shows and tells. */
export interface AtlasMapOptions {
  container: HTMLElement;
  configuration: MapConfiguration;
  label: string;
  look: Look;
  onPoint: (lat: number, lon: number) => void;
  onLost: () => void;
}

/** How the land looks: colours over elevation, and what is not hatched. */
export interface Look {
  stops: (number | string)[];
  tuned: Tuned;
}

/** The map of suggested pump rates: land by tint, hatching, sea, water, borders, cells, labels, the chosen point. */
export class AtlasMap {
  readonly #map: GlMap;
  readonly #tiles: string;
  readonly #ready: Promise<void>;
  #look: string;
  #marker: Marker | undefined;

  constructor({ container, configuration, label, look, onPoint, onLost }: AtlasMapOptions) {
    const configured = configuration.elevation_tiles;
    const builtIn = new URL(BUILT_IN_TILES, location.href).href;
    this.#tiles = configured ?? builtIn.replaceAll("%7B", "{").replaceAll("%7D", "}");
    this.#map = new GlMap({
      container,
      style: sheetStyle({
        elevationTiles: this.#tiles,
        deepest: configured ? DEEPEST_CONFIGURED_ZOOM : DEEPEST_BUILT_IN_ZOOM,
        colour: reliefColour(look.stops),
        hatch: hatchTiles(look.tuned, this.#tiles),
      }),
      center: [10, 25],
      zoom: 1,
      minZoom: 0,
      maxZoom: configured ? 13 : 8,
      dragRotate: false,
      pitchWithRotate: false,
      attributionControl: false,
      // None at all would place every label anew in each frame.
      fadeDuration: 100,
    });
    this.#look = JSON.stringify(look);
    this.#map.touchZoomRotate.disableRotation();
    this.#map.addControl(new NavigationControl({ showCompass: false }), "top-right");
    this.#map.getCanvas().setAttribute("aria-label", label);
    this.#map.on("click", ({ lngLat }) => {
      const { lng, lat } = lngLat.wrap();
      onPoint(lat, lng);
    });
    this.#map.on("webglcontextlost", onLost);
    this.#map.on("movestart", () => this.#busy(true));
    this.#map.on("idle", () => this.#busy(false));
    this.#ready = new Promise((done) => this.#map.once("load", () => done()));
  }

  /** Tints the land and hatches what lies outside the tuned elevations. */
  async tint(look: Look): Promise<void> {
    await this.#ready;
    if (this.#look === JSON.stringify(look)) return;
    this.#look = JSON.stringify(look);
    this.#busy(true);
    this.#map.setPaintProperty("tint", "color-relief-color", reliefColour(look.stops));
    this.#map.getSource<RasterTileSource>(HATCH)?.setTiles([hatchTiles(look.tuned, this.#tiles)]);
  }

  /** Place labels carry their elevation in the person's unit. */
  async label(format: (elevation_m: number) => string): Promise<void> {
    await Promise.all([this.#ready, document.fonts.load('12px "Noto Sans"')]);
    const response = await fetch("/geography/labels.json");
    if (!response.ok) return;
    const labels = await response.json();
    for (const { properties } of labels.features) {
      properties.text = `${properties.name}\n${format(properties.elevation_m)}`;
    }
    this.#map.getSource<GeoJSONSource>("labels")?.setData(labels);
  }

  /** Community cells with their number of tunes: a disc from afar, the cell itself from near. */
  async showCells(cells: readonly Cell[]): Promise<void> {
    const { cellToBoundary } = await import("h3-js");
    await this.#ready;
    this.#map.getSource<GeoJSONSource>("cell-centres")?.setData({
      type: "FeatureCollection",
      features: cells.map(({ lat, lon, tunes }) => ({
        type: "Feature",
        properties: { tunes },
        geometry: { type: "Point", coordinates: [lon, lat] },
      })),
    });
    this.#map.getSource<GeoJSONSource>("cells")?.setData({
      type: "FeatureCollection",
      features: cells.map(({ cell, tunes }) => ({
        type: "Feature",
        properties: { tunes },
        geometry: { type: "Polygon", coordinates: [unwrapped(cellToBoundary(cell, true))] },
      })),
    });
  }

  /** Marks the chosen point and brings it into view. */
  show(lat: number, lon: number, near: boolean): void {
    this.#marker ??= new Marker({ color: "#7a1f1f" }).setLngLat([lon, lat]).addTo(this.#map);
    this.#marker.setLngLat([lon, lat]);
    if (near || !this.#map.getBounds().contains([lon, lat])) {
      this.#map.jumpTo({ center: [lon, lat], zoom: Math.max(this.#map.getZoom(), near ? 4 : 2) });
    }
  }

  /** Tells whether the map is still being drawn. */
  #busy(busy: boolean): void {
    this.#map.getContainer().setAttribute("aria-busy", String(busy));
  }

  remove(): void {
    this.#map.remove();
  }
}

/** A boundary whose longitudes run on across the antimeridian instead of jumping. */
function unwrapped(ring: [number, number][]): [number, number][] {
  const [first] = ring[0] ?? [0];
  return ring.map(([lon, lat]) => {
    if (lon - first > 180) return [lon - 360, lat];
    return lon - first < -180 ? [lon + 360, lat] : [lon, lat];
  });
}
