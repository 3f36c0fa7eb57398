import { expect, test } from "vitest";
import { atElevation, atPlace, atPoint, FIRST_QUESTION } from "../../client/base/question.ts";
import { entryOf } from "../../client/on-site/logged.ts";
import { faultsOf, firstPreparation, planOf, usualMeter } from "../../client/on-site/plan.ts";
import { runOf } from "../../client/on-site/run.ts";
import {
  newSession,
  type Press,
  pressed,
  type Session,
  undone,
} from "../../client/on-site/session.ts";
import { stageOf } from "../../client/on-site/stage.ts";
import { tuneOfSweep } from "../../client/on-site/tune.ts";
import { usualFans } from "../../model/heater.ts";
import { startTune } from "../../model/start.ts";
import { inventedFit } from "../model/invented-fit.ts";

const ready = { ...firstPreparation(), low_before_Hz: 1.4, high_before_Hz: 4.8 };
const question = { ...FIRST_QUESTION, air: { temperature_C: -5 } };
const plan = planOf(question, startTune(inventedFit(), question), ready);
const BEGUN = Date.UTC(2026, 10, 26, 12);
const KEY = "invented-session-key";

/** Presses with the seconds since the one before. */
function after(list: readonly [number, object][], from = newSession(plan, KEY, BEGUN)): Session {
  return list.reduce((session, [s, one]) => {
    const last = session.presses.at(-1)?.at ?? session.begun_at;
    return pressed(session, { at: last + s * 1000, ...one } as Press);
  }, from);
}
const WARM: [number, object][] = [
  [5, { is: "lit" }],
  [600, { is: "warm" }],
];
const result = (pump_Hz: number, co_ppm: number) => ({ pump_Hz, co_ppm, settled: 4 });
const BOTH: [number, object][] = [
  ...WARM,
  [900, { is: "accept", end: "low", result: result(1.2, 15) }],
  [900, { is: "accept", end: "high", result: result(4.1, 10) }],
];

test("what is missing, out of range or upside down keeps a sweep from beginning, by field", () => {
  expect(faultsOf(firstPreparation())).toMatchObject({ low_before_Hz: "missing" });
  expect(faultsOf({ ...ready, high_before_Hz: 1.2 })).toEqual({ high_before_Hz: "ends" });
  expect(faultsOf({ ...ready, step_Hz: 3 })).toEqual({ step_Hz: "range" });
  expect(faultsOf({ ...ready, meter: { ...usualMeter("other"), lag_s: undefined } })).toEqual({
    "meter.lag_s": "missing",
  });
  expect(faultsOf(ready)).toEqual({});
});

test("from the checklist over the warm-up to the first setting, timed by the clock alone", () => {
  expect(stageOf(after([]))).toEqual({ is: "checklist" });
  const lit = after(WARM.slice(0, 1));
  expect(stageOf(lit)).toEqual({ is: "warm-up", due_at: BEGUN + 5000 + 600_000 });
  const first = stageOf(after(WARM));
  expect(first).toMatchObject({ is: "sweep", end: "low", toSet: true });
  if (first.is !== "sweep") return;
  const set = after([...WARM, [10, { is: "set", pump_Hz: first.pump_Hz }]]);
  expect(stageOf(set)).toMatchObject({
    toSet: false,
    due_at: BEGUN + 615_000 + first.wait_s * 1000,
  });
});

test("a session is the same after it went through storage, and undo takes back exactly one press", () => {
  const one = after([...WARM, [10, { is: "set", pump_Hz: 1.2 }]]);
  const two = after([[90, { is: "read", reading: { co_ppm: 40 }, still: true }]], one);
  expect(stageOf(JSON.parse(JSON.stringify(two)))).toEqual(stageOf(two));
  expect(undone(two)).toEqual(one);
  expect(runOf(two).readings.low).toMatchObject([
    { pump_Hz: 1.2, set_s: 615, time_s: 705, co_ppm: 40, still: true },
  ]);
});

test("a clock set back does not turn time round", () => {
  const session = after([...WARM, [10, { is: "set", pump_Hz: 1.2 }], [-4000, { is: "out" }]]);
  const ats = session.presses.map(({ at }) => at);
  expect(ats).toEqual([...ats].sort((a, b) => a - b));
  expect(stageOf(session).is).toBe("relight");
});

test("after a flame-out: back to where it burned, with a long wait; after two attempts no third one, at either end", () => {
  const burned: [number, object][] = [
    ...WARM,
    [10, { is: "set", pump_Hz: 1.4 }],
    [90, { is: "read", reading: { co_ppm: 60 }, still: true }],
  ];
  const out = after([...burned, [10, { is: "set", pump_Hz: 1.3 }], [20, { is: "out" }]]);
  const stage = stageOf(out);
  expect(stage).toMatchObject({ is: "relight", attempts: 0, lighting: false, richer_Hz: 1.4 });
  const burning = after(
    [
      [300, { is: "relight" }],
      [60, { is: "burns", pump_Hz: 1.4 }],
    ],
    out,
  );
  expect(stageOf(burning)).toMatchObject({
    is: "sweep",
    toSet: false,
    pump_Hz: 1.4,
    wait_s: 180,
  });
  const high = after([[900, { is: "accept", end: "low", result: result(1.3, 15) }]], burning);
  const again = after(
    [
      [60, { is: "set", pump_Hz: 4 }],
      [20, { is: "out" }],
      [300, { is: "relight" }],
    ],
    high,
  );
  expect(stageOf(again)).toMatchObject({ is: "relight", attempts: 2, lighting: true });
  expect(stageOf(after([[30, { is: "no light" }]], again))).toEqual({
    is: "stopped",
    why: "flame",
  });
  const third = after(
    [
      [30, { is: "burns", pump_Hz: 4.3 }],
      [60, { is: "out" }],
    ],
    again,
  );
  expect(stageOf(third)).toEqual({ is: "stopped", why: "flame" });
});

test("the sweep of an end begins at what was typed as set now, and the other end knows of used attempts", () => {
  const first = stageOf(after(WARM));
  expect(first).toMatchObject({ is: "sweep", end: "low", pump_Hz: 1.4, answer: { why: "start" } });
  const high = stageOf(
    after([...WARM, [900, { is: "accept", end: "low", result: result(1.2, 15) }]]),
  );
  expect(high).toMatchObject({ is: "sweep", end: "high", pump_Hz: 4.8, answer: { why: "start" } });
});

/** Set and watched at each rate in turn. */
const readAt = (list: readonly (readonly [number, number])[]): [number, object][] =>
  list.flatMap(([pump_Hz, co_ppm]): [number, object][] => [
    [10, { is: "set", pump_Hz, confirming: true }],
    [120, { is: "read", reading: { co_ppm }, still: true }],
  ]);

test("an end that was bracketed says so, with where; one that was not says that, and has no minimum", () => {
  const valley = [
    [1.4, 140],
    [1.3, 60],
    [1.2, 24],
    [1.1, 14],
    [1, 30],
    [1.1, 14],
  ] as const;
  const found = stageOf(after([...WARM, ...readAt(valley)]));
  expect(found).toMatchObject({
    is: "ended",
    answer: { kind: "found" },
    result: {
      pump_Hz: 1.1,
      co_ppm: 14,
      found: "bracketed",
      sweep: { lower_Hz: 1, upper_Hz: 1.2 },
    },
  });
  const beside = after([
    ...WARM,
    ...readAt([
      [1.4, 120],
      [1.3, 70],
      [1.2, 40],
    ]),
    [10, { is: "set", pump_Hz: 1.1 }],
    [20, { is: "out" }],
    [300, { is: "relight" }],
    [30, { is: "burns", pump_Hz: 1.2 }],
    [190, { is: "read", reading: { co_ppm: 40 }, still: true }],
  ]);
  expect(stageOf(beside)).toMatchObject({
    is: "ended",
    result: { pump_Hz: 1.2, flame_out_Hz: 1.1, found: "stopped early" },
  });
  const flat = [
    1.4, 1.3, 1.2, 1.1, 1, 0.9, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.5, 1.6, 1.7, 1.5, 1.3, 1.2,
  ];
  const open = stageOf(after([...WARM, ...readAt(flat.map((rate) => [rate, 20] as const))]));
  expect(open).toMatchObject({
    is: "ended",
    answer: { kind: "not bracketed" },
    result: { co_ppm: 20, found: "stopped early" },
  });
  expect(open.is === "ended" && open.result?.sweep).toBeUndefined();
});

test("alarm and leaving stop from anywhere", () => {
  for (const list of [[], WARM, BOTH]) {
    expect(stageOf(after([...list, [1, { is: "alarm" }]]))).toEqual({
      is: "stopped",
      why: "alarm",
    });
    expect(stageOf(after([...list, [1, { is: "abort" }]]))).toEqual({
      is: "stopped",
      why: "abort",
    });
  }
});

test("an end begun again forgets what was read, keeps where the flame went out, and begins where the pump stands", () => {
  const session = after([
    ...WARM,
    [10, { is: "set", pump_Hz: 1.4 }],
    [90, { is: "read", reading: { co_ppm: 40 }, still: true }],
    [10, { is: "set", pump_Hz: 1.2 }],
    [20, { is: "out" }],
    [300, { is: "relight" }],
    [30, { is: "burns", pump_Hz: 1.3 }],
    [190, { is: "read", reading: { co_ppm: 30 }, still: true }],
    [10, { is: "again" }],
  ]);
  const run = runOf(session);
  expect(run.readings.low).toEqual([]);
  expect(run.flame_outs_Hz.low).toEqual([1.2]);
  expect(stageOf(session)).toMatchObject({
    is: "sweep",
    pump_Hz: 1.3,
    answer: { why: "start", limits_Hz: { lean: 1.3 } },
  });
});

test("the middle and full power are checked against what the ends were left at", () => {
  const middle = stageOf(after(BOTH));
  expect(middle).toMatchObject({ is: "check", which: "middle", toSet: true });
  const { low_fan_rpm, high_fan_rpm } = usualFans(question.heat_kW);
  if (middle.is === "check") {
    expect(middle.expected.pump_Hz).toBeCloseTo(2.65, 9);
    expect(middle.expected.fan_rpm).toBe((low_fan_rpm + high_fan_rpm) / 2);
  }
  const poor = after([...BOTH, [5, { is: "set", pump_Hz: 2.65 }]]);
  const read = after([[150, { is: "read", reading: { co_ppm: 80 }, still: false }]], poor);
  expect(stageOf(read)).toMatchObject({ is: "check", verdict: "poor" });
  const full = after([[5, { is: "finish" }]], read);
  expect(stageOf(full)).toMatchObject({ is: "check", which: "full", expected: { co_ppm: 10 } });
  expect(stageOf(after([[5, { is: "skip" }]], full))).toEqual({ is: "done" });
});

test("the tune and the logbook's entry say what was found, with nothing typed again", () => {
  const done = after([...BOTH, [5, { is: "skip" }], [5, { is: "skip" }]]);
  const tune = tuneOfSweep(done, "invented-contributor");
  expect(tune).toMatchObject({
    heater: { heat_kW: 5 },
    site: { elevation_m: 1000 },
    air: { temperature_C: -5 },
    low: { pump_Hz: 1.2, co_ppm: 15 },
    high: { pump_Hz: 4.1, co_ppm: 10 },
    meter: { kind: "portable meter", distance_m: 0.3 },
    tuned_on: "2026-11",
  });
  const entry = entryOf({ ...done, shared: "waits" }, "heater-1", new Date(BEGUN));
  expect(entry).toMatchObject({
    id: KEY,
    kind: "tune",
    low: { pump_Hz: 1.2, co_ppm: 15 },
    high: { pump_Hz: 4.1, co_ppm: 10 },
    shared: { key: KEY },
  });
});

test("tune and entry say how they were found: no better than the worse end, and nothing where an end does not say", () => {
  const left = (low: string | undefined, high: string | undefined) =>
    after([
      ...WARM,
      [900, { is: "accept", end: "low", result: { ...result(1.2, 15), found: low } }],
      [900, { is: "accept", end: "high", result: { ...result(4.1, 10), found: high } }],
    ]);
  const cases = [
    ["bracketed", "bracketed", "bracketed"],
    ["bracketed", "stopped early", "stopped early"],
    ["as suggested", "bracketed", "as suggested"],
    ["bracketed", undefined, undefined],
    [undefined, undefined, undefined],
  ] as const;
  for (const [low, high, found] of cases) {
    const session = left(low, high);
    expect(tuneOfSweep(session, "invented-contributor").found).toBe(found);
    expect(entryOf(session, "heater-1", new Date(BEGUN)).found).toBe(found);
  }
  // One end is still being swept.
  expect(entryOf(after(BOTH.slice(0, 3)), "heater-1", new Date(BEGUN)).found).toBeUndefined();
});

test("a place found on the map or by name: tune and entry keep how good its elevation is", () => {
  const at = { lat: 46.9, lon: 9.7, elevation_m: 1873, sd_m: 64, source: "interpolated" };
  const place = {
    name: "Pass",
    region: null,
    country: null,
    country_code: null,
    population: 0,
    kind: "pass" as const,
  };
  const asked = [
    atPoint(question, at),
    atPlace(question, { ...place, ...at, elevation_sd_m: at.sd_m }, "Pass"),
  ];
  for (const where of asked) {
    const session = newSession(planOf(where, startTune(inventedFit(), where), ready), KEY, BEGUN);
    const done = after(BOTH, session);
    expect(tuneOfSweep(done, "invented-contributor").site).toEqual({
      elevation_m: 1870,
      elevation_sd_m: 70,
    });
    const { site } = entryOf(done, "heater-1", new Date(BEGUN));
    expect(site).toMatchObject({ elevation_m: 1873, elevation_sd_m: 64 });
    // A better one typed at the same place is no estimate any more.
    const typed = atElevation(where, 1880);
    const known = planOf(typed, startTune(inventedFit(), typed), ready);
    expect(
      tuneOfSweep(after(BOTH, newSession(known, KEY, BEGUN)), "invented-contributor").site,
    ).toEqual({ elevation_m: 1880 });
  }
});

test("below the meter's floor goes into the tune as that, never as 0", () => {
  const below = { pump_Hz: 1.2, co_below_ppm: 30, settled: 3 };
  const done = after([
    ...WARM,
    [900, { is: "accept", end: "low", result: below }],
    [900, { is: "accept", end: "high", result: result(4.1, 31) }],
  ]);
  const { low } = tuneOfSweep(done, "invented-contributor");
  expect(low.co_below_ppm).toBe(30);
  expect(low.co_ppm).toBeUndefined();
});
