import "maplibre-gl/dist/maplibre-gl.css";
import {
  type ColorReliefLayerSpecification,
  type GeoJSONSource,
  Map as GlMap,
  Marker,
  NavigationControl,
  type RasterTileSource,
  type StyleSpecification,
  setWorkerUrl,
} from "maplibre-gl";
import workerUrl from "maplibre-gl/dist/maplibre-gl-worker.mjs?url";
import type { Cell, MapConfiguration } from "../../server/contract.ts";
import { HATCH, hatchTiles, registerHatch, type Tuned } from "./hatch.ts";
import { registerSea, SEA, SEA_TILE_px, SEA_TILES } from "./sea.ts";
import { SEA_COLOUR } from "./tint.ts";

setWorkerUrl(workerUrl);
registerHatch();
registerSea(SEA_COLOUR);

/** The built-in elevation tiles, zooms 0–4. */
const BUILT_IN_TILES = "/geography/tiles/{z}/{x}/{y}.png";
const DEEPEST_BUILT_IN_ZOOM = 4;

/** What the map shows and tells. */
export interface AtlasMapOptions {
  container: HTMLElement;
  configuration: MapConfiguration;
  label: string;
  onPoint: (lat: number, lon: number) => void;
  onLost: () => void;
}

/** The map of suggested pump rates: land by tint, hatching, sea, water, borders, cells, labels, the chosen point. */
export class AtlasMap {
  readonly #map: GlMap;
  readonly #tiles: string;
  readonly #ready: Promise<void>;
  #marker: Marker | undefined;

  constructor({ container, configuration, label, onPoint, onLost }: AtlasMapOptions) {
    const configured = configuration.elevation_tiles;
    this.#tiles = new URL(BUILT_IN_TILES, location.href).href
      .replaceAll("%7B", "{")
      .replaceAll("%7D", "}");
    this.#map = new GlMap({
      container,
      style: styleOf(configured ?? this.#tiles, configured ? 12 : DEEPEST_BUILT_IN_ZOOM),
      center: [10, 25],
      zoom: 1,
      minZoom: 0,
      maxZoom: configured ? 13 : 8,
      dragRotate: false,
      pitchWithRotate: false,
      attributionControl: false,
    });
    this.#map.touchZoomRotate.disableRotation();
    this.#map.addControl(new NavigationControl({ showCompass: false }), "top-right");
    this.#map.getCanvas().setAttribute("aria-label", label);
    this.#map.on("click", ({ lngLat }) => {
      const { lng, lat } = lngLat.wrap();
      onPoint(lat, lng);
    });
    this.#map.on("webglcontextlost", onLost);
    this.#ready = new Promise((done) => this.#map.once("load", () => done()));
  }

  /** Tints the land and hatches what lies outside the tuned elevations. */
  async tint(stops: (number | string)[], tuned: Tuned): Promise<void> {
    await this.#ready;
    this.#map.setPaintProperty("tint", "color-relief-color", colour(stops));
    this.#map.getSource<RasterTileSource>(HATCH)?.setTiles([hatchTiles(tuned, this.#tiles)]);
  }

  /** Place labels carry their elevation in the person's unit. */
  async label(format: (elevation_m: number) => string): Promise<void> {
    await this.#ready;
    const response = await fetch("/geography/labels.json");
    if (!response.ok) return;
    const labels = await response.json();
    for (const { properties } of labels.features) {
      properties.text = `${properties.name}\n${format(properties.elevation_m)}`;
    }
    this.#map.getSource<GeoJSONSource>("labels")?.setData(labels);
  }

  /** Community cells, darker with more contributors. */
  async showCells(cells: readonly Cell[]): Promise<void> {
    const { cellToBoundary } = await import("h3-js");
    await this.#ready;
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

function colour(stops: (number | string)[]) {
  return ["interpolate", ["linear"], ["elevation"], ...stops] as unknown as NonNullable<
    NonNullable<ColorReliefLayerSpecification["paint"]>["color-relief-color"]
  >;
}

function styleOf(elevationTiles: string, deepest: number): StyleSpecification {
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
        tiles: [hatchTiles(null, elevationTiles)],
        tileSize: 256,
        maxzoom: deepest,
      },
      [SEA]: { type: "raster", tiles: [SEA_TILES], tileSize: SEA_TILE_px },
      land: geojson("land"),
      lakes: geojson("lakes"),
      rivers: geojson("rivers"),
      borders: geojson("borders"),
      cells: { type: "geojson", data: empty },
      labels: { type: "geojson", data: empty },
    },
    layers: [
      { id: "paper", type: "background", paint: { "background-color": SEA_COLOUR } },
      {
        id: "tint",
        type: "color-relief",
        source: "elevation",
        paint: { "color-relief-color": colour([0, "#d4b785", 1, "#d4b785"]) },
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
      {
        id: "cells",
        type: "fill",
        source: "cells",
        paint: {
          "fill-color": "#7a1f1f",
          "fill-opacity": ["interpolate", ["linear"], ["get", "tunes"], 1, 0.25, 30, 0.6],
        },
      },
      {
        id: "cell-edges",
        type: "line",
        source: "cells",
        paint: { "line-color": "#7a1f1f", "line-width": 1.2 },
      },
      {
        id: "labels",
        type: "symbol",
        source: "labels",
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
