import { expect, test } from "vitest";
import { geoJsonOfStops, gpxOfStops, withoutPosition } from "../../client/trip/waypoints.ts";

const STOPS = [
  { name: "Fish & <chips>", elevation_m: 12, lat: 50.1, lon: -5.5, nights: 2 },
  { name: "Somewhere high", elevation_m: 2300, temperature_C: -9 },
  { name: "Pass", elevation_m: 2106, temperature_C: -9, lat: 46.56, lon: 8.34 },
];

test("GeoJSON: stops with a position, elevation and nights among the properties, two coordinates", () => {
  const { features } = JSON.parse(geoJsonOfStops(STOPS));
  expect(features).toEqual([
    {
      type: "Feature",
      geometry: { type: "Point", coordinates: [-5.5, 50.1] },
      properties: { name: "Fish & <chips>", elevation_m: 12, nights: 2 },
    },
    {
      type: "Feature",
      geometry: { type: "Point", coordinates: [8.34, 46.56] },
      properties: { name: "Pass", elevation_m: 2106, temperature_C: -9, nights: 1 },
    },
  ]);
  expect(withoutPosition(STOPS)).toBe(1);
});

test("GPX: names are text and nothing else", () => {
  const gpx = gpxOfStops(STOPS);
  expect(gpx).toContain("<name>Fish &amp; &lt;chips&gt;</name>");
  expect(gpx.match(/<wpt /g)).toHaveLength(2);
  expect(gpx).toContain("<trip:nights>2</trip:nights>");
});
