import { densityAltitude, STANDARD_DENSITY_kg_m3, standardDensity } from "../air.ts";
import { exp, ln } from "../numerics/ln-exp.ts";
import { carbonMonoxideVariances } from "./carbon-monoxide.ts";
import { type FitRow, stepOf, stepVariance, xOf, yOf } from "./row.ts";
import { NUMERICS, SETTINGS } from "./settings.ts";
import { mayCopy, weightsOf } from "./weights.ts";

/** Rows of one heater size and end as columns, in order of their owners. */
export interface Sample {
  owners: number;
  /** First row of each owner, and the number of rows at the end. */
  first: Int32Array;
  /** By row: x = ln(density/1.225), corrected for attenuation; y = ln(Hz per 1,000 rpm). */
  x: Float64Array;
  y: Float64Array;
  /** By row: variance of y that the row brings along, from its air, the pump's steps and its CO. */
  variance: Float64Array;
  /** By row: 1 where the temperature is the standard atmosphere's because nobody stated one. */
  assumed: Uint8Array;
  /** By row: what x would change by if its elevation were in feet. */
  feet_shift: Float64Array;
  /** By owner: weight in the likelihood. */
  weight: Float64Array;
  /** By owner: ln dose (µL), NaN where unknown. */
  ln_dose: Float64Array;
  /** By owner: 1 where the atlas may have been copied, so that the owner must not narrow a spread. */
  may_copy: Uint8Array;
  /** By owner: mean x of its rows, in sds of all about their median. */
  standing: Float64Array;
  /** Sum of the weights, weighted mean and sd of x. */
  votes: number;
  x_mean: number;
  x_sd: number;
  /** Root mean square of the steps in which the rates were set, Hz. */
  step_Hz: number;
  /** Mean and sd of the stated ln doses; null where none is stated. */
  dose: { mean: number; sd: number } | null;
}

const FEET_PER_m = 3.280_84;

/** Puts rows of one heater size and end in order of owner, x and y: the order in which they came leaves no trace. */
export function sampleOf(given: readonly FitRow[]): Sample {
  const { rows, first } = inOrder(given);
  const owners = first.length - 1;
  const byOwner = <T>(of: (own: readonly FitRow[]) => T) =>
    Array.from({ length: owners }, (_, i) => of(rows.slice(first[i], first[i + 1])));
  const may_copy = Uint8Array.from(byOwner((own) => Number(own.every(mayCopy))));
  const weight = weightsOf(rows, first, may_copy);
  const ln_dose = Float64Array.from(byOwner(lnDose));
  const stated = Float64Array.from(rows, (row) => xOf(row.density_kg_m3));
  const { mean, variance } = momentsOf(stated, first, weight);
  // Regression calibration (Carroll et al. 2006, ch. 4): error in the density would attenuate the slope.
  const error = SETTINGS.density_sd ** 2;
  const reliability = 1 - error / (variance + 2 * error);
  const x = stated.map((v) => mean + reliability * (v - mean));
  const x_sd = Math.sqrt(variance + error);
  const means = Float64Array.from({ length: owners }, (_, i) => meanOf(x, first, i));
  const middle = weightedMedian(means, weight);
  return {
    owners,
    first,
    x,
    y: Float64Array.from(rows, yOf),
    variance: rowVariances(rows),
    assumed: Uint8Array.from(rows, (row) => Number(row.temperature_assumed ?? false)),
    feet_shift: x.map(feetShift),
    weight,
    ln_dose,
    may_copy,
    standing: means.map((v) => (v - middle) / x_sd),
    votes: weight.reduce((sum, w) => sum + w, 0),
    x_mean: mean,
    x_sd,
    step_Hz: stepOfAll(rows, first, weight),
    dose: doseOf(ln_dose, weight),
  };
}

/** Every so-manieth owner: they are in order of pseudonyms, which mean nothing. */
export function thinned(sample: Sample, most: number): Sample {
  if (sample.owners <= most) return sample;
  const owners = Int32Array.from({ length: most }, (_, k) =>
    Math.floor((k * sample.owners) / most),
  );
  const first = new Int32Array(most + 1);
  owners.forEach((i, k) => {
    first[k + 1] =
      (first[k] as number) + (sample.first[i + 1] as number) - (sample.first[i] as number);
  });
  const rows = new Int32Array(first[most] as number);
  owners.forEach((i, k) => {
    for (let j = first[k] as number; j < (first[k + 1] as number); j++) {
      rows[j] = (sample.first[i] as number) + j - (first[k] as number);
    }
  });
  const ofRows = (column: Float64Array) => Float64Array.from(rows, (j) => column[j] as number);
  const ofOwners = (column: Float64Array) => Float64Array.from(owners, (i) => column[i] as number);
  const weight = ofOwners(sample.weight);
  return {
    ...sample,
    owners: most,
    first,
    x: ofRows(sample.x),
    y: ofRows(sample.y),
    variance: ofRows(sample.variance),
    assumed: Uint8Array.from(rows, (j) => sample.assumed[j] as number),
    feet_shift: ofRows(sample.feet_shift),
    weight,
    ln_dose: ofOwners(sample.ln_dose),
    may_copy: Uint8Array.from(owners, (i) => sample.may_copy[i] as number),
    standing: ofOwners(sample.standing),
    votes: weight.reduce((sum, w) => sum + w, 0),
  };
}

/** Rows by owner, x and y. Owners are ranked once, so that names are compared for owners and not for rows. */
function inOrder(given: readonly FitRow[]): { rows: FitRow[]; first: Int32Array } {
  const byOwner = new Map<string, FitRow[]>();
  for (const row of given) {
    const own = byOwner.get(row.contributor);
    if (own) own.push(row);
    else byOwner.set(row.contributor, [row]);
  }
  const first = new Int32Array(byOwner.size + 1);
  const rows: FitRow[] = [];
  [...byOwner.keys()].sort().forEach((name, i) => {
    const own = byOwner.get(name) as FitRow[];
    if (own.length > 1) own.sort(byAirAndRate);
    rows.push(...spread(own, NUMERICS.rows_of_one));
    first[i + 1] = rows.length;
  });
  return { rows, first };
}

/** At most so many rows, from the thinnest air to the densest: more of one owner tell of one heater only. */
function spread(own: readonly FitRow[], most: number): readonly FitRow[] {
  if (own.length <= most) return own;
  const last = own.length - 1;
  return Array.from({ length: most }, (_, k) => own[Math.round((k * last) / (most - 1))] as FitRow);
}

function byAirAndRate(p: FitRow, q: FitRow): number {
  return (
    p.density_kg_m3 - q.density_kg_m3 ||
    p.pump_Hz - q.pump_Hz ||
    p.fan_rpm - q.fan_rpm ||
    (String(p.row) < String(q.row) ? -1 : 1)
  );
}

/** By row: variance of ln density times the slope's square, of the pump's steps, and what its CO says of how far from the best it was. */
export function rowVariances(rows: readonly FitRow[]): Float64Array {
  const co = carbonMonoxideVariances(rows);
  return co.map((v, j) => {
    const { pump_Hz, ln_density_sd = 0 } = rows[j] as FitRow;
    return v + (SETTINGS.slope * ln_density_sd) ** 2 + stepVariance(pump_Hz);
  });
}

/** What x changes by if the stated elevation was in feet: the true site is lower, its air denser. */
function feetShift(x: number): number {
  const stated_m = densityAltitude(STANDARD_DENSITY_kg_m3 * exp(x));
  return stated_m > 0 ? xOf(standardDensity(stated_m / FEET_PER_m)) - x : 0;
}

function lnDose(own: readonly FitRow[]): number {
  let sum = 0;
  for (const { dose_uL } of own) sum += dose_uL === undefined ? Number.NaN : ln(dose_uL);
  return sum / own.length;
}

/** Moments of the stated ln doses; the sd shrunk as a spread is (scaled inverse χ²). */
function doseOf(ln_dose: Float64Array, weight: Float64Array): Sample["dose"] {
  let [votes, sum] = [0, 0];
  ln_dose.forEach((d, i) => {
    if (Number.isNaN(d)) return;
    votes += weight[i] as number;
    sum += (weight[i] as number) * d;
  });
  if (votes === 0) return null;
  const mean = sum / votes;
  let squares = SETTINGS.worth * SETTINGS.between ** 2;
  ln_dose.forEach((d, i) => {
    if (!Number.isNaN(d)) squares += (weight[i] as number) * (d - mean) ** 2;
  });
  return { mean, sd: Math.sqrt(squares / (SETTINGS.worth + votes)) };
}

function meanOf(x: Float64Array, first: Int32Array, owner: number): number {
  const own = x.subarray(first[owner], first[owner + 1]);
  return own.reduce((sum, v) => sum + v, 0) / own.length;
}

/** Mean and variance of x, each owner with its weight shared by its rows. */
function momentsOf(x: Float64Array, first: Int32Array, weight: Float64Array) {
  let [s0, s1, s2] = [0, 0, 0];
  weight.forEach((w, i) => {
    const from = first[i] as number;
    const to = first[i + 1] as number;
    for (let j = from; j < to; j++) {
      const share = w / (to - from);
      const v = x[j] as number;
      s0 += share;
      s1 += share * v;
      s2 += share * v * v;
    }
  });
  const mean = s1 / s0;
  return { mean, variance: Math.max(0, s2 / s0 - mean * mean) };
}

/** Root mean square of the rows' steps, shrunk towards the usual step as a spread is. */
function stepOfAll(rows: readonly FitRow[], first: Int32Array, weight: Float64Array): number {
  const squares = Float64Array.from(rows, ({ pump_Hz }) => stepOf(pump_Hz) ** 2);
  const votes = weight.reduce((sum, w) => sum + w, 0);
  const { worth, step_Hz } = SETTINGS;
  const all = worth * step_Hz ** 2 + votes * momentsOf(squares, first, weight).mean;
  return Math.sqrt(all / (worth + votes));
}

/** The value below which half the weight lies. */
function weightedMedian(values: Float64Array, weight: Float64Array): number {
  const order = [...values.keys()].sort((i, j) => (values[i] as number) - (values[j] as number));
  const half = weight.reduce((sum, w) => sum + w, 0) / 2;
  let below = 0;
  for (const i of order) {
    below += weight[i] as number;
    if (below >= half) return values[i] as number;
  }
  return 0;
}
