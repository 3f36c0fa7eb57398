import { type Air, airAt } from "./air.ts";
import type { End } from "./end.ts";
import type { GroupFit } from "./fit/group.ts";
import { type FitRow, xOf, yOf } from "./fit/row.ts";
import { rowVariances } from "./fit/sample.ts";
import { exp } from "./numerics/ln-exp.ts";
import { type Mixture, type OwnRow, ownHeaterAt, quantileOf } from "./own-heater.ts";
import { wholePercent } from "./rounding.ts";
import type { OwnTune } from "./tune.ts";

/** An own tune as it is named to its owner: counted from 1. */
export interface NamedTune {
  name: number;
  tune: OwnTune;
}

/** An own tune that does not count, or not at one end, and why. */
export interface OwnAside {
  /** Which of the own tunes, counted from 1. */
  tune: number;
  /** Null where it is both. */
  end: End | null;
  code: string;
  /** Path of the figure that looks mistyped, e.g. "low.pump_Hz". */
  field?: string | undefined;
  sentence: string;
}

/** Own tunes of which not all can be right, though none stands out. */
export interface OwnContradiction {
  /** Counted from 1. */
  tunes: number[];
  end: End;
  sentence: string;
}

/** A heater at one end, as its own good tunes and the fit of its size have it. */
export interface KnownEnd {
  /** ln(Hz per 1,000 rpm) of its next tune, and of its best setting, in some air. */
  at(air: Air): Record<"next" | "best", Mixture>;
  /** Own tunes that count, counted from 1. */
  counting: number[];
  asides: OwnAside[];
  contradictions: OwnContradiction[];
}

/**
 * Probabilities of being a mistake, our own values: from the first on an own tune clearly is one, from the last on it is in
 * doubt, and from the middle one on it is taken for one where no other is in doubt with it.
 */
const [CLEAR, PROBABLE, DOUBT] = [0.8, 0.5, 0.15];

const POWER = { low: "lowest power", high: "highest power" } as const;

/** What own tunes say of one end of their heater. */
export function knownEnd(
  group: GroupFit,
  tunes: readonly NamedTune[],
  dose_uL: number | undefined,
): KnownEnd {
  const rows = ownRows(group, tunes);
  const { mistaken } = ownHeaterAt(group, rows, 0, dose_uL);
  const named = tunes.map(({ name }, j) => ({
    name,
    row: rows[j] as OwnRow,
    mistaken: mistaken[j] as number,
  }));
  const doubted = named.filter((own) => own.mistaken > DOUBT && own.mistaken <= CLEAR);
  const contradicting = doubted.length > 1 ? doubted.map(({ name }) => name) : [];
  const isAside = (own: { mistaken: number }) =>
    own.mistaken > (contradicting.length > 0 ? CLEAR : PROBABLE);
  const good = named.filter((own) => !isAside(own));
  const asides = named.filter(isAside).map(({ name, row }): OwnAside => {
    const expected = ownHeaterAt(
      group,
      good.map((own) => own.row),
      row.x,
      dose_uL,
    );
    const times = exp(row.y - quantileOf(expected.next, 0.5));
    const off = wholePercent(100 * Math.abs(times - 1));
    const than = good.length > 0 ? "your other tunes lead to expect" : "the atlas expects";
    return {
      tune: name,
      end: group.end,
      code: times > 1 ? "far_richer" : "far_leaner",
      sentence: `Own tune ${name} does not count at the ${POWER[group.end]}: it is ${off} % ${times > 1 ? "richer" : "leaner"} than ${than}. Check its pump rate, fan speed and elevation, and the heater size.`,
    };
  });
  const contradictions: OwnContradiction[] =
    contradicting.length === 0
      ? []
      : [
          {
            tunes: contradicting,
            end: group.end,
            sentence: `Own tunes ${listed(contradicting)} contradict each other at the ${POWER[group.end]}: one heater's tunes are seldom so far apart. Check their pump rates, fan speeds and elevations; until another tune tells which is right, the band is wide.`,
          },
        ];
  return {
    at: (air) => {
      const x = xOf(air.density_kg_m3);
      const { next, best } = ownHeaterAt(group, rows, x, dose_uL);
      const query = (group.slope * air.ln_density_sd) ** 2;
      const blurred = (mixture: Mixture) =>
        mixture.map((part) => ({ ...part, variance: part.variance + query }));
      return { next: blurred(next), best: blurred(best) };
    },
    counting: good.map(({ name }) => name),
    asides,
    contradictions,
  };
}

/** Own tunes as the fit reads them: with the variance of their air, their CO and of nights without a temperature. */
function ownRows(group: GroupFit, tunes: readonly NamedTune[]): OwnRow[] {
  const rows = tunes.map(({ name, tune }): FitRow => {
    const air = airAt(tune.site.elevation_m, tune.air ?? {}, tune.site.elevation_sd_m);
    return {
      row: name,
      contributor: "own",
      heat_kW: group.heat_kW,
      end: group.end,
      density_kg_m3: air.density_kg_m3,
      ln_density_sd: air.ln_density_sd,
      temperature_assumed: air.assumed.includes("temperature"),
      ...tune[group.end],
    };
  });
  const variances = rowVariances(rows);
  return rows.map((row, j) => ({
    x: xOf(row.density_kg_m3) + (row.temperature_assumed ? group.night : 0),
    y: yOf(row),
    variance: variances[j] as number,
  }));
}

/** "1, 2 and 4" */
function listed(names: readonly number[]): string {
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
