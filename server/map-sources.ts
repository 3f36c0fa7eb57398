import type { MapConfiguration } from "./contract/about.ts";

/** Configured map sources: what the page is told, where it may connect to, and tiles for the server's own use. */
export function mapSources(elevationTiles: string | undefined, basemapStyle: string | undefined) {
  const map: MapConfiguration = {
    basemap_style: basemapStyle || null,
    elevation_tiles: elevationTiles || null,
  };
  const origins = [
    ...originOf("ELEVATION_TILES", elevationTiles),
    ...originOf("BASEMAP_STYLE", basemapStyle),
  ].filter((origin, i, all) => all.indexOf(origin) === i);
  const tiles = elevationTiles
    ? { template: elevationTiles, fetch: (url: string, init?: RequestInit) => fetch(url, init) }
    : undefined;
  return { map, origins, tiles };
}

/** @throws Error naming the variable and the remedy when it is no address */
function originOf(variable: string, url: string | undefined): string[] {
  if (!url) return [];
  const address = URL.canParse(url) ? new URL(url) : null;
  if (!address || !/^https?:$/.test(address.protocol)) {
    throw new Error(
      `${variable} must be an address that starts with https:// or http://, not "${url}".`,
    );
  }
  for (const part of variable === "ELEVATION_TILES" ? ["{z}", "{x}", "{y}"] : []) {
    if (!url.includes(part)) throw new Error(`${variable} must hold ${part}; it is "${url}".`);
  }
  return [address.origin];
}
