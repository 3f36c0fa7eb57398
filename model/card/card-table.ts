import { ENDS, type End } from "../end.ts";
import type { Band } from "../fit/bands.ts";
import type { PublishedFit } from "../fit/group.ts";
import { fuelFlow } from "../mixture.ts";
import { ownTunesCounting, startForHeater } from "../own-start.ts";
import type { StartBasis, StartEnd, StartQuestion, StartTune } from "../start.ts";
import type { OwnTune } from "../tune.ts";

/** The heater that a card is for. */
export interface CardHeater {
  heat_kW: number;
  /** Left out: the class's usual one. */
  low_fan_rpm?: number | undefined;
  high_fan_rpm?: number | undefined;
  dose_uL?: number | undefined;
  /** The smallest step of its pump rate; the usual one when not given. */
  step_Hz?: number | undefined;
  /** Tunes found on it with a meter. */
  own_tunes?: readonly OwnTune[] | undefined;
}

/** Elevations and night temperatures that a card speaks of, ascending. */
export interface CardGrid {
  elevations_m: readonly number[];
  temperatures_C: readonly number[];
}

export interface CardCell {
  /** Rounded to what a controller can be set to. */
  pump_Hz: number;
  pump_Hz_exact: number;
  /** In air that nobody has tuned in. */
  extrapolated: boolean;
}

/** How far the good tune of one more heater may lie below and above the printed start, %. */
export interface BandReach {
  level: number;
  below_pct: number;
  above_pct: number;
}

export interface CardRow {
  elevation_m: number;
  cells: CardCell[];
  /** New-heater bands, 80 and 95 %: the widest of the row. */
  reach: BandReach[];
}

export interface CardEnd {
  fan_rpm: number;
  rows: CardRow[];
  /** With a dose: what one pulse a second burns. */
  fuel_L_h_per_Hz?: number;
}

export interface CardTable {
  low: CardEnd;
  high: CardEnd;
  /** What it rests on: the fit, its tunes and whether there are any. */
  basis: Pick<StartBasis, "heat_kW" | "tunes" | "contributors" | "prior_only" | "fit" | "demo">;
  /** Of the heater's own tunes, those that count: with any, rates and bands are its own. */
  own_tunes: number;
  /** Whether any cell lies in air that nobody has tuned in. */
  extrapolated: boolean;
}

/**
 * Start tunes of one heater by elevation and night temperature: each cell is the {@link startForHeater} of a site there
 * with standard pressure and 50 % humidity, fan speeds kept.
 * @throws RangeError when the grid is empty, or naming the field that is no number it can use
 */
export function cardTable(fit: PublishedFit, heater: CardHeater, grid: CardGrid): CardTable {
  const { elevations_m, temperatures_C } = grid;
  if (elevations_m.length === 0 || temperatures_C.length === 0) {
    throw new RangeError("elevations_m and temperatures_C must each hold at least one value.");
  }
  const tunes = elevations_m.map((elevation_m) =>
    temperatures_C.map((temperature_C) => tuneAt(fit, heater, elevation_m, temperature_C)),
  );
  const [low, high] = ENDS.map((end) => endOf(tunes, end, heater.dose_uL)) as [CardEnd, CardEnd];
  const [{ basis }] = tunes.flat() as [StartTune];
  const { heat_kW, contributors, prior_only, demo } = basis;
  return {
    low,
    high,
    basis: { heat_kW, tunes: basis.tunes, contributors, prior_only, fit: basis.fit, demo },
    own_tunes: ownTunesCounting(fit, heater, heater.own_tunes),
    extrapolated: tunes.flat().some((tune) => tune.basis.extrapolated),
  };
}

/** The start tune that a card prints for an elevation, m, and a night temperature, °C. */
export function tuneAt(
  fit: PublishedFit,
  { heat_kW, low_fan_rpm, high_fan_rpm, dose_uL, step_Hz, own_tunes }: CardHeater,
  elevation_m: number,
  temperature_C: number,
): StartTune {
  const question: StartQuestion = {
    heat_kW,
    site: { elevation_m, elevation_sd_m: 0, elevation_source: "given" },
    air: { temperature_C },
    low_fan_rpm,
    high_fan_rpm,
    dose_uL,
    step_Hz,
  };
  return startForHeater(fit, question, own_tunes);
}

function endOf(tunes: StartTune[][], end: End, dose_uL: number | undefined): CardEnd {
  const [first] = tunes.flat() as [StartTune];
  return {
    fan_rpm: first[end].fan_rpm,
    rows: tunes.map((row) => ({
      elevation_m: (row[0] as StartTune).site.elevation_m,
      cells: row.map((tune) => ({
        pump_Hz: tune[end].pump_Hz,
        pump_Hz_exact: tune[end].pump_Hz_exact,
        extrapolated: tune.basis.extrapolated,
      })),
      reach: widest(row.map((tune) => tune[end])),
    })),
    ...(dose_uL === undefined ? {} : { fuel_L_h_per_Hz: fuelFlow(1, dose_uL) }),
  };
}

/** The widest bands of a row, against the rates as printed: rounding them is part of how far a good tune may lie. */
function widest(row: StartEnd[]): BandReach[] {
  const levels = (row[0] as StartEnd).new_heater_bands_Hz.map(({ level }) => level);
  return levels.map((level, i) => {
    const bands = row.map(({ pump_Hz, new_heater_bands_Hz }) => ({
      pump_Hz,
      band: new_heater_bands_Hz[i] as Band,
    }));
    return {
      level,
      below_pct: Math.max(...bands.map(({ pump_Hz, band }) => 100 * (1 - band.lower / pump_Hz))),
      above_pct: Math.max(...bands.map(({ pump_Hz, band }) => 100 * (band.upper / pump_Hz - 1))),
    };
  });
}
