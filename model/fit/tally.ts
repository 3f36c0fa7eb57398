import { exactTerm } from "./exact-sum.ts";
import { BANDS, BINS, cellOf, STEP_BANDS, STEP_BINS, stepCellOf } from "./grid.ts";

/** Contributors are dealt into so many folds, by their names: what differs between folds tells how sure the fit is. */
export const FOLDS = 32;
/** Sums kept of each cell of the grid: rows, and Σ of w, w·x, w·r, w·x², w·x·r, w·r². */
export const LEVEL_FIELDS = 7;
/** Of each cell of the grid of steps: Σ of w, w·dx², w·dx·dr, w·dr². */
export const STEP_FIELDS = 4;

/** One row as it is counted: its place on the grid, and what its voice is worth. */
export interface Voice {
  x: number;
  r: number;
  weight: number;
}

/** Two rows of one contributor: the difference between them is free of whatever its heater has of its own. */
export interface Step {
  dx: number;
  dr: number;
  weight: number;
}

/**
 * All that the fit of one heat class and end is made from: weighted sums on a fixed grid, by fold and in all.
 * Its size does not grow with the number of rows. Every sum is exact, so rows can be counted and taken out again in
 * any order and leave no trace.
 */
export class Tally {
  readonly levels = new Float64Array(BANDS * BINS * LEVEL_FIELDS);
  readonly steps = new Float64Array(STEP_BANDS * STEP_BINS * STEP_FIELDS);
  /** The same sums of each fold, a block for each band that has any. */
  readonly foldLevels = new Blocks(BANDS, BINS * LEVEL_FIELDS);
  readonly foldSteps = new Blocks(STEP_BANDS, STEP_BINS * STEP_FIELDS);

  /** Counts a row (sign 1) or takes it out (sign −1). */
  countRow(fold: number, { x, r, weight: w }: Voice, sign: 1 | -1): void {
    const terms = [1, w, w * x, w * r, w * x * x, w * x * r, w * r * r];
    this.#add(this.levels, this.foldLevels, { fold, cell: cellOf(x, r), bins: BINS, terms, sign });
  }

  countStep(fold: number, { dx, dr, weight: w }: Step, sign: 1 | -1): void {
    const terms = [w, w * dx * dx, w * dx * dr, w * dr * dr];
    const cell = stepCellOf(dx, dr);
    this.#add(this.steps, this.foldSteps, { fold, cell, bins: STEP_BINS, terms, sign });
  }

  #add(total: Float64Array, folds: Blocks, { fold, cell, bins, terms, sign }: Change): void {
    const band = Math.floor(cell / bins);
    const block = folds.at(fold, band);
    const fields = terms.length;
    const at = cell * fields;
    const inBlock = (cell - band * bins) * fields;
    for (let k = 0; k < fields; k++) {
      const term = sign * exactTerm(terms[k] as number);
      total[at + k] = (total[at + k] as number) + term;
      block[inBlock + k] = (block[inBlock + k] as number) + term;
    }
  }
}

interface Change {
  fold: number;
  cell: number;
  bins: number;
  terms: number[];
  sign: 1 | -1;
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
    if (!block) this.#blocks[i] = block = new Float64Array(this.#size);
    return block;
  }

  /** The block of a fold and band, if anything was ever counted there. */
  peek(fold: number, band: number): Float64Array | undefined {
    return this.#blocks[fold * this.#bands + band];
  }
}
