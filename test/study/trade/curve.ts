/** A smooth curve through many scattered points. */
export type Curve = (x: number) => number;

type Basis = readonly Curve[];

/** Airs of the trade are from about −0.55 to 0.2; centred and scaled for the sake of the normal equations. */
const u: Curve = (x) => (x + 0.2) / 0.3;
export const LINE: Basis = [() => 1, u];
/** With a kink at standard density, where owners begin to raise their fans. */
export const BENT: Basis = [() => 1, u, (x) => u(x) ** 2, (x) => u(x) ** 3, (x) => Math.min(x, 0)];

/** Least squares by these functions: normal equations, solved by elimination. */
export function curve(xs: Float64Array, ys: Float64Array, basis: Basis): Curve {
  const size = basis.length;
  const rows = Array.from({ length: size }, () => new Float64Array(size + 1));
  const values = new Float64Array(size + 1);
  for (let i = 0; i < xs.length; i++) {
    basis.forEach((f, b) => {
      values[b] = f(xs[i] ?? 0);
    });
    values[size] = ys[i] ?? 0;
    for (let r = 0; r < size; r++) {
      const row = rows[r] as Float64Array;
      for (let c = 0; c <= size; c++) row[c] = (row[c] ?? 0) + (values[r] ?? 0) * (values[c] ?? 0);
    }
  }
  const coefficients = solve(rows);
  return (x) => basis.reduce((sum, f, b) => sum + (coefficients[b] ?? 0) * f(x), 0);
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
