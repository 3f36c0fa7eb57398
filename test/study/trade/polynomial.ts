/** A smooth curve through many scattered points. */
export type Curve = (x: number) => number;

const DEGREE = 3;
/** Airs of the trade are from about −0.55 to 0.2. */
const MIDDLE = -0.2;
const SCALE = 0.3;

/** Least squares by a cubic: normal equations, solved by elimination. */
export function curve(xs: Float64Array, ys: Float64Array): Curve {
  const size = DEGREE + 1;
  const rows = Array.from({ length: size }, () => new Float64Array(size + 1));
  const powers = new Float64Array(size);
  for (let i = 0; i < xs.length; i++) {
    const u = ((xs[i] ?? 0) - MIDDLE) / SCALE;
    for (let p = 0, v = 1; p < size; p++, v *= u) powers[p] = v;
    for (let r = 0; r < size; r++) {
      const row = rows[r] as Float64Array;
      const weight = powers[r] ?? 0;
      for (let c = 0; c < size; c++) row[c] = (row[c] ?? 0) + weight * (powers[c] ?? 0);
      row[size] = (row[size] ?? 0) + weight * (ys[i] ?? 0);
    }
  }
  const coefficients = solve(rows);
  return (x) => {
    const u = (x - MIDDLE) / SCALE;
    let y = 0;
    for (let p = DEGREE; p >= 0; p--) y = y * u + (coefficients[p] ?? 0);
    return y;
  };
}

/** Solves a symmetric positive definite system given as rows with the right-hand side last. */
function solve(rows: Float64Array[]): number[] {
  const n = rows.length;
  for (let i = 0; i < n; i++) {
    const pivot = rows[i] as Float64Array;
    for (let r = 0; r < n; r++) {
      if (r === i) continue;
      const row = rows[r] as Float64Array;
      const factor = (row[i] ?? 0) / (pivot[i] ?? 1);
      for (let c = i; c <= n; c++) row[c] = (row[c] ?? 0) - factor * (pivot[c] ?? 0);
    }
  }
  return rows.map((row, i) => (row[n] ?? 0) / (row[i] ?? 1));
}
