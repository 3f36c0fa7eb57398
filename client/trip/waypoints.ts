import { nightsAt, type Stop } from "../../model/trip/stop.ts";

/** Stops as points for other programs: those with a position; the rest has no place on a map. */

/** Name of what our GPX files say beyond GPX. */
export const TRIP_NAMESPACE = "urn:hypsotune:trip:1";

/** How many stops have no position, and so are missing from such files. */
export function withoutPosition(stops: readonly Stop[]): number {
  return stops.length - placed(stops).length;
}

/** By RFC 7946: elevation among the properties, never as a third coordinate. */
export function geoJsonOfStops(stops: readonly Stop[]): string {
  const features = placed(stops).map((stop) => ({
    type: "Feature",
    geometry: { type: "Point", coordinates: [stop.lon, stop.lat] },
    properties: {
      name: stop.name,
      elevation_m: stop.elevation_m,
      ...(stop.temperature_C !== undefined && { temperature_C: stop.temperature_C }),
      nights: nightsAt(stop),
    },
  }));
  return `${JSON.stringify({ type: "FeatureCollection", features }, null, 2)}\n`;
}

/** GPX 1.1, a waypoint a stop. */
export function gpxOfStops(stops: readonly Stop[]): string {
  const points = placed(stops).map((stop) =>
    [
      `  <wpt lat="${stop.lat}" lon="${stop.lon}">`,
      `    <ele>${stop.elevation_m}</ele>`,
      `    <name>${escaped(stop.name)}</name>`,
      `    <extensions><trip:nights>${nightsAt(stop)}</trip:nights></extensions>`,
      "  </wpt>",
    ].join("\n"),
  );
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<gpx version="1.1" creator="Hypsotune" xmlns="http://www.topografix.com/GPX/1/1" xmlns:trip="${TRIP_NAMESPACE}">`,
    ...points,
    "</gpx>\n",
  ].join("\n");
}

function placed(stops: readonly Stop[]): (Stop & { lat: number; lon: number })[] {
  return stops.filter(
    (stop): stop is Stop & { lat: number; lon: number } =>
      stop.lat !== undefined && stop.lon !== undefined,
  );
}

const SIGNS: Record<string, string> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => SIGNS[sign] as string);
}
