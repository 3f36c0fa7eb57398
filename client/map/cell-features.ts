import type { FeatureCollection } from "geojson";
import type { Cell } from "../../server/contract.ts";

/** Whether a cell stands for several. */
export const isWide = ({ cells_within }: Cell): boolean => cells_within !== undefined;

/** Centres of community cells with their number of tunes. */
export function cellCentres(cells: readonly Cell[]): FeatureCollection {
  return {
    type: "FeatureCollection",
    features: cells.map((cell) => ({
      type: "Feature",
      properties: { cell: cell.cell, tunes: cell.tunes, wide: isWide(cell) },
      geometry: { type: "Point", coordinates: [cell.lon, cell.lat] },
    })),
  };
}

/** Boundaries of community cells with their number of tunes. */
export async function cellBoundaries(cells: readonly Cell[]): Promise<FeatureCollection> {
  const { cellToBoundary } = await import("h3-js");
  return {
    type: "FeatureCollection",
    features: cells.map(({ cell, tunes }) => ({
      type: "Feature",
      properties: { tunes },
      geometry: { type: "Polygon", coordinates: [unwrapped(cellToBoundary(cell, true))] },
    })),
  };
}

/** A boundary whose longitudes run on across the antimeridian instead of jumping. */
function unwrapped(ring: [number, number][]): [number, number][] {
  const [first] = ring[0] ?? [0];
  return ring.map(([lon, lat]) => {
    if (lon - first > 180) return [lon - 360, lat];
    return lon - first < -180 ? [lon + 360, lat] : [lon, lat];
  });
}
