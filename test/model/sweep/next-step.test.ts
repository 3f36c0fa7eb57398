import { expect, test } from "vitest";
import type { SweepReading, SweepSetup } from "../../../model/sweep/setup.ts";
import { nextStep } from "../../../model/sweep/sweep.ts";

const setup: SweepSetup = {
  end: "high",
  start_Hz: 4.2,
  bands_Hz: [
    { level: 0.8, lower: 3.65, upper: 4.83 },
    { level: 0.95, lower: 3.39, upper: 5.2 },
  ],
};
/** A settled reading each: three minutes at a rate. */
const settled = (list: readonly (readonly [number, number])[]): SweepReading[] =>
  list.map(([pump_Hz, co_ppm], i) => ({ pump_Hz, co_ppm, time_s: 180 * (i + 1) }));

test("a sweep begins at the start tune and waits for the meter", () => {
  const answer = nextStep(setup, []);
  expect(answer).toMatchObject({ kind: "set", why: "start", pump_Hz: 4.2 });
  expect(answer.sentence).toContain("4.2 Hz");
});

test("a reading taken too soon is told to wait, and how long", () => {
  const answer = nextStep(setup, [{ pump_Hz: 4.2, co_ppm: 12, time_s: 12 }]);
  expect(answer.kind).toBe("wait");
  if (answer.kind !== "wait") return;
  expect(answer.wait_s).toBeGreaterThanOrEqual(10);
  expect(answer.wait_s).toBeLessThan(200);
  expect(answer.sentence).toContain("Still settling");
});

test("both limbs climbed: minimum, interval, flat range and a seat in it", () => {
  const answer = nextStep(
    setup,
    settled([
      [4.2, 15],
      [4.6, 60],
      [4.1, 14],
      [4, 16],
      [3.9, 24],
      [3.8, 36],
    ]),
  );
  expect(answer.kind).toBe("minimum");
  if (answer.kind !== "minimum") return;
  expect(answer.minimum_Hz).toBeGreaterThan(4);
  expect(answer.minimum_Hz).toBeLessThan(4.25);
  expect(answer.limbs).toEqual({ lean: true, rich: true });
  expect(answer.basin_Hz.lower).toBeLessThanOrEqual(answer.sit_Hz);
  expect(answer.basin_Hz.upper).toBeGreaterThanOrEqual(answer.sit_Hz);
  expect(answer.sentence).toContain("4.1");
});

test("the lowest reading at the lean end alone is no minimum", () => {
  const answer = nextStep(
    setup,
    settled([
      [4.2, 60],
      [4.1, 45],
    ]),
  );
  expect(answer).toMatchObject({ kind: "set", why: "leaner", pump_Hz: 4 });
});

test("CO shooting up on the rich side sends back at once, settled or not", () => {
  const readings = settled([
    [4.2, 20],
    [4.1, 15],
  ]);
  const spike = { pump_Hz: 4.5, co_ppm: 420, time_s: 370 };
  const answer = nextStep(setup, [...readings, spike]);
  expect(answer).toMatchObject({ kind: "set", why: "spike" });
  if (answer.kind === "set") expect(answer.pump_Hz).toBeLessThan(4.5);
  expect(answer.guards_Hz.rich).toBeLessThan(4.5);
});

test("a flame-out is answered richer, with a margin, and the third one with the manual", () => {
  const out = { pump_Hz: 4, time_s: 200, flame_out: true };
  const after = nextStep(setup, [...settled([[4.2, 30]]), out]);
  expect(after).toMatchObject({ kind: "set", why: "flame-out" });
  if (after.kind === "set") expect(after.pump_Hz).toBeGreaterThanOrEqual(4.16);
  expect(after.sentence).toContain("cool down");
  const outs = [300, 400].flatMap((time_s) => [
    { pump_Hz: 4.2, co_ppm: 30, time_s },
    { pump_Hz: 4.1, time_s: time_s + 50, flame_out: true },
  ]);
  const stop = nextStep(setup, [...settled([[4.2, 30]]), out, ...outs]);
  expect(stop).toMatchObject({ kind: "stop", flame_outs: 3 });
  expect(stop.sentence).toContain("manual");
});

test("below the floor everywhere there is no minimum, and below the floor is not 0", () => {
  const blind = { ...setup, meter: { floor_ppm: 30, resolution_ppm: 1 } };
  const readings = [4.2, 4.1, 4.4].map((pump_Hz, i) => ({
    pump_Hz,
    co_below_ppm: 30,
    time_s: 180 * (i + 1),
  }));
  const answer = nextStep(blind, readings);
  expect(answer).toMatchObject({ kind: "no minimum", why: "below floor" });
  expect(answer.sentence).toContain("That is not 0");
});

test("what is no reading is refused by name", () => {
  const one = { pump_Hz: 4.2, co_ppm: 20, time_s: 100 };
  expect(() => nextStep(setup, [one, { ...one, time_s: 50 }])).toThrow("readings[1].time_s");
  expect(() => nextStep(setup, [{ ...one, co_ppm: Number.NaN }])).toThrow("readings[0].co_ppm");
  expect(() => nextStep(setup, [{ pump_Hz: 4.2, time_s: 1 }])).toThrow("readings[0]");
  expect(() => nextStep({ ...setup, step_Hz: 0 }, [])).toThrow("step_Hz");
});

test("a flame-out before anything burned is answered a little richer, not at the rich end", () => {
  const answer = nextStep(setup, [{ pump_Hz: 4.2, time_s: 20, flame_out: true }]);
  expect(answer).toMatchObject({ kind: "set", why: "flame-out" });
  if (answer.kind !== "set") return;
  expect(answer.pump_Hz).toBeGreaterThanOrEqual(4.3);
  expect(answer.pump_Hz).toBeLessThanOrEqual(4.7);
});
