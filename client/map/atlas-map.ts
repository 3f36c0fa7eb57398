import "maplibre-gl/dist/maplibre-gl.css";
import type { Point } from "geojson";
import {
  type GeoJSONSource,
  Map as GlMap,
  Marker,
  NavigationControl,
  ScaleControl,
  setWorkerUrl,
  type VectorTileSource,
} from "maplibre-gl";
import workerUrl from "maplibre-gl/dist/maplibre-gl-worker.mjs?url";
import type { Cell, MapConfiguration } from "../../server/contract.ts";
import type { Unit } from "../units.ts";
import { drawBasemap } from "./basemap.ts";
import { Beyond } from "./beyond.ts";
import { cellBoundaries, cellCentres, isWide } from "./cell-features.ts";
import { DISCS } from "./cell-layers.ts";
import { CONTOURS } from "./contour-layers.ts";
import { DEEPEST_ESTIMATED_ZOOM } from "./ground.ts";
import { DOT, dot, NAMES, nameText } from "./names.ts";
import { NEAR_ZOOM } from "./near.ts";
import { channels, type Palette } from "./palette.ts";
import { contourTiles, groundTiles, registerProtocols } from "./protocols.ts";
import { type Look, reliefColour, STRIPES, stripes, tunedColour } from "./relief.ts";
import { FAR_LINES, HATCHING, sheetStyle } from "./sheet-style.ts";

setWorkerUrl(workerUrl);
registerProtocols();

const DEEPEST_CONFIGURED_ZOOM = 12;
const STRIPE_ALPHA = 150;
/** Contours are drawn anew once the night's slider has been still for so long. */
const STILL_ms = 150;
/** Nearer than this a pixel is less than 600 m wide, and elevations are known every few kilometres. */
const KNOWN_TO_ZOOM = 7;
/** A marker keeps so far off what covers the map's foot. */
const CLEAR_px = 20;
/** From here on cells that stand for several give way to those within. */
const WIDE_TO_ZOOM = 4.5;
/** Half the width of such a cell, degrees: its middle may lie so far out of view. */
const WIDE_deg = 5;
/** A thumb this far off a disc means the disc. */
const THUMB_px = 8;

/** What the map shows and tells. */
export interface AtlasMapOptions {
  container: HTMLElement;
  configuration: MapConfiguration;
  label: string;
  /** What it says where it is shown from nearer than its data go. */
  beyond: string;
  palette: Palette;
  look: Look;
  /** Where to open; the whole world otherwise. */
  view?: MapPlace | undefined;
  onPoint: (lat: number, lon: number) => void;
  /** The disc of a cell was pressed. */
  onCell: (cell: string) => void;
  /** Cells that stand for several are in view from near. */
  onWide: (cells: readonly string[]) => void;
  /** The drawing context is gone, or back. */
  onLost: () => void;
  onRestored: () => void;
  /** A configured source gives nothing: the built-in one stands in. */
  onFallback: (of: "ground" | "basemap") => void;
}

/** What part of the world is in view. */
export interface MapPlace {
  center: [lon: number, lat: number];
  zoom: number;
}

const WORLD: MapPlace = { center: [10, 25], zoom: 1 };

/** The map of suggested pump rates: land by tint, contours, hatching, sea, water, borders, cells, labels, the chosen point. */
export class AtlasMap {
  readonly #options: Pick<AtlasMapOptions, "onWide">;
  readonly #container: HTMLElement;
  readonly #map: GlMap;
  readonly #scale = new ScaleControl({ maxWidth: 120 });
  readonly #beyond: Beyond;
  readonly #ready: Promise<void>;
  #look: Look;
  /** Cells on the map that stand for several. */
  #wide: readonly Cell[] = [];
  /** There is nothing to draw on: the drawing context is gone, or the map itself. */
  #lost = false;
  /** How much is on its way to the map besides what it fetches itself. */
  #awaited = 0;
  /** When contours are drawn anew; none while they are as they should be. */
  #drawing: ReturnType<typeof setTimeout> | undefined;
  #marker: Marker | undefined;
  /** From which zoom on the elevations tell no more. */
  #knownTo: number;

  constructor(options: AtlasMapOptions) {
    const { container, configuration, label, look, palette, view = WORLD, onFallback } = options;
    const configured = configuration.elevation_tiles;
    this.#look = look;
    this.#beyond = new Beyond(options.beyond);
    this.#knownTo = configured ? DEEPEST_CONFIGURED_ZOOM : KNOWN_TO_ZOOM;
    this.#options = options;
    this.#container = container;
    const sheet = document.createElement("div");
    sheet.className = "map-sheet";
    container.append(sheet);
    this.#map = new GlMap({
      container: sheet,
      style: sheetStyle({
        elevationTiles: groundTiles(configured, () => {
          this.#knownTo = KNOWN_TO_ZOOM;
          this.#tellBeyond();
          onFallback("ground");
        }),
        deepest: configured ? DEEPEST_CONFIGURED_ZOOM : DEEPEST_ESTIMATED_ZOOM,
        palette,
        land: reliefColour(look.stops),
        tuned: tunedColour(look),
        contours: contourTiles(look.contours),
      }),
      ...view,
      minZoom: 0,
      maxZoom: configured || configuration.basemap_style ? 13 : 8,
      dragRotate: false,
      pitchWithRotate: false,
      attributionControl: configuration.basemap_style ? { compact: true } : false,
      // None at all would place every label anew in each frame.
      fadeDuration: 100,
    });
    const map = this.#map;
    map.touchZoomRotate.disableRotation();
    map.addControl(new NavigationControl({ showCompass: false }), "top-right");
    map.addControl(this.#beyond, "bottom-left");
    map.addControl(this.#scale, "bottom-left");
    map.getCanvas().setAttribute("aria-label", label);
    map.on("styledata", () => {
      if (map.hasImage(STRIPES)) return;
      map.addImage(STRIPES, stripes(channels(palette.stripe), STRIPE_ALPHA));
      map.addImage(DOT, dot(channels(palette.text)), { pixelRatio: 2 });
    });
    map.on("click", ({ point, lngLat, originalEvent }) => {
      const thumb = (originalEvent as PointerEvent).pointerType === "touch";
      if (!this.#openDisc(point, thumb ? THUMB_px : 0, options)) tell(options, lngLat.wrap());
    });
    map.getCanvas().addEventListener("keydown", ({ key }) => {
      if (key === "Enter") tell(options, map.getCenter().wrap());
    });
    map.on("webglcontextlost", () => {
      this.#lost = true;
      options.onLost();
    });
    map.on("webglcontextrestored", () => {
      this.#busy(true);
      // The style comes back a frame later; until then it can be told nothing.
      map.once("style.load", () => {
        this.#lost = false;
        this.#paint();
        options.onRestored();
      });
    });
    map.on("movestart", () => this.#busy(true));
    map.on("zoomend", () => this.#tellBeyond());
    map.on("moveend", () => this.#tellWide(this.#options));
    this.#tellBeyond();
    map.on("idle", () => {
      if (this.#awaited === 0 && this.#drawing === undefined) this.#busy(false);
    });
    // Until then, and without a network, the coarser ones stand in.
    map.on("sourcedata", ({ sourceId, tile }) => {
      if (sourceId === "near" && tile) endFarLines(map);
    });
    // Without a listener every tile that a source does not have would be an error on the console.
    map.on("error", () => {});
    this.#ready = new Promise((done) =>
      map.once("load", () => {
        map.setLayoutProperty(HATCHING, "visibility", "visible");
        done();
      }),
    );
    const style = configuration.basemap_style;
    if (style)
      void this.#ready.then(() => {
        this.#busy(true);
        return drawBasemap(map, style, {
          gone: () => this.#lost,
          onFailed: () => onFallback("basemap"),
        });
      });
  }

  /** Tints the land and hatches what lies outside the tuned elevations. */
  async tint(look: Look): Promise<void> {
    await this.#ready;
    if (JSON.stringify(this.#look) === JSON.stringify(look)) return;
    this.#look = look;
    if (!this.#lost) this.#paint();
  }

  #tellWide({ onWide }: Pick<AtlasMapOptions, "onWide">): void {
    if (this.#map.getZoom() < WIDE_TO_ZOOM) return;
    const { lng: west, lat: south } = this.#map.getBounds().getSouthWest();
    const { lng: east, lat: north } = this.#map.getBounds().getNorthEast();
    const inView = ({ lat, lon }: Cell) =>
      lat > south - WIDE_deg &&
      lat < north + WIDE_deg &&
      // The view's longitudes run on beyond 180°.
      (((lon - west + WIDE_deg) % 360) + 360) % 360 < east - west + 2 * WIDE_deg;
    const wide = this.#wide.filter(inView).map(({ cell }) => cell);
    if (wide.length > 0) onWide(wide);
  }

  #tellBeyond(): void {
    this.#beyond.shown = this.#map.getZoom() >= this.#knownTo;
  }

  #paint(): void {
    this.#busy(true);
    this.#map.setPaintProperty("land", "color-relief-color", reliefColour(this.#look.stops));
    this.#map.setPaintProperty("tuned", "color-relief-color", tunedColour(this.#look));
    clearTimeout(this.#drawing);
    this.#drawing = setTimeout(() => this.#contour(), STILL_ms);
  }

  #contour(): void {
    this.#drawing = undefined;
    if (this.#lost) return;
    this.#map.getSource<VectorTileSource>(CONTOURS)?.setTiles([contourTiles(this.#look.contours)]);
  }

  /** Names of places carry their elevation in the person's unit, and the scale bar goes by it. */
  label(unit: Unit): Promise<void> {
    this.#scale.setUnit(unit.name === "ft" ? "imperial" : "metric");
    return this.#await(this.#label(unit));
  }

  async #label(unit: Unit): Promise<void> {
    await this.#ready;
    // Without a network that has them the map goes without names.
    const labels = await fetch("/geography/labels.json")
      .then((response) => (response.ok ? response.json() : undefined))
      .catch(() => undefined);
    if (this.#lost || !labels) return;
    for (const layer of NAMES) this.#map.setLayoutProperty(layer, "text-field", nameText(unit));
    this.#map.getSource<GeoJSONSource>("labels")?.setData(labels);
  }

  /** Community cells with their number of tunes: a disc from afar, the cell itself from near. */
  showCells(cells: readonly Cell[]): Promise<void> {
    return this.#await(this.#showCells(cells));
  }

  async #showCells(cells: readonly Cell[]): Promise<void> {
    const [boundaries] = await Promise.all([cellBoundaries(cells), this.#ready]);
    if (this.#lost) return;
    this.#map.getSource<GeoJSONSource>("cell-centres")?.setData(cellCentres(cells));
    this.#map.getSource<GeoJSONSource>("cells")?.setData(boundaries);
    this.#wide = cells.filter(isWide);
    this.#tellWide(this.#options);
  }

  /** Opens the disc at a point: its cell, or of several counted together the map from nearer. False where there is none. */
  #openDisc(
    { x, y }: { x: number; y: number },
    reach: number,
    { onCell }: AtlasMapOptions,
  ): boolean {
    if (this.#lost) return false;
    const [disc] = this.#map.queryRenderedFeatures(
      [
        [x - reach, y - reach],
        [x + reach, y + reach],
      ],
      { layers: DISCS.filter((id) => this.#map.getLayer(id)) },
    );
    if (!disc) return false;
    const { cell, cluster_id, wide } = disc.properties;
    const { coordinates } = disc.geometry as Point;
    const center = coordinates as [lon: number, lat: number];
    if (wide) this.#map.easeTo({ center, zoom: WIDE_TO_ZOOM });
    else if (cell) onCell(cell);
    else void this.#comeNearer(cluster_id, center);
    return true;
  }

  /** As near as discs that are counted together come apart. */
  async #comeNearer(cluster: number, center: [lon: number, lat: number]): Promise<void> {
    const source = this.#map.getSource<GeoJSONSource>("cell-centres");
    // Where other cells came meanwhile the cluster is no more.
    const zoom = await source?.getClusterExpansionZoom(cluster).catch(() => undefined);
    if (zoom !== undefined) this.#map.easeTo({ center, zoom });
  }

  /**
   * Marks the chosen point and brings it into view.
   * @param covered_px how much of the map's foot lies under what a tap has come to
   */
  show(lat: number, lon: number, near: boolean, covered_px: number): void {
    this.#marker ??= new Marker({ color: "#7a1f1f" }).setLngLat([lon, lat]).addTo(this.#map);
    this.#marker.setLngLat([lon, lat]);
    // The marker knows on which of the worlds beside each other it stands.
    if (near || !this.#map.getBounds().contains(this.#marker.getLngLat())) {
      this.#map.jumpTo({ center: [lon, lat], zoom: Math.max(this.#map.getZoom(), near ? 4 : 2) });
    }
    const { y } = this.#map.project(this.#marker.getLngLat());
    if (covered_px > 0 && y > this.#container.clientHeight - covered_px - CLEAR_px)
      this.#map.easeTo({ center: this.#marker.getLngLat(), offset: [0, -covered_px / 2] });
  }

  get place(): MapPlace {
    const { lng, lat } = this.#map.getCenter();
    return { center: [lng, lat], zoom: this.#map.getZoom() };
  }

  /** The map is not drawn before this is on it. */
  async #await(coming: Promise<void>): Promise<void> {
    this.#awaited++;
    this.#busy(true);
    try {
      await coming;
    } finally {
      this.#awaited--;
      this.#map.triggerRepaint();
    }
  }

  /** Tells whether the map is still being drawn. */
  #busy(busy: boolean): void {
    this.#container.setAttribute("aria-busy", String(busy));
  }

  remove(): void {
    // What was asked for before may come after.
    this.#lost = true;
    clearTimeout(this.#drawing);
    const sheet = this.#map.getContainer();
    this.#map.remove();
    sheet.remove();
  }
}

function tell({ onPoint }: AtlasMapOptions, { lat, lng }: { lat: number; lng: number }): void {
  onPoint(lat, lng);
}

/** Coasts and borders drawn for the whole world end where the finer ones begin. */
function endFarLines(map: GlMap): void {
  for (const layer of FAR_LINES) {
    if (map.getLayer(layer)?.maxzoom !== NEAR_ZOOM) map.setLayerZoomRange(layer, 0, NEAR_ZOOM);
  }
}
