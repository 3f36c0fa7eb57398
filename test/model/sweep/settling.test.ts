import { expect, test } from "vitest";
import { type SweepReading, sweepOf } from "../../../model/sweep/setup.ts";
import { firstLook_s, LOOKS_MOST, nextLook_s, staysOf } from "../../../model/sweep/stays.ts";

const setup = { end: "low" as const, present_Hz: 1.1, suggested_Hz: 1.1, bands_Hz: [] };
const sweep = sweepOf(setup);

/** A stay at one rate: what was shown so many seconds after setting. */
function stay(shown: readonly (readonly [number, number])[], rest: Partial<SweepReading> = {}) {
  const readings = shown.map(([time_s, co_ppm]) => ({
    pump_Hz: 1.1,
    set_s: 0,
    time_s,
    co_ppm,
    ...rest,
  }));
  const [one] = staysOf(sweep, readings);
  if (!one) throw new Error("no stay");
  return one;
}

/** What an ideal meter of this lag shows on its way from 0 to 100 ppm. */
const rising = (lag_s: number, times: readonly number[]) =>
  times.map((s) => [s, 100 * (1 - Math.exp(-s / lag_s))] as const);

test("one reading is none yet; two that agree are a level, two that do not are none", () => {
  expect(stay([[80, 40]]).level).toBeUndefined();
  expect(
    stay([
      [80, 40],
      [120, 42],
    ]).level,
  ).toMatchObject({ pump_Hz: 1.1, ppm: 41 });
  expect(
    stay([
      [80, 40],
      [120, 60],
    ]).level,
  ).toBeUndefined();
  // Too near to each other they say nothing of whether the figure moves.
  expect(
    stay([
      [80, 40],
      [85, 41],
    ]).level,
  ).toBeUndefined();
});

test("watched for half a minute one reading will do, but no sooner than a flame burns steadily", () => {
  expect(stay([[12, 30]], { still: true }).level).toBeUndefined();
  expect(stay([[40, 30]], { still: true }).level).toMatchObject({ ppm: 30 });
});

test("a figure that still moves is known no better than it moves, and is taken after four looks", () => {
  const moving = [
    [80, 40],
    [120, 60],
    [180, 90],
    [250, 120],
  ] as const;
  expect(stay(moving.slice(0, LOOKS_MOST - 1)).level).toBeUndefined();
  expect(stay(moving).level).toMatchObject({ ppm: 105, sd_ppm: 30 });
});

test("on the way to its level a meter is not taken at its word, though it is twice as slow as thought", () => {
  const { lag_s } = sweep.meter;
  for (const slow of [1, 1.5, 2]) {
    const first = firstLook_s(sweep);
    const times = [first];
    const levels = () => stay(rising(slow * lag_s, times)).level;
    while (levels() === undefined) {
      times.push((times.at(-1) as number) + nextLook_s(sweep, stay(rising(slow * lag_s, times))));
    }
    const level = levels();
    expect(100 - (level?.ppm ?? 0)).toBeLessThan(2 * (level?.sd_ppm ?? 0));
    expect(times.length).toBeLessThanOrEqual(LOOKS_MOST);
  }
});

test("a slow meter is waited for longer, and longer each time", () => {
  const slow = sweepOf({ ...setup, meter: { lag_s: 60 } });
  expect(firstLook_s(slow)).toBe(180);
  expect(firstLook_s(sweep)).toBe(75);
  const one = stay([[80, 40]]);
  const two = stay([
    [80, 40],
    [120, 60],
  ]);
  expect(nextLook_s(sweep, two)).toBeGreaterThan(nextLook_s(sweep, one));
});

test("a meter that was at its end before, and still is, proves nothing once less was seen", () => {
  const at = (pump_Hz: number, time_s: number, shown: Partial<SweepReading>) => ({
    pump_Hz,
    time_s,
    ...shown,
  });
  const still = { still: true };
  const up = [
    at(1.1, 100, { co_ppm: 40, ...still }),
    at(1.3, 200, { co_above_ppm: 2000, ...still }),
    at(1.2, 300, { co_above_ppm: 2000, ...still }),
  ];
  const stays = staysOf(sweep, up);
  expect(stays[1]?.level?.beyond).toBe("ceiling");
  expect(stays[2]?.level).toBeUndefined();
  // Where nothing less was seen yet it goes on, but what it shows brackets nothing.
  const off = [
    at(1.4, 50, { co_above_ppm: 2000, ...still }),
    ...[150, 250].map((s) => at(1.2, s, { co_above_ppm: 2000 })),
  ];
  expect(staysOf(sweep, off)[1]?.level).toMatchObject({ beyond: "ceiling", stuck: true });
});

test("CO that shoots up is seen at once: the meter can only show more", () => {
  const readings = [
    { pump_Hz: 1.1, time_s: 100, co_ppm: 20, still: true },
    { pump_Hz: 1.3, set_s: 100, time_s: 115, co_ppm: 420 },
  ];
  expect(staysOf(sweep, readings)[1]).toMatchObject({ spike: true, level: { ppm: 420 } });
  const [, calm] = staysOf(sweep, [
    readings[0] as SweepReading,
    { ...readings[1], co_ppm: 60 } as SweepReading,
  ]);
  expect(calm).toMatchObject({ spike: false });
  expect(calm?.level).toBeUndefined();
});
