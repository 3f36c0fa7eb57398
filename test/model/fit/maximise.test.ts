import { expect, test } from "vitest";
import { maximise } from "../../../model/fit/maximise.ts";
import { diagonal, inverse, times } from "../../../model/numerics/matrix.ts";

test("BFGS finds the top of Rosenbrock's valley turned upside down", () => {
  // Rosenbrock (1960): f(x, y) = (1 − x)² + 100(y − x²)², least at (1, 1).
  const { t, converged } = maximise(
    (at, gradient) => {
      const [x, y] = at as unknown as [number, number];
      gradient[0] = 2 * (1 - x) + 400 * x * (y - x * x);
      gradient[1] = -200 * (y - x * x);
      return -((1 - x) ** 2) - 100 * (y - x * x) ** 2;
    },
    Float64Array.of(-1.2, 1),
    {
      inverse: diagonal([0.01, 0.01]),
      rounds: 200,
      tolerance: 1e-12,
    },
  );
  expect(converged).toBe(true);
  expect(t[0]).toBeCloseTo(1, 4);
  expect(t[1]).toBeCloseTo(1, 4);
});

test("the inverse of a Hilbert matrix is its known whole numbers; what is not positive definite has none", () => {
  // Hilbert matrix of order 3 (Choi 1983).
  const hilbert = [0, 1, 2].map((i) => Float64Array.from([0, 1, 2], (j) => 1 / (i + j + 1)));
  const known = [
    [9, -36, 30],
    [-36, 192, -180],
    [30, -180, 180],
  ];
  const found = inverse(hilbert);
  found?.forEach((row, i) => {
    row.forEach((v, j) => {
      expect(v).toBeCloseTo(known[i]?.[j] as number, 8);
    });
  });
  expect(inverse([Float64Array.of(1, 2), Float64Array.of(2, 1)])).toBeNull();
  expect(times(diagonal([2, 3]), Float64Array.of(1, 1))).toEqual(Float64Array.of(2, 3));
});
