import { array, assert, double, integer, property, record } from "fast-check";
import { expect, test } from "vitest";
import { storePlan } from "../../../model/trip/stores.ts";

test("by hand: a tank of 10 L, and where it has to be filled again", () => {
  expect(storePlan(10, [{ nights: 4, a_night: 2.5 }])).toEqual({
    ...{ lasts: [4], refills: [] },
    ...{ left: 0, tight: true },
  });
  // 2 · 2 L, then 2 · 2.5 L leave 1 L before the third night there; 10 L last four of them, and 5 L are left of the second.
  const stops = [
    { nights: 2, a_night: 2 },
    { nights: 8, a_night: 2.5 },
    { nights: 1, a_night: 6 },
  ];
  expect(storePlan(10, stops)).toEqual({
    lasts: [5, 4, 1],
    refills: [
      // Four nights at 2.5 L leave nothing before the next filling.
      { stop: 1, night: 3, every: 4, left: 0, tight: true },
      { stop: 2, night: 1, every: null, left: 5, tight: false },
    ],
    ...{ left: 4, tight: false },
  });
  expect(storePlan(10, [{ nights: 3, a_night: 10 }]).refills).toEqual([
    { stop: 0, night: 2, every: 1, left: 0, tight: true },
  ]);
});

test("a night that takes more than the tank holds is told, and no refill invented", () => {
  const stops = [
    { nights: 9, a_night: 2 },
    { nights: 1, a_night: 5 },
  ];
  expect(storePlan(4, stops)).toEqual({ lasts: [2, 0], refills: [], left: null, tight: false });
  expect(() => storePlan(0, stops)).toThrow(/holds/);
});

test("a tank that lasts with little to spare is tight, and says what is left", () => {
  const plan = (a_night: number) => storePlan(10, [{ nights: 4, a_night }]);
  // 2 % of the tank to spare; then a sixth; then at the limit, which is no longer tight, dust or not.
  expect(plan(2.45)).toMatchObject({ refills: [], left: 0.2, tight: true });
  expect(plan(2.09)).toMatchObject({ left: 1.64, tight: false });
  expect(plan(2.125)).toMatchObject({ left: 1.5, tight: false });
  expect(plan(2.125 + 1e-10)).toMatchObject({ left: 1.5, tight: false });
});

test("night by night the tank never runs dry, and is never filled while it would have lasted the night", () => {
  const stops = array(
    record({
      nights: integer({ min: 1, max: 30 }),
      a_night: double({ min: 0.3, max: 4, noNaN: true }),
    }),
    { minLength: 1, maxLength: 6 },
  );
  assert(
    property(double({ min: 4, max: 30, noNaN: true }), stops, (tank_L, all) => {
      const { refills, ...end } = storePlan(tank_L, all);
      const least = new Map<number, number>();
      let left = tank_L;
      for (const [stop, { nights, a_night }] of all.entries()) {
        const refill = refills.find((one) => one.stop === stop);
        for (let night = 1; night <= nights; night++) {
          const since = refill ? night - refill.night : -1;
          const filled =
            since === 0 || (since > 0 && !!refill?.every && since % refill.every === 0);
          expect(filled).toBe(left < a_night - 1e-6);
          if (filled) {
            least.set(stop, Math.min(left, least.get(stop) ?? tank_L));
            left = tank_L;
          }
          left -= a_night;
          expect(left).toBeGreaterThan(-1e-6);
        }
      }
      // What is left is what the nights, taken one by one, leave.
      expect(end.left).toBeCloseTo(left, 4);
      expect(refills.map(({ stop }) => stop)).toEqual([...least.keys()]);
      for (const { stop, left: said_L, tight } of refills) {
        expect(said_L).toBeCloseTo(least.get(stop) ?? -1, 4);
        expect(tight).toBe(said_L < 0.15 * tank_L);
      }
    }),
  );
});
