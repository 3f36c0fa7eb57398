import { ELEVATION_RANGE_m, standardPressure, stationPressureFromQnh } from "../air.ts";
import type { Tune } from "../tune.ts";
import { FOOT_m } from "../units.ts";
import { type Reason, type ScreenContext, say } from "./reason.ts";

/**
 * Elevation and station pressure: each is evidence about the other, and the terrain about both.
 * A slip is believed when, once undone, everything known about the site agrees.
 */

/**
 * How far a stated elevation may lie from the terrain's, beyond the terrain's own 95 % band: half of that band
 * again, because heights on ridges and passes miss by more than the band says, plus 400 m, because the place is
 * known only to a cell some 10 km wide. Our own working values.
 */
const TERRAIN_SLACK = 1.5;
const TERRAIN_MARGIN_m = 400;
/** A slip of elevation is named only when its undoing lands this close to the terrain's own band, m. */
const NAMING_MARGIN_m = 200;

/**
 * How far station pressure may lie from the standard atmosphere's: 6 % at sea level (the deepest lows and highest
 * highs lie 5–7 % off) and 1 % more per km (a real air column is colder or warmer than the standard one).
 */
const PRESSURE_SLACK = 0.06;
const PRESSURE_SLACK_per_km = 0.01;

/** Sea-level pressures met outside the eye of a storm, hPa: a value in here may be a QNH. */
const QNH_RANGE_hPa = [950, 1055] as const;

export interface Site {
  elevation_m: number;
  pressure_hPa: number | undefined;
}

interface Explanation {
  site: Site;
  reasons: Reason[];
  /** How ill it fits even when nothing is violated: decides between explanations of equal length. */
  misfit: number;
}

/** The site as it most likely is, and the reasons that elevation or pressure give for a hold. */
export function screenSite(tune: Tune, context: ScreenContext): { site: Site; reasons: Reason[] } {
  const stated: Site = {
    elevation_m: tune.site.elevation_m,
    pressure_hPa: tune.air?.pressure_hPa,
  };
  const terrain = context.terrain ?? null;
  const violated = violations(stated, terrain);
  if (violated.length === 0) return { site: stated, reasons: [] };
  const [best] = explanations(stated, terrain)
    .filter(({ site }) => violations(site, terrain).length === 0)
    .filter(({ site }) => site.elevation_m === stated.elevation_m || isNear(site, terrain))
    .sort((a, b) => a.reasons.length - b.reasons.length || a.misfit - b.misfit);
  return best ?? { site: stated, reasons: violated };
}

type Terrain = NonNullable<ScreenContext["terrain"]> | null;

/** Everything about a site that cannot be, each as a reason without a repair. */
function violations({ elevation_m, pressure_hPa }: Site, terrain: Terrain): Reason[] {
  const reasons: Reason[] = [];
  const [lowest, highest] = ELEVATION_RANGE_m;
  if (elevation_m < lowest || elevation_m > highest) {
    reasons.push({
      code: "elevation_out_of_range",
      field: "site.elevation_m",
      sentence: `An elevation of ${say(elevation_m)} m is outside ${say(lowest)} to ${say(highest)} m, where people camp. Check it, and its unit.`,
    });
  } else if (terrain && Math.abs(elevation_m - terrain.elevation_m) > terrainLimit(terrain)) {
    reasons.push({
      code: "elevation_against_place",
      field: "site.elevation_m",
      sentence: `The ground at this place is near ${say(terrain.elevation_m)} m (± ${say(terrain.uncertainty_95_m)} m), not ${say(elevation_m)} m. Check the elevation and the place.`,
    });
  }
  if (pressure_hPa !== undefined && Math.abs(pressureOff(elevation_m, pressure_hPa)) > 1) {
    reasons.push({
      code: "pressure_against_elevation",
      field: "air.pressure_hPa",
      sentence: `A station pressure of ${say(pressure_hPa, 1)} hPa does not go with ${say(elevation_m)} m, where it is usually near ${say(standardPressure(elevation_m))} hPa. Check both.`,
    });
  }
  return reasons;
}

function isNear({ elevation_m }: Site, terrain: Terrain): boolean {
  if (!terrain) return true;
  return Math.abs(elevation_m - terrain.elevation_m) <= terrain.uncertainty_95_m + NAMING_MARGIN_m;
}

function terrainLimit(terrain: { uncertainty_95_m: number }): number {
  return TERRAIN_SLACK * terrain.uncertainty_95_m + TERRAIN_MARGIN_m;
}

/** Deviation of station pressure from the standard atmosphere's, in units of what weather and column allow. */
function pressureOff(elevation_m: number, pressure_hPa: number): number {
  const slack = PRESSURE_SLACK + (PRESSURE_SLACK_per_km * Math.max(0, elevation_m)) / 1000;
  return (pressure_hPa / standardPressure(elevation_m) - 1) / slack;
}

/** Every way to undo a slip of elevation, of pressure, or of both. */
function explanations(stated: Site, terrain: Terrain): Explanation[] {
  return elevationRepairs(stated, terrain).flatMap(({ elevation_m, reason }) =>
    pressureRepairs(stated.pressure_hPa, elevation_m).map((pressure) => {
      const site = { elevation_m, pressure_hPa: pressure.pressure_hPa };
      const reasons = [reason, pressure.reason].filter((r) => r !== null);
      const ground = terrain ? (elevation_m - terrain.elevation_m) / terrainLimit(terrain) : 0;
      const off =
        pressure.misfit ??
        (site.pressure_hPa === undefined ? 0 : pressureOff(elevation_m, site.pressure_hPa));
      return { site, reasons, misfit: ground ** 2 + off ** 2 };
    }),
  );
}

function elevationRepairs(
  { elevation_m, pressure_hPa }: Site,
  terrain: Terrain,
): { elevation_m: number; reason: Reason | null }[] {
  const evidence = terrain
    ? "at this place"
    : pressure_hPa === undefined
      ? "is no elevation in metres that people camp at;"
      : `beside a station pressure of ${say(pressure_hPa, 1)} hPa`;
  const repaired = (code: string, value: number, what: string) => {
    const suggestion = Math.round(value);
    const sentence = `${say(elevation_m, 1)} ${evidence} ${what}. Did you mean ${say(suggestion)} m?`;
    const reason = { code, field: "site.elevation_m", sentence, suggestion };
    return { elevation_m: suggestion, reason };
  };
  return [
    { elevation_m, reason: null },
    repaired(
      "elevation_in_feet",
      elevation_m * FOOT_m,
      terrain || pressure_hPa !== undefined ? "is its elevation in feet" : "in feet it is ordinary",
    ),
    repaired(
      "elevation_metres_as_feet",
      elevation_m / FOOT_m,
      "is its elevation taken for feet and converted once too often",
    ),
  ];
}

function pressureRepairs(
  pressure_hPa: number | undefined,
  elevation_m: number,
): { pressure_hPa: number | undefined; reason: Reason | null; misfit: number | null }[] {
  const asGiven = { pressure_hPa, reason: null, misfit: null };
  if (pressure_hPa === undefined) return [asGiven];
  const [lowest, highest] = QNH_RANGE_hPa;
  const station = stationPressureFromQnh(pressure_hPa, elevation_m);
  if (pressure_hPa < lowest || pressure_hPa > highest || !Number.isFinite(station))
    return [asGiven];
  const suggestion = Math.round(station * 10) / 10;
  return [
    asGiven,
    {
      pressure_hPa: suggestion,
      misfit: (pressure_hPa - 1013.25) / 50,
      reason: {
        code: "qnh_as_station_pressure",
        field: "air.pressure_hPa",
        sentence: `${say(pressure_hPa, 1)} hPa at ${say(elevation_m)} m is a sea-level pressure (QNH). Did you mean a station pressure of ${say(suggestion, 1)} hPa? Or give it as QNH.`,
        suggestion,
      },
    },
  ];
}
