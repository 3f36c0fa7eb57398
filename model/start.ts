import { type Air, airAt, type GivenAir, STANDARD_DENSITY_kg_m3 } from "./air.ts";
import { ENDS, type End } from "./end.ts";
import { type Band, type Bands, bandsAt } from "./fit/bands.ts";
import type { GroupFit, PublishedFit } from "./fit/group.ts";
import { priorGroup } from "./fit/prior.ts";
import { usualFans } from "./heater.ts";
import { fuelFlow, heatOutput } from "./mixture.ts";
import { requirePositive } from "./numerics/finite.ts";
import { settableFan, settablePump } from "./rounding.ts";
import { SAFETY, type Safety } from "./safety.ts";

/** Where a site's elevation comes from. */
export type ElevationSource = "given" | "known point" | "interpolated" | "grid" | "sea" | "tiles";

export interface StartSite {
  elevation_m: number;
  /** Standard deviation of the elevation, m; 0 when given. */
  elevation_sd_m: number;
  elevation_source: ElevationSource;
}

/** What a start tune is asked for. */
export interface StartQuestion {
  heat_kW: number;
  site: StartSite;
  air: GivenAir;
  low_fan_rpm?: number | undefined;
  high_fan_rpm?: number | undefined;
  dose_uL?: number | undefined;
  /** The smallest step of the controller's pump rate; the usual one when not given. */
  step_Hz?: number | undefined;
  /** The same of its fan speed. */
  step_rpm?: number | undefined;
}

/** A pump rate suggested at one end and a fan speed, with its bands in Hz. */
export interface StartEnd {
  fan_rpm: number;
  /** Rounded to what a controller can be set to. */
  pump_Hz: number;
  pump_Hz_exact: number;
  mean_band_Hz: Band;
  new_heater_bands_Hz: Band[];
  /** With a dose: fuel and heat at the pump rate that can be set (net heating value, 80 % efficiency assumed). */
  fuel_L_h?: number;
  heat_kW?: number;
}

export interface KeepFan {
  low: StartEnd;
  high: StartEnd;
  /** Heat against the same fan speeds in sea-level standard air, 0–1 and above. */
  heat_fraction: number;
}

export interface KeepHeat extends KeepFan {
  /** Whether the fan, in the steps it is set in, can go fast enough for sea-level heat at the high end. */
  fan_suffices: boolean;
  fan_limit_rpm: number;
}

/** What a start tune rests on. */
export interface StartBasis {
  heat_kW: number;
  tunes: number;
  contributors: number;
  density_range: [number, number] | null;
  extrapolated: boolean;
  prior_only: boolean;
  fit: string;
  demo: boolean;
}

/** The answer to "where do I begin?", for both ends. */
export interface StartTune {
  site: StartSite;
  air: Air;
  low: StartEnd;
  high: StartEnd;
  strategies: { keep_fan: KeepFan; keep_heat: KeepHeat };
  basis: StartBasis;
  safety: Safety;
}

/** Levels of the new-heater bands of a start tune, and of its mean band. */
export const NEW_HEATER_LEVELS = [0.8, 0.95] as const;
export const MEAN_LEVEL = 0.95;

/** The published group of a heat class and end, or the physics prior when nobody has tuned one yet. */
export function groupOf(fit: PublishedFit, heat_kW: number, end: End): GroupFit {
  return fit.groups.find((g) => g.heat_kW === heat_kW && g.end === end) ?? priorGroup(heat_kW, end);
}

/**
 * The start tune at a site: at the asked fan speeds (default: the class's usual ones) and air,
 * pump rates with mean band and new-heater bands, by two strategies: keep the fan and cut the pump,
 * or keep the heat and raise the fan as far as it goes.
 * @throws RangeError naming the field when a number is not finite or not positive
 */
export function startTune(fit: PublishedFit, question: StartQuestion): StartTune {
  return startFrom(fit, question, (group, air) => bandsFor(group, air, question.dose_uL));
}

/** The same from other bands than those of one more heater: from those of a heater that has tunes of its own. */
export function startFrom(
  fit: PublishedFit,
  question: StartQuestion,
  bandsOf: (group: GroupFit, air: Air, end: End) => Bands,
): StartTune {
  const { heat_kW, site, dose_uL, step_Hz, step_rpm } = question;
  requirePositive({
    heat_kW,
    step_Hz,
    step_rpm,
    low_fan_rpm: question.low_fan_rpm,
    high_fan_rpm: question.high_fan_rpm,
    dose_uL,
  });
  const air = airAt(site.elevation_m, question.air, site.elevation_sd_m);
  const usual = usualFans(heat_kW);
  const fans = {
    low: question.low_fan_rpm ?? usual.low_fan_rpm,
    high: question.high_fan_rpm ?? usual.high_fan_rpm,
  };
  const limit = Math.max(usual.fan_limit_rpm, fans.low, fans.high);
  const groups = { low: groupOf(fit, heat_kW, "low"), high: groupOf(fit, heat_kW, "high") };
  const bands = {
    low: bandsOf(groups.low, air, "low"),
    high: bandsOf(groups.high, air, "high"),
  };
  const keepFan = {
    low: endAt(bands.low, fans.low, question),
    high: endAt(bands.high, fans.high, question),
  };
  const gain = { low: perFan(groups.low, air), high: perFan(groups.high, air) };
  const needed = {
    low: settableFan(fans.low / gain.low, step_rpm),
    high: settableFan(fans.high / gain.high, step_rpm),
  };
  const raised = { low: Math.min(limit, needed.low), high: Math.min(limit, needed.high) };
  return {
    site,
    air,
    ...keepFan,
    strategies: {
      keep_fan: { ...keepFan, heat_fraction: gain.high },
      keep_heat: {
        low: endAt(bands.low, raised.low, question),
        high: endAt(bands.high, raised.high, question),
        heat_fraction: (gain.high * raised.high) / fans.high,
        fan_suffices: needed.high <= settableFan(limit, step_rpm),
        fan_limit_rpm: limit,
      },
    },
    basis: basisOf(fit, groups, air),
    safety: SAFETY,
  };
}

/** Pump rate per fan speed in this air against sea-level standard air. */
function perFan(group: GroupFit, air: Air): number {
  return (air.density_kg_m3 / STANDARD_DENSITY_kg_m3) ** group.slope;
}

function bandsFor(group: GroupFit, air: Air, dose_uL: number | undefined): Bands {
  return bandsAt(group, air.density_kg_m3, {
    ln_density_sd: air.ln_density_sd,
    dose_uL,
    mean_levels: [MEAN_LEVEL],
    new_heater_levels: NEW_HEATER_LEVELS,
  });
}

/** Bands are per fan speed: one set serves every fan speed asked about. */
function endAt(
  bands: Bands,
  fan_rpm: number,
  { dose_uL, step_Hz }: Pick<StartQuestion, "dose_uL" | "step_Hz">,
): StartEnd {
  const krpm = fan_rpm / 1000;
  const inHz = ({ level, lower, upper }: Band): Band => ({
    level,
    lower: lower * krpm,
    upper: upper * krpm,
  });
  const pump_Hz_exact = bands.pump_Hz_per_krpm * krpm;
  const pump_Hz = settablePump(pump_Hz_exact, step_Hz);
  const [mean] = bands.mean_bands;
  if (!mean) throw new RangeError("bandsAt answered no mean band.");
  return {
    fan_rpm,
    pump_Hz,
    pump_Hz_exact,
    mean_band_Hz: inHz(mean),
    new_heater_bands_Hz: bands.new_heater_bands.map(inHz),
    ...(dose_uL === undefined ? {} : burn(pump_Hz, dose_uL)),
  };
}

function burn(pump_Hz: number, dose_uL: number): { fuel_L_h: number; heat_kW: number } {
  const fuel_L_h = fuelFlow(pump_Hz, dose_uL);
  return { fuel_L_h, heat_kW: heatOutput(fuel_L_h) };
}

function basisOf(fit: PublishedFit, groups: Record<End, GroupFit>, air: Air): StartBasis {
  const { low, high } = groups;
  const ranges = ENDS.map((end) => groups[end].density_range);
  // Both ends come from the same tunes; where the fit kept other rows at one end, the narrower range is the honest one.
  const density_range =
    ranges.reduce<[number, number] | null | undefined>((narrow, range) => {
      if (narrow === undefined) return range;
      if (narrow === null || range === null) return null;
      return [Math.max(narrow[0], range[0]), Math.min(narrow[1], range[1])];
    }, undefined) ?? null;
  return {
    heat_kW: low.heat_kW,
    tunes: Math.min(low.tunes, high.tunes),
    contributors: Math.min(low.contributors, high.contributors),
    density_range,
    extrapolated:
      density_range === null ||
      air.density_kg_m3 < density_range[0] ||
      air.density_kg_m3 > density_range[1],
    prior_only: low.contributors === 0 || high.contributors === 0,
    fit: fit.version,
    demo: fit.demo,
  };
}
