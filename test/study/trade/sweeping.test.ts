import { expect, test } from "vitest";
import { seeded } from "../../../seed-demo/random.ts";
import { drawBowl, drawMeter, exhaustCO, ROOM_ALARM_FLOOR_ppm, reading } from "./meter.ts";
import { ENDS } from "./row.ts";
import { stopEarly, sweepProperly } from "./sweeping.ts";

test("CO is least at the best pump rate, and climbs faster on the lean side", () => {
  const random = seeded(1);
  for (let i = 0; i < 200; i++) {
    const bowl = drawBowl(random);
    for (const off of [0.05, 0.1, 0.2]) {
      expect(exhaustCO(bowl, off)).toBeGreaterThan(bowl.least_ppm);
      expect(exhaustCO(bowl, -off)).toBeGreaterThan(exhaustCO(bowl, off));
    }
  }
});

test("a room alarm shows nothing below its floor; other meters show a good final CO of some ppm", () => {
  const random = seeded(2);
  const shown: number[] = [];
  for (let i = 0; i < 500; i++) {
    const least = exhaustCO(drawBowl(random), 0);
    expect(reading(random, drawMeter(random, true), least)).toBeGreaterThanOrEqual(
      ROOM_ALARM_FLOOR_ppm,
    );
    shown.push(reading(random, drawMeter(random, false), least));
  }
  // Common practice, no source: below 30 ppm is usual, 7–15 good.
  shown.sort((a, b) => a - b);
  expect(shown[250]).toBeGreaterThanOrEqual(7);
  expect(shown[250]).toBeLessThanOrEqual(15);
  expect(shown[450]).toBeLessThan(30);
});

/** Mean and spread of ln(set ÷ best) over many heaters, started rich or lean of the best. */
function outcomes(
  sweep: (at: Parameters<typeof sweepProperly>[0], start_Hz: number) => number,
  start: number,
  isRoomAlarm: boolean,
) {
  const random = seeded(3);
  return ENDS.map((end) => {
    const offs = Array.from({ length: 4000 }, () => {
      const best_Hz = end === "low" ? 0.8 + random.uniform() : 3 + 3 * random.uniform();
      const meter = drawMeter(random, isRoomAlarm);
      const at = { random, meter, bowl: drawBowl(random), end, best_Hz };
      return Math.log(sweep(at, best_Hz * start) / best_Hz);
    });
    const mean = offs.reduce((a, b) => a + b) / offs.length;
    const variance = offs.reduce((a, b) => a + (b - mean) ** 2, 0) / offs.length;
    return { mean, sd: Math.sqrt(variance) };
  });
}

test("a proper sweep finds the good range from either side; its middle is a little rich, as the bowl is skewed", () => {
  const middle: Parameters<typeof outcomes>[0] = (at, start) => sweepProperly(at, start, 0);
  for (const isRoomAlarm of [false, true]) {
    const fromRich = outcomes(middle, 1.3, isRoomAlarm);
    const fromLean = outcomes(middle, 0.85, isRoomAlarm);
    for (const e of [0, 1]) {
      const [rich, lean] = [fromRich[e], fromLean[e]];
      if (!rich || !lean) throw new Error("no end");
      expect(rich.mean).toBeGreaterThan(-0.01);
      expect(rich.mean).toBeLessThan(0.06);
      expect(rich.sd).toBeLessThan(0.05);
      expect(Math.abs(rich.mean - lean.mean)).toBeLessThan(0.01);
    }
  }
});

test("the habit moves the setting to the rich or the lean edge of the good range", () => {
  const [, lean] = outcomes((at, start) => sweepProperly(at, start, -0.8), 1.2, false);
  const [, rich] = outcomes((at, start) => sweepProperly(at, start, 0.8), 1.2, false);
  expect((rich?.mean ?? 0) - (lean?.mean ?? 0)).toBeGreaterThan(0.02);
});

test("who stops when it is good enough, coming from the rich side, stays rich", () => {
  const early: Parameters<typeof outcomes>[0] = (at, start) => stopEarly(at, start, 30);
  for (const { mean } of outcomes(early, 1.3, false)) expect(mean).toBeGreaterThan(0.05);
});
