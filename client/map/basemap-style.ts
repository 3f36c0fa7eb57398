import type { LayerSpecification, SourceSpecification, StyleSpecification } from "maplibre-gl";

/** Stands before the names of a basemap's sources and layers, so that none is taken for one of ours. */
export const BASEMAP = "basemap:";
/** A basemap's areas lie over the tint as a thin wash: the colours of the land must still be told apart. */
const WASH = 0.3;
const WASHED: Record<string, string> = {
  fill: "fill-opacity",
  "fill-extrusion": "fill-extrusion-opacity",
  raster: "raster-opacity",
  hillshade: "hillshade-exaggeration",
};
/** What would cover all land, or belongs to the whole map. */
const LEFT_OUT = ["background", "color-relief", "sky", "custom"];

export interface Basemap {
  sources: [name: string, source: SourceSpecification][];
  layers: LayerSpecification[];
  sprite: string | null;
}

/**
 * A style's sources and layers as they lie over the tint: areas as a wash, lines and labels in full, no background.
 * Labels are drawn with the page's own fonts. Addresses in it may be relative to its own.
 * @throws when it is no style
 */
export function basemapOf(style: StyleSpecification, address: string): Basemap {
  if (!style?.sources || !Array.isArray(style.layers))
    throw new Error(`${address} is no map style.`);
  const sources = Object.entries(style.sources).map(
    ([name, source]): [string, SourceSpecification] => [
      BASEMAP + name,
      withWholeAddresses(source, address),
    ],
  );
  const layers = style.layers
    .filter(({ type }) => !LEFT_OUT.includes(type))
    .map((layer) => washed(layer));
  const { sprite } = style;
  return { sources, layers, sprite: typeof sprite === "string" ? whole(sprite, address) : null };
}

function washed(layer: LayerSpecification): LayerSpecification {
  const opacity = WASHED[layer.type];
  const named = {
    ...layer,
    id: BASEMAP + layer.id,
    ...("source" in layer && { source: BASEMAP + layer.source }),
  };
  if (!opacity) return named as LayerSpecification;
  return { ...named, paint: { ...layer.paint, [opacity]: WASH } } as LayerSpecification;
}

function withWholeAddresses(source: SourceSpecification, base: string): SourceSpecification {
  const made: Record<string, unknown> = { ...source };
  for (const key of ["url", "data"]) {
    const value = made[key];
    if (typeof value === "string") made[key] = whole(value, base);
  }
  if (Array.isArray(made.tiles)) made.tiles = made.tiles.map((tile) => whole(String(tile), base));
  return made as unknown as SourceSpecification;
}

/** An address in full, its placeholders left as they are. */
function whole(address: string, base: string): string {
  return new URL(address, base).href.replaceAll("%7B", "{").replaceAll("%7D", "}");
}
