import fc from "fast-check";
import type { Expected } from "../../../model/trip/one-tune.ts";
import type { MixtureWindow } from "../../../model/trip/window.ts";

/** Random trips as the plans see them: pump rates expected at each stop, by end; some stops are alike. */
export const trips = (most: number): fc.Arbitrary<Expected> =>
  fc
    .array(
      fc.record({
        low: fc.oneof(thousandths(600, 2000), fc.constantFrom(0.8, 1, 1.2, 1.5)),
        // Not a fixed multiple of the low end: ends have slopes of their own.
        ratio: fc.oneof(fc.constant(3.5), thousandths(3000, 4000)),
      }),
      { minLength: 1, maxLength: most },
    )
    .map((stops) => ({
      low: stops.map(({ low }) => low),
      high: stops.map(({ low, ratio }) => low * ratio),
    }));

/** Sides in odd hundredths, so that no two stops lie at exactly the edge, where rounding would decide. */
export const windows: fc.Arbitrary<MixtureWindow> = fc.record({
  rich_pct: side(12.0371, 40),
  lean_pct: side(25.0371, 50),
});

function side(usual: number, most: number): fc.Arbitrary<number> {
  return fc.oneof(
    fc.constantFrom(0, usual),
    fc.integer({ min: 0, max: most }).map((pct) => pct + 0.0371),
  );
}

function thousandths(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min, max }).map((n) => n / 1000);
}
