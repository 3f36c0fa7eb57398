import { STANDARD_DENSITY_kg_m3 } from "../air.ts";
import { addUp, type ContributorSums, leaveOut, squaresAbout } from "./contributor-sums.ts";
import { exactTerm } from "./exact-sum.ts";
import { ENDS, type FitRow, type GroupFit, type RejectedRow } from "./group.ts";
import { fitLine, type Line } from "./line.ts";
import { gather } from "./points.ts";
import { PRIOR } from "./prior.ts";
import { type RobustLine, robustLine } from "./robust-line.ts";
import { castVotes } from "./votes.ts";

/** Rows farther than this from the robust line, in robust spreads, are set aside. */
const REJECT_BEYOND = 3;
/** Variance that cutting a normal distribution at 3 standard deviations leaves. */
const VARIANCE_LEFT_BY_CUT = 0.9733;

/** Fits of all heat classes and ends, and the rows they set aside. */
export interface AtlasFit {
  groups: GroupFit[];
  rejected: RejectedRow[];
}

/**
 * Fits every heat class and end on its own:
 * ln(pump_Hz ÷ (fan_rpm/1000)) = intercept + slope·ln(density/1.225).
 *
 * Votes by contributor and place; a start by consensus under a known spread; bisquare reweighting; rows beyond
 * three robust spreads set aside with a reason; least squares with the physics prior on the rest; spread shrunk
 * to its prior; the mean's variance by leaving out one contributor at a time. The same rows give the same bits
 * in any order.
 * @throws RangeError naming the row and field of a number that is not finite and positive
 */
export function fitAtlas(rows: Iterable<FitRow>): AtlasFit {
  const byGroup = new Map<string, FitRow[]>();
  for (const row of rows) {
    requirePositive(row);
    const key = `${row.heat_kW} ${row.end}`;
    const group = byGroup.get(key);
    if (group) group.push(row);
    else byGroup.set(key, [row]);
  }
  const fits = [...byGroup.values()].map(fitGroup);
  fits.sort(({ group: a }, { group: b }) => a.heat_kW - b.heat_kW || (a.end === "low" ? -1 : 1));
  return { groups: fits.map((f) => f.group), rejected: fits.flatMap((f) => f.rejected) };
}

function fitGroup(rows: FitRow[]): { group: GroupFit; rejected: RejectedRow[] } {
  const { heat_kW, end } = rows[0] as FitRow;
  const prior = { intercept: PRIOR.intercept[end] };
  const { owner, share, vote } = castVotes(rows);
  const { x, y } = coordinates(rows);
  const robust = robustLine(gather(x, y, share.map(exactTerm)), prior);
  const { keep, rejected } = setAside(rows, x, y, robust, vote.length);
  const sums = addUp({ x, y, owner, share }, keep, vote.length);
  const { line } = fitLine(sums.total, robust.scale, prior);
  const { spread, spread_df } = spreadOf(sums, line, robust.scale);
  return {
    rejected,
    group: {
      heat_kW,
      end,
      intercept: line.intercept,
      slope: line.slope,
      ...leaveOut(sums, robust.scale, prior),
      posterior: fitLine(sums.total, spread, prior).posterior,
      spread,
      spread_df,
      contributors: sums.each.length,
      tunes: rows.length - rejected.length,
      rejected: rejected.length,
      density_range: densityRange(rows, keep),
    },
  };
}

/** x = ln(density/1.225), y = ln(Hz per 1,000 rpm) of each row. */
function coordinates(rows: readonly FitRow[]): { x: Float64Array; y: Float64Array } {
  const x = new Float64Array(rows.length);
  const y = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i++) {
    const { density_kg_m3, pump_Hz, fan_rpm } = rows[i] as FitRow;
    x[i] = exactTerm(Math.log(density_kg_m3 / STANDARD_DENSITY_kg_m3));
    y[i] = exactTerm(Math.log((pump_Hz * 1000) / fan_rpm));
  }
  return { x, y };
}

function setAside(
  rows: FitRow[],
  x: Float64Array,
  y: Float64Array,
  { line, scale }: RobustLine,
  contributors: number,
): { keep: Uint8Array; rejected: RejectedRow[] } {
  const rejected: RejectedRow[] = [];
  const keep = new Uint8Array(rows.length);
  for (let i = 0; i < rows.length; i++) {
    const expected = line.intercept + line.slope * (x[i] as number);
    const spreads = ((y[i] as number) - expected) / scale;
    if (Math.abs(spreads) <= REJECT_BEYOND) keep[i] = 1;
    else {
      const row = rows[i] as FitRow;
      const reason = reasonFor(row, spreads, Math.exp(expected), contributors);
      rejected.push({ row: row.row, heat_kW: row.heat_kW, end: row.end, reason });
    }
  }
  return { keep, rejected };
}

function reasonFor(row: FitRow, spreads: number, expected: number, contributors: number): string {
  const got = (row.pump_Hz * 1000) / row.fan_rpm;
  return (
    `${Math.abs(spreads).toFixed(1)} robust spreads ${spreads > 0 ? "richer" : "leaner"} than ` +
    `${contributors} contributors suggest at ${row.density_kg_m3.toFixed(3)} kg/m³: ` +
    `${got.toFixed(3)} against ${expected.toFixed(3)} Hz per 1,000 rpm at the ${row.end} end.`
  );
}

/**
 * Spread between heaters: the kept rows' variance, corrected for the cut and for the coefficients fitted,
 * shrunk to the prior spread.
 */
function spreadOf(
  sums: ContributorSums,
  line: Line,
  scale: number,
): { spread: number; spread_df: number } {
  const { total, effective } = sums;
  // The slope costs a degree of freedom only as far as the data, not the prior, decide it.
  const slopeInformation = total.w > 0 ? total.xx - total.x ** 2 / total.w : 0;
  const priorInformation = (scale / PRIOR.slope_sd) ** 2;
  const fitted = 1 + slopeInformation / (slopeInformation + priorInformation);
  const df = Math.max(0, effective - fitted);
  const own =
    df > 0 ? ((squaresAbout(sums, line) / total.w) * (effective / df)) / VARIANCE_LEFT_BY_CUT : 0;
  const spread_df = df + PRIOR.spread_df;
  const variance = (df * own + PRIOR.spread_df * PRIOR.spread ** 2) / spread_df;
  return { spread: Math.sqrt(variance), spread_df };
}

function densityRange(rows: FitRow[], keep: Uint8Array): [number, number] | null {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  rows.forEach(({ density_kg_m3 }, i) => {
    if (!keep[i]) return;
    least = Math.min(least, density_kg_m3);
    most = Math.max(most, density_kg_m3);
  });
  return least <= most ? [least, most] : null;
}

const POSITIVE = ["heat_kW", "density_kg_m3", "pump_Hz", "fan_rpm"] as const;

function requirePositive(row: FitRow): void {
  for (const field of POSITIVE) {
    if (!(Number.isFinite(row[field]) && row[field] > 0)) {
      throw new RangeError(
        `Row ${row.row}: ${field} must be a positive number, not ${row[field]}.`,
      );
    }
  }
  if (!ENDS.includes(row.end)) {
    throw new RangeError(`Row ${row.row}: end must be "low" or "high", not "${row.end}".`);
  }
}
