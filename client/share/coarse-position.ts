/** Resolution of the cells that positions become: about 250 km². */
const CELL_RESOLUTION = 5;

/** Centre of the map cell a position lies in, degrees: all of a position that ever leaves this browser. */
export async function coarsePosition(
  lat: number,
  lon: number,
): Promise<{ lat: number; lon: number }> {
  const { cellToLatLng, latLngToCell } = await import("h3-js");
  const [centreLat, centreLon] = cellToLatLng(latLngToCell(lat, lon, CELL_RESOLUTION));
  return { lat: Number(centreLat.toFixed(4)), lon: Number(centreLon.toFixed(4)) };
}
