import type { TuneRow } from "../db/tunes.ts";
import { adviceOn } from "../model/advice.ts";
import type { Air } from "../model/air.ts";
import { compareWithAtlas } from "../model/compare.ts";
import type { End } from "../model/end.ts";
import { bandsAt } from "../model/fit/bands.ts";
import type { PublishedFit } from "../model/fit/group.ts";
import { settablePump } from "../model/rounding.ts";
import { CAUTIONS } from "../model/safety.ts";
import { possibleAir } from "../model/screen/possible-air.ts";
import { type Reason, screen } from "../model/screen.ts";
import { groupOf } from "../model/start.ts";
import type { Tune } from "../model/tune.ts";
import { type CoarsePosition, cellCorners, coarsePosition } from "./cells.ts";
import type { Services } from "./context.ts";
import type { Submitted } from "./contract/tunes.ts";
import { randomId } from "./keys.ts";
import { invalid } from "./problem.ts";

/** A tune without the key of whoever sent it. */
type SharedTune = Omit<Tune, "contributor">;

/** What judging a tune stands on. */
export type Judging = Pick<Services, "fit" | "gazetteer" | "keys" | "now">;

/** A tune judged: what is kept of it, and what its sender is told. */
export interface Judged {
  kept: Omit<TuneRow, "id" | "receipt_sha256" | "imported">;
  answer: Omit<Submitted, "id" | "receipt" | "counts_from" | "owners_needed">;
}

/** The first clocks to reach a new month are 14 h ahead of UTC; a tune made there has come already. */
const FURTHEST_AHEAD_ms = 14 * 3_600_000;

/** Nothing finer is kept of an elevation, m; of temperatures, pressures and humidities nothing finer than a whole °C, hPa or %. */
const KEPT_STEP_m = 10;

/**
 * A tune as the atlas looks at it and keeps it: to the metre, the tenth of a degree and of a hectopascal a tune would tell where
 * in its cell and when it was made. An elevation's standard deviation is never smaller than stated.
 */
function coarsened(tune: Tune, position: CoarsePosition | null): Tune {
  const { site, air } = tune;
  const elevation_m = whole(site.elevation_m / KEPT_STEP_m) * KEPT_STEP_m;
  return {
    ...tune,
    site: {
      ...site,
      elevation_m,
      ...(site.elevation_sd_m !== undefined && {
        elevation_sd_m: Math.ceil(site.elevation_sd_m / KEPT_STEP_m) * KEPT_STEP_m,
      }),
      ...(position && { lat: position.lat, lon: position.lon }),
    },
    ...(air && {
      air: Object.fromEntries(
        Object.entries(air).map(([name, value]) => [name, value && whole(value)]),
      ),
    }),
  };
}

/**
 * The fit's density is published, and to its last digit would tell the elevation to 10 m: to 0.01 kg/m³ it tells some 90 m. That adds
 * 0.3 % to the 1 % by which the fit takes every density to be off.
 */
const toStep = (value: number, parts: number) => Math.round(value * parts) / parts;

/** Without the minus that a rounded −0.4 would keep. */
const whole = (value: number) => Math.round(value) + 0;

const monthOf = (date: Date) => date.toISOString().slice(0, 7);

/**
 * Screens a tune and turns it into what the atlas keeps: a cell for the position, a keyed hash for the
 * contributor, months for dates, elevation to 10 m, its uncertainty up to the next 10 m, air to whole °C, hPa and %.
 */
export async function judge(services: Judging, sent: Tune): Promise<Judged> {
  const { lat, lon } = sent.site;
  const position = lat === undefined || lon === undefined ? null : coarsePosition(lat, lon);
  // Screened as it is kept: what is said of it is kept, too.
  const { contributor: key, ...tune } = coarsened(sent, position);
  const fit = await services.fit.current();
  const now = services.now();
  const month = monthOf(now);
  const terrain = position ? await terrainAt(services, position) : null;
  const { verdict, reasons } = screen(
    { ...tune, contributor: key },
    { terrain, month: monthOf(new Date(now.getTime() + FURTHEST_AHEAD_ms)), fit },
  );
  refuseContradictions(reasons);
  const { elevation_m, elevation_sd_m } = tune.site;
  const air = possibleAir(elevation_m, tune.air, elevation_sd_m);
  const contributor = await services.keys.hash("contributor", key);
  return {
    kept: {
      ...columns(tune, air),
      contributor,
      // Both are those of the contributor's other tunes, if there are some: db/tunes.ts.
      pseudonym: randomId().slice(0, NAME_LETTERS),
      home: position && (await homeOf(services, position, tune.tuned_on ?? month)),
      several_places: false,
      sent: JSON.stringify(tune),
      cell: position?.cell ?? null,
      place: position?.place ?? null,
      ...suggestion(fit, tune, air),
      submitted_on: month,
      verdict,
    },
    answer: { verdict, reasons, ...beside(fit, tune, air) },
  };
}

/** A keyed hash, so that nobody can try which place and month it is. */
async function homeOf({ keys }: Judging, { place }: CoarsePosition, month: string) {
  return (await keys.hash("home", `${place}|${month}`)).slice(0, NAME_LETTERS);
}

/** 64 bits: no two pseudonyms, and no two homes, of millions are likely to be the same. */
const NAME_LETTERS = 16;

/**
 * The version a tune is judged beside, and what the atlas answers by it for this heater in this air and at these fan
 * speeds: the rate that can be set, which is what somebody copies. A finer one would tell the version, and with it the day.
 */
function suggestion(fit: PublishedFit, { heater, low, high }: SharedTune, { density_kg_m3 }: Air) {
  const perKrpm = (end: End, fan_rpm: number) => {
    const { pump_Hz_per_krpm } = bandsAt(groupOf(fit, heater.heat_kW, end), density_kg_m3, {
      dose_uL: heater.dose_uL,
      mean_levels: [],
      new_heater_levels: [],
    });
    // A fan speed that is a slip may ask for less than a controller's smallest step: then there is no suggestion.
    return (settablePump((pump_Hz_per_krpm * fan_rpm) / 1000) * 1000) / fan_rpm || null;
  };
  return {
    judged_version: fit.version,
    low_suggested_Hz_per_krpm: perKrpm("low", low.fan_rpm),
    high_suggested_Hz_per_krpm: perKrpm("high", high.fan_rpm),
  };
}

/** A tune whose elevation and place cannot both be true, and that no named slip explains, is of use to nobody. */
function refuseContradictions(reasons: Reason[]): void {
  const errors = reasons
    .filter(({ code }) => code === "elevation_against_place")
    .map(({ code, field, sentence }) => ({
      field,
      code,
      message: `${sentence} Or leave the place out.`,
    }));
  if (errors.length > 0) throw invalid(errors);
}

/** How a tune stands in its air beside a fit, what to know of the heater, and the cautions. */
export function beside(fit: PublishedFit, tune: Pick<Tune, "heater" | "low" | "high">, air: Air) {
  return {
    advice: adviceOn(tune),
    air,
    compared: compareWithAtlas(fit, tune.heater.heat_kW, air.density_kg_m3, tune),
    ...CAUTIONS,
  };
}

/**
 * Terrain at a cell's centre. The site may be anywhere in the cell, so the margin also reaches to the terrain at
 * its corners. Where no elevations are to be had, that check is left out.
 */
async function terrainAt({ gazetteer }: Judging, { cell, lat, lon }: CoarsePosition) {
  try {
    const centre = await gazetteer.elevation(lat, lon);
    const corners = await Promise.all(
      cellCorners(cell).map((at) => gazetteer.elevation(at.lat, at.lon)),
    );
    const rise = Math.max(...corners.map((at) => Math.abs(at.elevation_m - centre.elevation_m)));
    return { ...centre, uncertainty_95_m: centre.uncertainty_95_m + rise };
  } catch {
    return null;
  }
}

function columns(
  { heater, site, air: given, low, high, found, meter, tuned_on }: SharedTune,
  air: Air,
) {
  return {
    heat_kW: heater.heat_kW,
    dose_uL: heater.dose_uL ?? null,
    supply_V: heater.supply_V ?? null,
    elevation_m: site.elevation_m,
    elevation_sd_m: site.elevation_sd_m ?? null,
    temperature_C: given?.temperature_C ?? null,
    pressure_hPa: given?.pressure_hPa ?? null,
    qnh_hPa: given?.qnh_hPa ?? null,
    humidity_pct: given?.humidity_pct ?? null,
    density_kg_m3: toStep(air.density_kg_m3, 100),
    density_assumed: air.assumed.join(","),
    ln_density_sd: toStep(air.ln_density_sd, 1000),
    low_pump_Hz: low.pump_Hz,
    low_fan_rpm: low.fan_rpm,
    low_co_ppm: low.co_ppm ?? null,
    low_co_below_ppm: low.co_below_ppm ?? null,
    low_power: low.power ?? null,
    high_pump_Hz: high.pump_Hz,
    high_fan_rpm: high.fan_rpm,
    high_co_ppm: high.co_ppm ?? null,
    high_co_below_ppm: high.co_below_ppm ?? null,
    high_power: high.power ?? null,
    found: found ?? null,
    meter_kind: meter?.kind ?? null,
    meter_distance_m: meter?.distance_m ?? null,
    tuned_on: tuned_on ?? null,
  };
}
