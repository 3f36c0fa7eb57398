import { BANDS, BINS, STEP_BANDS, STEP_BINS } from "./grid.ts";
import { LEVEL_FIELDS, STEP_FIELDS, type Tally } from "./tally.ts";

/** The cells of a tally that hold anything, as columns: mean place, votes, and where they lie on the grid. */
export interface Cells {
  /** Number on the grid, for the sums of folds. */
  cell: Int32Array;
  band: Int32Array;
  w: Float64Array;
  /** Mean x and r of rows; mean dx and dr of steps are root mean square and regression mean, see {@link stepCells}. */
  x: Float64Array;
  r: Float64Array;
  /** Σ w·(x − x̄)², Σ w·(x − x̄)(r − r̄) and Σ w·(r − r̄)² inside the cell. */
  xx: Float64Array;
  xr: Float64Array;
  rr: Float64Array;
}

export function levelCells({ levels }: Tally): Cells {
  return columns(levels.total(), BANDS * BINS, LEVEL_FIELDS, BINS, (sums, at) => {
    const [w, x, r, xx, xr, rr] = sums.subarray(at + 1, at + 7) as unknown as Six;
    return [w, x / w, r / w, xx - (x * x) / w, xr - (x * r) / w, rr - (r * r) / w];
  });
}

/** Cells of steps: `x` is the root mean square dx, `r` the dr that goes with it; what is left of dr² is in `rr`. */
export function stepCells({ steps }: Tally): Cells {
  return columns(steps.total(), STEP_BANDS * STEP_BINS, STEP_FIELDS, STEP_BINS, (sums, at) => {
    const [w, xx, xr, rr] = sums.subarray(at, at + 4) as unknown as Four;
    const x = Math.sqrt(xx / w);
    const r = x > 0 ? xr / w / x : 0;
    return [w, x, r, 0, 0, rr - w * r * r];
  });
}

type Four = [number, number, number, number];
type Six = [number, number, number, number, number, number];

function columns(
  sums: Float64Array,
  count: number,
  fields: number,
  bins: number,
  read: (sums: Float64Array, at: number) => Six,
): Cells {
  const weightAt = fields === LEVEL_FIELDS ? 1 : 0;
  let filled = 0;
  for (let i = 0; i < count; i++) filled += Number((sums[i * fields + weightAt] as number) > 0);
  const column = () => new Float64Array(filled);
  const cells: Cells = {
    cell: new Int32Array(filled),
    band: new Int32Array(filled),
    w: column(),
    x: column(),
    r: column(),
    xx: column(),
    xr: column(),
    rr: column(),
  };
  let k = 0;
  for (let i = 0; i < count; i++) {
    if (!((sums[i * fields + weightAt] as number) > 0)) continue;
    cells.cell[k] = i;
    cells.band[k] = Math.floor(i / bins);
    const [w, x, r, xx, xr, rr] = read(sums, i * fields);
    cells.w[k] = w;
    cells.x[k] = x;
    cells.r[k] = r;
    cells.xx[k] = xx;
    cells.xr[k] = xr;
    cells.rr[k] = Math.max(0, rr);
    k++;
  }
  return cells;
}
