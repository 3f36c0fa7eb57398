import { BANDS, BINS, beyondTunes, STEP_BANDS, STEP_BINS } from "./grid.ts";
import { LEVEL_FIELDS, STEP_FIELDS, type Tally } from "./tally.ts";

/** The cells of a tally that hold anything, as columns. */
export interface Cells {
  /** Number on the grid, for the sums of folds, and its band. */
  cell: Int32Array;
  band: Int32Array;
  /** Votes. */
  w: Float64Array;
  /** Mean x and r. Of steps: the root mean square of dx, and the dr that goes with it. */
  x: Float64Array;
  r: Float64Array;
  /** Σ w·(x − x̄)², Σ w·(x − x̄)(r − r̄) and Σ w·(r − r̄)² inside the cell; the first two are 0 of steps. */
  xx: Float64Array;
  xr: Float64Array;
  rr: Float64Array;
}

/** Where rows that lie beyond all tunes are put: so far from any line that they are of no kind that has one. */
const BEYOND = 10;

export function levelCells({ levels }: Tally): Cells {
  const sums = levels.total();
  const cells = filledCells(sums, BANDS * BINS, LEVEL_FIELDS, 1, BINS);
  for (let k = 0; k < cells.cell.length; k++) {
    const at = (cells.cell[k] as number) * LEVEL_FIELDS;
    const w = sums[at + 1] as number;
    const x = (sums[at + 2] as number) / w;
    const beyond = beyondTunes(cells.cell[k] as number);
    const r = beyond === 0 ? (sums[at + 3] as number) / w : beyond * BEYOND;
    cells.w[k] = w;
    cells.x[k] = x;
    cells.r[k] = r;
    if (beyond !== 0) continue;
    cells.xx[k] = Math.max(0, (sums[at + 4] as number) - w * x * x);
    cells.xr[k] = (sums[at + 5] as number) - w * x * r;
    cells.rr[k] = Math.max(0, (sums[at + 6] as number) - w * r * r);
  }
  return cells;
}

export function stepCells({ steps }: Tally): Cells {
  const sums = steps.total();
  const cells = filledCells(sums, STEP_BANDS * STEP_BINS, STEP_FIELDS, 0, STEP_BINS);
  for (let k = 0; k < cells.cell.length; k++) {
    const at = (cells.cell[k] as number) * STEP_FIELDS;
    const w = sums[at] as number;
    const x = Math.sqrt((sums[at + 1] as number) / w);
    const r = x > 0 ? (sums[at + 2] as number) / w / x : 0;
    cells.w[k] = w;
    cells.x[k] = x;
    cells.r[k] = r;
    cells.rr[k] = Math.max(0, (sums[at + 3] as number) - w * r * r);
  }
  return cells;
}

/** Votes of each band of rows. */
export function votesByBand({ band, w }: Cells): Float64Array {
  const votes = new Float64Array(BANDS);
  for (let k = 0; k < w.length; k++) {
    const j = band[k] as number;
    votes[j] = (votes[j] as number) + (w[k] as number);
  }
  return votes;
}

/** Columns for the cells that have votes, their numbers filled in. */
function filledCells(
  sums: Float64Array,
  count: number,
  fields: number,
  votesAt: number,
  bins: number,
): Cells {
  let filled = 0;
  for (let i = 0; i < count; i++) filled += Number((sums[i * fields + votesAt] as number) > 0);
  const column = () => new Float64Array(filled);
  const cell = new Int32Array(filled);
  const band = new Int32Array(filled);
  for (let i = 0, k = 0; i < count; i++) {
    if (!((sums[i * fields + votesAt] as number) > 0)) continue;
    cell[k] = i;
    band[k++] = Math.floor(i / bins);
  }
  const w = column();
  const x = column();
  const r = column();
  return { cell, band, w, x, r, xx: column(), xr: column(), rr: column() };
}
