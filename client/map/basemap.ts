import type { Map as GlMap, StyleSpecification } from "maplibre-gl";
import { BASEMAP, basemapOf } from "./basemap-style.ts";
import { FIRST_CELL_LAYER, OWN_GEOGRAPHY } from "./sheet-style.ts";

/**
 * Draws a configured style over the tint; our own waters, borders and labels give way to it.
 * @param address of the style; what it names must come from the same origin, for the page may ask no other
 * @param gone tells whether the map has been taken away meanwhile
 * @param onFailed told when it cannot be drawn; ours stay or come back then
 */
export async function drawBasemap(
  map: GlMap,
  address: string,
  { gone, onFailed }: { gone: () => boolean; onFailed: () => void },
): Promise<void> {
  try {
    const response = await fetch(address);
    if (!response.ok) throw new Error(`${address}: ${response.status}`);
    const basemap = basemapOf((await response.json()) as StyleSpecification, address);
    if (gone()) return;
    watch(map, () => {
      for (const { id } of basemap.layers) if (map.getLayer(id)) map.removeLayer(id);
      showOwn(map, true);
      onFailed();
    });
    if (basemap.sprite) map.setSprite(basemap.sprite);
    for (const [name, source] of basemap.sources) map.addSource(name, source);
    for (const layer of basemap.layers) map.addLayer(layer, FIRST_CELL_LAYER);
    showOwn(map, false);
  } catch {
    onFailed();
  }
}

/** Once all is drawn: single tiles may be missing, but a style of which nothing has come is none. */
function watch(map: GlMap, none: () => void): void {
  const came = new Set<string>();
  let failed = false;
  map.on("error", (event) => {
    failed ||= String((event as { sourceId?: string }).sourceId).startsWith(BASEMAP);
  });
  map.on("sourcedata", ({ sourceId, tile }) => {
    if (tile?.state === "loaded" && sourceId.startsWith(BASEMAP)) came.add(sourceId);
  });
  map.once("idle", () => {
    if (failed && came.size === 0) none();
  });
}

function showOwn(map: GlMap, shown: boolean): void {
  for (const id of OWN_GEOGRAPHY) {
    map.setLayoutProperty(id, "visibility", shown ? "visible" : "none");
  }
}
