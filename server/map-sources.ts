import type { MapConfiguration } from "./contract.ts";

/** Configured map sources: what the page is told, where it may connect to, and tiles for the server's own use. */
export function mapSources(elevationTiles: string | undefined, basemapStyle: string | undefined) {
  const map: MapConfiguration = {
    basemap_style: basemapStyle || null,
    elevation_tiles: elevationTiles || null,
  };
  const origins = [elevationTiles, basemapStyle].flatMap((url) =>
    url ? [new URL(url.replaceAll(/[{}]/g, "")).origin] : [],
  );
  const tiles = elevationTiles
    ? { template: elevationTiles, fetch: (url: string, init?: RequestInit) => fetch(url, init) }
    : undefined;
  return { map, origins, tiles };
}
