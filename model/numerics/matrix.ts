/** A square matrix, row by row. */
export type Matrix = Float64Array[];

export function diagonal(values: Iterable<number>): Matrix {
  const list = [...values];
  return list.map((v, i) => {
    const row = new Float64Array(list.length);
    row[i] = v;
    return row;
  });
}

export function times(m: Matrix, v: Float64Array): Float64Array {
  return Float64Array.from(m, (row) => dot(row, v));
}

export function dot(p: Float64Array, q: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < p.length; i++) sum += (p[i] as number) * (q[i] as number);
  return sum;
}

/** Inverse of a symmetric positive definite matrix by Cholesky's factors; null where it is not positive definite. */
export function inverse(m: Matrix): Matrix | null {
  const n = m.length;
  const lower: Matrix = diagonal(new Float64Array(n));
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let v = at(m, i, j);
      for (let k = 0; k < j; k++) v -= at(lower, i, k) * at(lower, j, k);
      if (i === j && !(v > 0)) return null;
      (lower[i] as Float64Array)[j] = i === j ? Math.sqrt(v) : v / at(lower, j, j);
    }
  }
  return Array.from({ length: n }, (_, c) => {
    const v = new Float64Array(n);
    v[c] = 1;
    for (let i = 0; i < n; i++) {
      for (let k = 0; k < i; k++) v[i] = (v[i] as number) - at(lower, i, k) * (v[k] as number);
      v[i] = (v[i] as number) / at(lower, i, i);
    }
    for (let i = n - 1; i >= 0; i--) {
      for (let k = i + 1; k < n; k++) v[i] = (v[i] as number) - at(lower, k, i) * (v[k] as number);
      v[i] = (v[i] as number) / at(lower, i, i);
    }
    return v;
  });
}

export function at(m: Matrix, i: number, j: number): number {
  return (m[i] as Float64Array)[j] as number;
}
