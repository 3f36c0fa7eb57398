import fc from "fast-check";
import { settablePump } from "../../../model/rounding.ts";
import type { Expected } from "../../../model/trip/one-tune.ts";
import type { ExpectedAt, MixtureWindow, Standing } from "../../../model/trip/window.ts";

/** Random trips as the plans see them: pump rates expected at each stop, by end; some stops are alike. */
export const trips = (most: number): fc.Arbitrary<Expected> =>
  fc
    .array(
      fc.record({
        low: fc.oneof(thousandths(600, 2000), fc.constantFrom(0.8, 0.95, 1, 1.25, 1.5)),
        // Not a fixed multiple of the low end: ends have slopes of their own.
        ratio: fc.oneof(fc.constant(3.5), thousandths(3000, 4000)),
        unsure_pct: fc.integer({ min: 1, max: 9 }),
      }),
      { minLength: 1, maxLength: most },
    )
    .map((stops) => ({
      low: stops.map(({ low, unsure_pct }) => ({ pump_Hz: low, unsure_pct })),
      high: stops.map(({ low, ratio, unsure_pct }) => ({ pump_Hz: low * ratio, unsure_pct })),
    }));

export const windows: fc.Arbitrary<MixtureWindow> = fc.record({
  rich_pct: side(12, 40),
  lean_pct: side(25, 50),
});

/** The same trip at certain nights: only the pump rates matter. */
export function sure(rates: Record<"low" | "high", readonly number[]>): Expected {
  const at = (pump_Hz: number): ExpectedAt => ({ pump_Hz, unsure_pct: 0 });
  return { low: rates.low.map(at), high: rates.high.map(at) };
}

/** Smallest steps of controllers, as so many a hertz. */
export const steps: fc.Arbitrary<number> = fc.constantFrom(10, 10, 20, 8).map((many) => 1 / many);

/** All that a controller in such steps can be set to and a pump can run at. */
export function allRates_Hz(step_Hz = 0.1): number[] {
  const many = Math.round(1 / step_Hz);
  return Array.from({ length: 12 * many }, (_, i) => (i + 1) / many);
}

/** How a rate stands at some stops of one end, worked out from the words of the rule alone. */
export function standsAt(
  pump_Hz: number,
  stops: readonly ExpectedAt[],
  { rich_pct, lean_pct }: MixtureWindow,
): Standing {
  const rooms = stops.map((at) => {
    const exact = 100 * (pump_Hz / at.pump_Hz - 1);
    const shift = Math.sign(exact) * Math.floor(Math.abs(exact) + 0.5 + 1e-9);
    const room = Math.min(rich_pct - shift, lean_pct + shift);
    return { room, needed: Math.max(3, at.unsure_pct) };
  });
  if (rooms.some(({ room }) => room < -1e-9)) return "beyond";
  return rooms.some(({ room, needed }) => room < needed - 1e-9) ? "tight" : "roomy";
}

/** The rates that are to be chosen from, by trying all: those that stand best; of one stop, or stops alike, the nearest that is within. */
export function bestRates(
  rates_Hz: readonly number[],
  stops: readonly ExpectedAt[],
  window: MixtureWindow,
  step_Hz = 0.1,
): { pump_Hz: number; standing: Standing; worst_pct: number }[] {
  const all = rates_Hz.map((pump_Hz) => ({
    pump_Hz,
    standing: standsAt(pump_Hz, stops, window),
    worst_pct: worstOf(pump_Hz, stops),
  }));
  const alike = stops.every((stop) => stop.pump_Hz === stops[0]?.pump_Hz);
  const within = all.filter(({ standing }) => standing !== "beyond");
  if (alike && within.length > 0) {
    const nearest = settablePump(stops[0]?.pump_Hz ?? Number.NaN, step_Hz);
    const itself = within.filter(({ pump_Hz }) => pump_Hz === nearest);
    if (itself.length > 0) return itself;
  }
  const roomy = within.filter(({ standing }) => standing === "roomy");
  return [roomy, within].find((some) => some.length > 0) ?? all;
}

/** Unrounded, %. */
export function worstOf(pump_Hz: number, stops: readonly ExpectedAt[]): number {
  return Math.max(...stops.map((at) => Math.abs(100 * (pump_Hz / at.pump_Hz - 1))));
}

function side(usual: number, most: number): fc.Arbitrary<number> {
  return fc.oneof(
    fc.constantFrom(0, usual),
    fc.integer({ min: 0, max: most }),
    fc.integer({ min: 0, max: 2 * most }).map((halves) => halves / 2),
  );
}

function thousandths(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min, max }).map((n) => n / 1000);
}
