/** A least-squares fit with what its intervals need. Vectors are in the order of the design's columns. */
export interface LeastSquares {
  coefficients: number[];
  standard_errors: number[];
  /** (XᵀWX)⁻¹: times the residual variance it is the covariance of the coefficients. */
  unscaled_covariance: number[][];
  residual_df: number;
  residual_sum_of_squares: number;
  /** Square root of the residual mean square. */
  residual_sd: number;
  /** Against the mean of y with a constant term, else against zero. */
  r_squared: number;
  f: number;
}

export interface LeastSquaresOptions {
  /** One weight ≥ 0 per observation; default 1. */
  weights?: readonly number[];
  /** Whether the first column is the constant term; default true. */
  constant?: boolean;
}

/**
 * Weighted linear least squares by Householder reflections, with one step of iterative refinement
 * (Golub & Van Loan, Matrix Computations, §5.3).
 * @param design rows of the design matrix, n × p, n ≥ p; a constant term is a column of ones
 * @param y n observations
 * @throws RangeError when shapes disagree, a number is not finite, or columns depend on each other
 */
export function leastSquares(
  design: readonly (readonly number[])[],
  y: readonly number[],
  { weights, constant = true }: LeastSquaresOptions = {},
): LeastSquares {
  requireShapes(design, y, weights);
  const root = y.map((_, i) => Math.sqrt(weights?.[i] ?? 1));
  const columns = (design[0] as readonly number[]).map((_, j) =>
    Float64Array.from(design, (row, i) => (row[j] as number) * (root[i] as number)),
  );
  const target = Float64Array.from(y, (value, i) => value * (root[i] as number));
  const { solve, inverseGram } = factor(columns);
  const first = solve(target);
  const correction = solve(residuals(columns, target, first));
  const coefficients = first.map((value, j) => value + (correction[j] as number));

  const p = columns.length;
  const residual_sum_of_squares = dot(...twice(residuals(columns, target, coefficients)));
  const residual_df = root.filter((w) => w > 0).length - p;
  const residual_sd = Math.sqrt(residual_sum_of_squares / residual_df);
  const unscaled_covariance = inverseGram();
  const total = constant
    ? squaresAboutMean(columns[0] as Float64Array, target)
    : dot(target, target);
  const explained_df = constant ? p - 1 : p;
  return {
    coefficients,
    standard_errors: unscaled_covariance.map((row, j) => residual_sd * Math.sqrt(row[j] as number)),
    unscaled_covariance,
    residual_df,
    residual_sum_of_squares,
    residual_sd,
    r_squared: 1 - residual_sum_of_squares / total,
    f: (total - residual_sum_of_squares) / explained_df / (residual_sum_of_squares / residual_df),
  };
}

type Vector = ArrayLike<number>;

/** Householder QR of the columns, kept as reflections: solves for a right-hand side and inverts the Gram matrix. */
function factor(columns: readonly Float64Array[]) {
  const work = columns.map((column) => Float64Array.from(column));
  const diagonal = work.map((column, j) => {
    const scale = Math.sqrt(dot(column, column));
    const tail = column.subarray(j);
    const norm = Math.sqrt(dot(tail, tail));
    if (!(norm > 1e-14 * scale)) {
      throw new RangeError(`Column ${j + 1} of the design depends on the columns before it.`);
    }
    const alpha = (tail[0] as number) > 0 ? -norm : norm;
    tail[0] = (tail[0] as number) - alpha;
    for (const later of work.slice(j + 1)) reflect(tail, later.subarray(j));
    return alpha;
  });
  const R = (i: number, j: number) =>
    i === j ? (diagonal[i] as number) : (work[j]?.[i] as number);
  const p = work.length;

  const solve = (target: Float64Array): number[] => {
    const rotated = Float64Array.from(target);
    work.forEach((column, j) => void reflect(column.subarray(j), rotated.subarray(j)));
    return backSubstitute(R, p, rotated);
  };
  const inverseGram = (): number[][] => {
    // (RᵀR)⁻¹ = R⁻¹R⁻ᵀ, from the columns of R⁻¹.
    const inverse = Array.from({ length: p }, (_, j) =>
      backSubstitute(
        R,
        p,
        Array.from({ length: p }, (_, i) => Number(i === j)),
      ),
    );
    return Array.from({ length: p }, (_, i) =>
      Array.from({ length: p }, (_, j) => dot(...pick(inverse, i, j))),
    );
  };
  return { solve, inverseGram };
}

function pick(columns: readonly Vector[], i: number, j: number): [number[], number[]] {
  return [columns.map((c) => c[i] as number), columns.map((c) => c[j] as number)];
}

/** Applies the reflection with vector v (not normalised) to a vector of the same length, in place. */
function reflect(v: Float64Array, vector: Float64Array): void {
  const factor = (2 * dot(v, vector)) / dot(v, v);
  for (let i = 0; i < v.length; i++) vector[i] = (vector[i] as number) - factor * (v[i] as number);
}

function backSubstitute(R: (i: number, j: number) => number, p: number, right: Vector): number[] {
  const solution = new Array<number>(p).fill(0);
  for (let i = p - 1; i >= 0; i--) {
    let value = right[i] as number;
    for (let j = i + 1; j < p; j++) value -= R(i, j) * (solution[j] as number);
    solution[i] = value / R(i, i);
  }
  return solution;
}

function residuals(
  columns: readonly Float64Array[],
  target: Float64Array,
  b: Vector,
): Float64Array {
  return target.map((value, i) =>
    columns.reduce((left, column, j) => left - (column[i] as number) * (b[j] as number), value),
  );
}

/** Σw(y − ȳ)² from √w and √w·y. */
function squaresAboutMean(root: Float64Array, target: Float64Array): number {
  const mean = dot(root, target) / dot(root, root);
  return dot(...twice(target.map((value, i) => value - mean * (root[i] as number))));
}

function twice<T>(value: T): [T, T] {
  return [value, value];
}

function dot(a: Vector, b: Vector): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

function requireShapes(
  design: readonly (readonly number[])[],
  y: readonly number[],
  weights: readonly number[] | undefined,
): void {
  const p = design[0]?.length ?? 0;
  if (p === 0) throw new RangeError("design must have at least one column.");
  if (design.length !== y.length) throw new RangeError("design and y must have as many rows.");
  if (weights && weights.length !== y.length)
    throw new RangeError("weights and y must be as many.");
  if (design.length < p) throw new RangeError(`design needs at least ${p} rows for ${p} columns.`);
  const rows: readonly (readonly number[])[] = [...design, y, weights ?? []];
  if (!rows.flat().every(Number.isFinite)) throw new RangeError("Every number must be finite.");
  if (weights?.some((w) => w < 0)) throw new RangeError("weights must not be negative.");
}
