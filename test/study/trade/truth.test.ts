import { expect, test } from "vitest";
import { seeded } from "../../../seed-demo/random.ts";
import { tradeCrowd } from "./crowd.ts";
import { ENDS, lnRatio } from "./row.ts";

const AIRS = [-0.45, -0.25, 0, 0.08];
const n = 1000;

test("the average is the mean of new heaters' tunes, and its spread theirs", () => {
  const random = seeded(1);
  for (const seed of [1, 2]) {
    const { truth } = tradeCrowd(seed, { owners: 800 });
    for (const end of ENDS) {
      const spread = truth.spread(5, end);
      for (const x of AIRS) {
        const center = truth.mean(5, end, x);
        let sum = 0;
        let squares = 0;
        for (let i = 0; i < n; i++) {
          const off = truth.newHeater(random, 5, end, x).lnRatio - center;
          sum += off / n;
          squares += (off * off) / n;
        }
        // Four standard errors of the draws and 0.3 % for the curve itself.
        expect(Math.abs(sum), `${seed} ${end} ${x}`).toBeLessThan(
          (4 * spread) / Math.sqrt(n) + 0.003,
        );
        expect(Math.abs(Math.sqrt(squares) / spread - 1)).toBeLessThan(0.15);
      }
    }
  }
});

test("retuned for each air, the average pump rate follows density: slope near 1", () => {
  // At an equal burn it is 1 (fan laws); burners in thin air, cold fuel and raised fans bend it by a tenth at most.
  const slopes = Array.from({ length: 12 }, (_, seed) => {
    const { truth } = tradeCrowd(seed, { owners: 8 });
    return ENDS.map((end) => (truth.mean(5, end, 0) - truth.mean(5, end, -0.4)) / 0.4);
  }).flat();
  for (const slope of slopes) {
    expect(slope).toBeGreaterThan(0.85);
    expect(slope).toBeLessThan(1.15);
  }
  expect(slopes.reduce((a, b) => a + b) / slopes.length).toBeCloseTo(0.98, 1);
});

test("an honest crowd's rows average to the truth, in true air", () => {
  let total = 0;
  for (let seed = 0; seed < 4; seed++) {
    const { rows, truth } = tradeCrowd(100 + seed, { owners: 1500 });
    for (const row of rows) {
      const x = Math.log(row.true_density_kg_m3 / 1.225);
      total += (lnRatio(row) - truth.mean(5, row.end, x)) / rows.length / 4;
    }
  }
  // 6,000 heaters at 10 %, and a few of them with many rows.
  expect(Math.abs(total)).toBeLessThan(0.005);
});

test("who stops early reports richer: reported is above mean, and a crowd's rows average to it", () => {
  const { rows, truth } = tradeCrowd(20, { owners: 3000, stopEarly: 0.5 });
  for (const end of ENDS) {
    expect(truth.reported(5, end, -0.3)).toBeGreaterThan(truth.mean(5, end, -0.3) + 0.005);
    const off = rows
      .filter((r) => r.end === end)
      .map((r) => lnRatio(r) - truth.reported(5, end, Math.log(r.true_density_kg_m3 / 1.225)));
    expect(Math.abs(off.reduce((a, b) => a + b) / off.length)).toBeLessThan(0.01);
  }
  const careful = tradeCrowd(20).truth;
  expect(careful.reported(5, "low", -0.3)).toBe(careful.mean(5, "low", -0.3));
});

test("with a dose the average is of heaters with that pump; without, over all pumps sold", () => {
  const { rows, truth } = tradeCrowd(21, { owners: 3000, doses: "two sizes", doseStated: 1 });
  const doses = [...new Set(rows.map((r) => r.dose_uL ?? 0))];
  expect(doses.length).toBe(2);
  let all = 0;
  for (const dose of doses) {
    const of = rows.filter((r) => r.dose_uL === dose);
    const off = of.map((r) => {
      const x = Math.log(r.true_density_kg_m3 / 1.225);
      return lnRatio(r) - truth.mean(5, r.end, x, dose);
    });
    expect(Math.abs(off.reduce((a, b) => a + b) / off.length)).toBeLessThan(0.01);
    all += (of.length / rows.length) * truth.mean(5, "high", 0, dose);
  }
  expect(truth.mean(5, "high", 0)).toBeCloseTo(all, 1);
});

test("sizes and doses are known by name only where the run has them", () => {
  const { truth } = tradeCrowd(22);
  expect(() => truth.mean(8, "low", 0)).toThrow(RangeError);
});

test("one heater's next tunes scatter about its best setting, less than heaters do about the average", () => {
  const random = seeded(4);
  const { truth } = tradeCrowd(23);
  for (const end of ENDS) {
    let worst = 0;
    let squares = 0;
    let heaters = 0;
    for (let h = 0; h < 40; h++) {
      const own = truth.ownHeater(random, 5);
      for (const x of [-0.35, 0]) {
        let sum = 0;
        for (let i = 0; i < 200; i++) {
          const off = own.next(random, end, x + 0.1 * (random.uniform() - 0.5));
          sum += off / 200;
        }
        const off = sum - own.best(end, x);
        worst = Math.max(worst, Math.abs(off));
        squares += off * off;
        heaters += (own.best(end, x) - truth.mean(5, end, x)) ** 2;
      }
    }
    expect(Math.sqrt(squares / 80)).toBeLessThan(0.02);
    expect(Math.sqrt(heaters / 80)).toBeGreaterThan(0.05);
    expect(worst).toBeLessThan(0.06);
  }
});

test("a heater's own rows are as the atlas gets them; on request one of them is mistaken", () => {
  const random = seeded(5);
  const { truth } = tradeCrowd(24);
  const xs = [0, -0.2, -0.4];
  for (let i = 0; i < 60; i++) {
    const own = truth.ownHeater(random, 5);
    const right = own.rows(random, xs);
    expect(right.map((r) => r.end)).toEqual(xs.flatMap(() => ENDS));
    for (const [k, row] of right.entries()) {
      expect(Math.log(row.true_density_kg_m3 / 1.225)).toBeCloseTo(xs[k >> 1] ?? 0, 6);
      expect(row.mistake).toBeUndefined();
    }
    const wrong = own.rows(random, xs, { at: i % 3 });
    expect(wrong.length).toBe(6);
    for (const [k, row] of wrong.entries()) {
      expect(row.mistake !== undefined, `${i} ${k}`).toBe(k >> 1 === i % 3);
    }
  }
});
