import { exactTerm } from "./exact-sum.ts";
import { BANDS, BINS, cellOf, STEP_BANDS, STEP_BINS, stepCellOf } from "./grid.ts";

/** Contributors are dealt into so many folds, by their names: what differs between folds tells how sure the fit is. */
export const FOLDS = 32;
/** Sums kept of each cell of the grid: rows, and Σ of w, w·x, w·r, w·x², w·x·r, w·r². */
export const LEVEL_FIELDS = 7;
/** Of each cell of the grid of steps: Σ of w, w·dx², w·dx·dr, w·dr². */
export const STEP_FIELDS = 4;

/** Counted in, or taken out again. */
export type Sign = 1 | -1;

/**
 * All that the fit of one heat class and end is made from: weighted sums on a fixed grid, fold by fold.
 * Its size does not grow with the number of rows. Every sum is exact, so rows can be counted and taken out again in
 * any order and leave no trace.
 */
export class Tally {
  readonly levels = new Blocks(BANDS, BINS * LEVEL_FIELDS);
  readonly steps = new Blocks(STEP_BANDS, STEP_BINS * STEP_FIELDS);

  /** Counts a row at (x, r) with the weight w of its voice. */
  countRow(fold: number, x: number, r: number, w: number, sign: Sign): void {
    const cell = cellOf(x, r);
    const band = Math.floor(cell / BINS);
    addRow(this.levels.at(fold, band), (cell - band * BINS) * LEVEL_FIELDS, x, r, sign * w, sign);
  }

  /** Counts a step: two rows of one contributor, their difference free of whatever its heater has of its own. */
  countStep(fold: number, dx: number, dr: number, w: number, sign: Sign): void {
    const cell = stepCellOf(dx, dr);
    const band = Math.floor(cell / STEP_BINS);
    addStep(this.steps.at(fold, band), (cell - band * STEP_BINS) * STEP_FIELDS, dx, dr, sign * w);
  }
}

function addRow(sums: Float64Array, at: number, x: number, r: number, v: number, rows: Sign): void {
  add(sums, at, rows);
  add(sums, at + 1, v);
  add(sums, at + 2, v * x);
  add(sums, at + 3, v * r);
  add(sums, at + 4, v * x * x);
  add(sums, at + 5, v * x * r);
  add(sums, at + 6, v * r * r);
}

function addStep(sums: Float64Array, at: number, dx: number, dr: number, v: number): void {
  add(sums, at, v);
  add(sums, at + 1, v * dx * dx);
  add(sums, at + 2, v * dx * dr);
  add(sums, at + 3, v * dr * dr);
}

function add(sums: Float64Array, at: number, term: number): void {
  sums[at] = (sums[at] as number) + exactTerm(term);
}

/** Sums by fold and band, made when first needed. */
export class Blocks {
  readonly #blocks: (Float64Array | undefined)[];
  readonly #bands: number;
  readonly #size: number;

  constructor(bands: number, size: number) {
    this.#bands = bands;
    this.#size = size;
    this.#blocks = new Array(FOLDS * bands);
  }

  at(fold: number, band: number): Float64Array {
    const i = fold * this.#bands + band;
    let block = this.#blocks[i];
    if (!block) {
      block = new Float64Array(this.#size);
      this.#blocks[i] = block;
    }
    return block;
  }

  /** The block of a fold and band, if anything was ever counted there. */
  peek(fold: number, band: number): Float64Array | undefined {
    return this.#blocks[fold * this.#bands + band];
  }

  /** The sums of all folds together, cell by cell. */
  total(): Float64Array {
    const sums = new Float64Array(this.#bands * this.#size);
    for (let i = 0; i < this.#blocks.length; i++) {
      const block = this.#blocks[i];
      if (!block) continue;
      const at = (i % this.#bands) * this.#size;
      for (let k = 0; k < block.length; k++)
        sums[at + k] = (sums[at + k] as number) + (block[k] as number);
    }
    return sums;
  }
}
