import { expect, test } from "vitest";
import { confirmedStep } from "../../../model/sweep/confirming.ts";
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
const settled = (list: readonly (readonly [number, number])[]): SweepReading[] =>
  list.map(([pump_Hz, co_ppm], i) => ({ pump_Hz, co_ppm, time_s: 180 * (i + 1) }));
const swept = settled([
  [4.2, 15],
  [4.6, 60],
  [4.1, 14],
  [4, 16],
  [3.9, 24],
  [3.8, 36],
]);
const last = { time_s: 180 * 7 };

function seat(): number {
  const { answer } = confirmedStep(setup, swept);
  if (answer.kind !== "set") throw new Error(answer.kind);
  return answer.pump_Hz;
}

test("a minimum found elsewhere is read once more where the pump is to stay", () => {
  const { answer } = confirmedStep(setup, swept);
  const found = nextStep(setup, swept);
  expect(found.kind).toBe("minimum");
  expect(answer).toMatchObject({
    kind: "set",
    why: "confirm",
    pump_Hz: "sit_Hz" in found ? found.sit_Hz : 0,
  });
});

test("what was expected there ends it, with what the meter showed", () => {
  const pump_Hz = seat();
  const { answer } = confirmedStep(setup, [
    ...swept,
    { pump_Hz, co_ppm: 14, confirming: true, ...last },
  ]);
  expect(answer).toMatchObject({
    kind: "minimum",
    sit_Hz: pump_Hz,
    confirmed: { co_ppm: 14, agrees: true },
  });
});

test("a confirming reading that is not yet settled is waited for", () => {
  const pump_Hz = seat();
  const set_s = 180 * 6 + 20;
  const early = { pump_Hz, co_ppm: 30, confirming: true, set_s, time_s: set_s + 8 };
  expect(confirmedStep(setup, [...swept, early]).answer.kind).toBe("wait");
});

test("far more than expected there is looked at again, and then says that something has changed", () => {
  const pump_Hz = seat();
  const look = (k: number) => ({
    pump_Hz,
    co_ppm: 70,
    confirming: true,
    set_s: 180 * 6,
    time_s: 180 * 7 + 30 * k,
  });
  const kinds = [1, 2].map((n) => {
    const looks = Array.from({ length: n }, (_, k) => look(k));
    return confirmedStep(setup, [...swept, ...looks]).answer.kind;
  });
  expect(kinds).toEqual(["wait", "wait"]);
  const { answer } = confirmedStep(setup, [...swept, look(0), look(1), look(2)]);
  const confirmed = answer.kind === "minimum" ? answer.confirmed?.agrees : undefined;
  // Either the search is open again, or the doubt is said.
  expect(answer.kind === "set" || confirmed === false).toBe(true);
});

test("the picture: the curve is lowest near the estimate, inside its own band, and holds every level", () => {
  const { answer, picture } = confirmedStep(setup, swept);
  const lowest = picture.curve.reduce((a, b) => (b.co_ppm < a.co_ppm ? b : a));
  expect(Math.abs(lowest.pump_Hz - answer.minimum_Hz)).toBeLessThan(0.15);
  for (const { co_ppm, lower_ppm, upper_ppm } of picture.curve) {
    expect(lower_ppm).toBeLessThanOrEqual(co_ppm);
    expect(upper_ppm).toBeGreaterThanOrEqual(co_ppm);
  }
  expect(picture.levels.map(({ pump_Hz }) => pump_Hz)).toEqual(swept.map(({ pump_Hz }) => pump_Hz));
});

test("a figure seen to stand still is taken as settled, but not sooner than a flame burns steadily", () => {
  const still = (time_s: number) =>
    confirmedStep(setup, [{ pump_Hz: 4.2, co_ppm: 30, time_s, still: true }]).answer.kind;
  expect(still(12)).toBe("wait");
  expect(still(40)).toBe("set");
});
