import { Refused } from "../base/refused.ts";
import { trip } from "../texts/trip.ts";
import { parseNumber } from "../units.ts";
import { type FoundStop, linesWith } from "./found-stop.ts";
import { TRIP_NAMESPACE } from "./waypoints.ts";

/** Waypoints and route points of a GPX file in the order they stand, read by the browser's own XML reader. */
export function stopsOfGpx(text: string): FoundStop[] {
  // GPX needs none, and entities can be made to swell.
  if (/<!(DOCTYPE|ENTITY)/i.test(text)) {
    throw new Refused(trip.refused.documentType);
  }
  const xml = new DOMParser().parseFromString(text, "application/xml");
  const failed = xml.getElementsByTagName("parsererror")[0];
  if (failed) {
    const line = /line (?:number )?(\d+)/i.exec(failed.textContent ?? "")?.[1];
    throw new Refused(trip.refused.xml, line ? Number(line) : undefined);
  }
  if (xml.documentElement.localName !== "gpx") throw new Refused(trip.refused.notGpx);
  const points = [...xml.getElementsByTagNameNS("*", "*")].filter(({ localName }) =>
    ["wpt", "rtept"].includes(localName),
  );
  if (points.length === 0 && xml.getElementsByTagNameNS("*", "trkpt").length > 0) {
    throw new Refused(trip.refused.trackOnly);
  }
  const lines = linesWith(text, /<(?:[\w.-]+:)?(?:wpt|rtept)[\s>/]/g);
  const lineOf = (i: number) => (lines.length === points.length ? lines[i] : undefined);
  return points.map((point, i) => stopOf(point, lineOf(i)));
}

function stopOf(point: Element, line: number | undefined): FoundStop {
  const child = (name: string) =>
    [...point.children].find(({ localName }) => localName === name)?.textContent?.trim() ||
    undefined;
  const number = (what: string, text: string | null | undefined) => {
    if (text === undefined || text === null) return undefined;
    const value = parseNumber(text);
    if (value === null) throw new Refused(trip.refused.notNumber(what, text.slice(0, 30)), line);
    return value;
  };
  return {
    line,
    fields: {
      name: child("name") ?? "",
      elevation_m: number("ele", child("ele")),
      lat: number("lat", point.getAttribute("lat")),
      lon: number("lon", point.getAttribute("lon")),
      // GPX knows no nights; our own files say them in an extension.
      nights: number(
        "nights",
        point.getElementsByTagNameNS(TRIP_NAMESPACE, "nights")[0]?.textContent,
      ),
    },
  };
}
