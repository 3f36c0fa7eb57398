import { expect, test } from "vitest";
import { seeded } from "../../../seed-demo/random.ts";
import { tradeCrowd } from "./crowd.ts";
import type { Question } from "./options.ts";
import { ENDS, lnRatio, MISTAKES, type TradeRow } from "./row.ts";
import { TRADE_SCENARIOS } from "./scenarios.ts";

const keys = (rows: TradeRow[]) => new Set(rows.map((r) => r.contributor)).size;
const trueX = (row: TradeRow) => Math.log(row.true_density_kg_m3 / 1.225);
const mean = (values: number[]) => values.reduce((a, b) => a + b, 0) / values.length;

test("the same seed gives the same rows, whatever was asked of the truth; another seed gives others", () => {
  const one = tradeCrowd(4);
  one.truth.mean(5, "high", -0.2);
  const again = tradeCrowd(4);
  expect(again.rows).toEqual(one.rows);
  again.truth.mean(5, "low", 0);
  expect(again.truth.mean(5, "high", -0.2)).toBe(one.truth.mean(5, "high", -0.2));
  expect(tradeCrowd(5).rows).not.toEqual(one.rows);
  expect(tradeCrowd(seeded(9)).rows).toEqual(tradeCrowd(seeded(9)).rows);
});

test("a plain crowd: both ends in turn, plausible air, figures as controllers and meters show them", () => {
  const { rows } = tradeCrowd(6, { owners: 2000 });
  expect(keys(rows)).toBe(2000);
  expect(new Set(rows.map((r) => r.row)).size).toBe(rows.length);
  for (const [i, row] of rows.entries()) {
    expect(row.end).toBe(ENDS[i % 2]);
    expect(row.honest && row.mistake === undefined).toBe(true);
    expect(row.pump_Hz * 10).toBeCloseTo(Math.round(row.pump_Hz * 10), 9);
    expect(row.fan_rpm % 50).toBe(0);
    expect(row.co_ppm === undefined || row.co_below_ppm === undefined).toBe(true);
    expect(row.month).toMatch(/^20\d\d-(0[1-9]|1[0-2])$/);
    // What the atlas computes is off by what it says it may be off, and by the thermometer, which it trusts.
    const off = Math.log(row.density_kg_m3 / row.true_density_kg_m3);
    expect(Math.abs(off)).toBeLessThan(6 * Math.hypot(row.ln_density_sd, 0.006));
  }
  expect(mean(rows.map((r) => Number(r.temperature_given)))).toBeCloseTo(0.75, 1);
  expect(mean(rows.map((r) => Number(r.dose_uL !== undefined)))).toBeCloseTo(0.3, 1);
  const high = rows.filter((r) => trueX(r) < -0.25).length / rows.length;
  expect(high).toBeGreaterThan(0.03);
  expect(high).toBeLessThan(0.4);
});

test.each(MISTAKES)(
  "%s: the share comes out, and those who do not make it are untouched",
  (mistake) => {
    const { rows, caughtBefore } = tradeCrowd(7, { owners: 500, mistakes: { [mistake]: 0.2 } });
    const who = keys(rows.filter((r) => r.mistake === mistake));
    expect(who).toBeLessThanOrEqual(100);
    expect(who + caughtBefore).toBeGreaterThanOrEqual(100);
    expect(rows.every((r) => r.honest)).toBe(true);
  },
);

test("ends swapped: the low row holds what the high end was set to", () => {
  const { rows } = tradeCrowd(8, { mistakes: { "ends swapped": 0.4 } });
  const swapped = rows.filter((r) => r.mistake === "ends swapped");
  expect(swapped.length).toBe(2 * 80);
  for (const [i, low] of swapped.entries()) {
    const high = swapped[i + 1];
    if (low.end === "high" || !high) continue;
    // As left, low fans end below 3,000 rpm and high ones begin above.
    expect(low.fan_rpm).toBeGreaterThan(3000);
    expect(high.fan_rpm).toBeLessThan(3000);
    expect(low.pump_Hz).toBeGreaterThan(high.pump_Hz);
    expect(high.contributor).toBe(low.contributor);
  }
});

test("fan doubled or halved: by exactly 2, within what a door lets through", () => {
  const { rows, truth } = tradeCrowd(9, {
    owners: 400,
    mistakes: { "fan doubled or halved": 0.4 },
  });
  const off = rows.filter((r) => r.mistake).map((r) => lnRatio(r) - truth.mean(5, r.end, trueX(r)));
  for (const o of off) expect(Math.abs(Math.abs(o) - Math.LN2)).toBeLessThan(0.6);
  expect(mean(off.map(Math.abs))).toBeCloseTo(Math.LN2, 1);
});

test("never retuned: the first tune's pump and fan everywhere", () => {
  const { rows } = tradeCrowd(10, { mistakes: { "never retuned": 0.3 } });
  const carried = rows.filter((r) => r.mistake === "never retuned");
  expect(carried.length).toBeGreaterThan(100);
  for (const row of carried) {
    const first = rows.find((r) => r.contributor === row.contributor && r.end === row.end);
    expect([row.pump_Hz, row.fan_rpm]).toEqual([first?.pump_Hz, first?.fan_rpm]);
    expect(first?.mistake).toBeUndefined();
  }
});

test("careless owners scatter about their heaters two to three times as much as others", () => {
  const { rows, truth } = tradeCrowd(11, { owners: 1500, mistakes: { careless: 0.5 } });
  const within = (careless: boolean) => {
    const steps: number[] = [];
    for (let i = 2; i < rows.length; i++) {
      const [a, b] = [rows[i - 2], rows[i]];
      if (!a || !b || a.contributor !== b.contributor || b.end === "low") continue;
      if ((b.mistake === "careless") !== careless) continue;
      const expected = truth.mean(5, "high", trueX(b)) - truth.mean(5, "high", trueX(a));
      steps.push((lnRatio(b) - lnRatio(a) - expected) ** 2 / 2);
    }
    return Math.sqrt(mean(steps));
  };
  const ratio = within(true) / within(false);
  expect(ratio).toBeGreaterThan(2);
  expect(ratio).toBeLessThan(4);
});

test.each([
  ["everywhere", -1, 2],
  ["sea", -0.1, 2],
  ["high", -1, -0.03],
  ["sea true, high false", -1, -0.03],
  ["one place", -1, -0.03],
] as const)("lies %s: as many, where and by as much as asked", (where, from, to) => {
  const { rows, truth } = tradeCrowd(12, {
    owners: 1000,
    lies: { share: 0.2, factor: 1.4, where },
  });
  const off = (r: TradeRow) => lnRatio(r) - truth.mean(5, r.end, trueX(r));
  const lies = rows.filter((r) => !r.honest);
  expect(keys(lies)).toBe(200);
  expect(mean(lies.map(off))).toBeCloseTo(Math.log(1.4), 1);
  expect(Math.abs(mean(rows.filter((r) => r.honest).map(off)))).toBeLessThan(0.015);
  for (const lie of lies) {
    expect(trueX(lie)).toBeGreaterThan(from);
    expect(trueX(lie)).toBeLessThan(to);
  }
  if (where === "one place") expect(new Set(lies.map((r) => r.cell)).size).toBe(1);
  if (where === "sea true, high false") {
    const liars = new Set(lies.map((r) => r.contributor));
    const told = rows.filter((r) => liars.has(r.contributor) && r.honest);
    expect(told.length).toBe(400);
    for (const row of told) expect(trueX(row)).toBeGreaterThan(-0.1);
  }
});

test("clubs meet at one place in one month and share a habit", () => {
  const { rows, truth } = tradeCrowd(13, {
    owners: 300,
    clubs: { number: 10, members: 20, habit_sd: 0.2 },
  });
  const clubs = Map.groupBy(
    rows.filter((r) => r.cell?.startsWith("club-")),
    (r) => r.cell ?? "",
  );
  expect(clubs.size).toBe(10);
  const offs: number[] = [];
  for (const members of clubs.values()) {
    expect(keys(members)).toBe(20);
    expect(new Set(members.map((r) => r.month)).size).toBe(1);
    expect(new Set(members.map((r) => r.true_density_kg_m3)).size).toBe(1);
    offs.push(mean(members.map((r) => lnRatio(r) - truth.mean(5, r.end, trueX(r)))));
  }
  const between = Math.sqrt(mean(offs.map((o) => o * o)));
  expect(between).toBeGreaterThan(0.1);
  expect(between).toBeLessThan(0.35);
});

test("one key sends the share of the rows that was asked for, from one heater size", () => {
  const { rows } = tradeCrowd(14, { owners: 60, oneKey: 0.7 });
  const counts = [...Map.groupBy(rows, (r) => r.contributor).values()].map((r) => r.length);
  expect(Math.max(...counts) / rows.length).toBeCloseTo(0.7, 2);
});

test("copies come in versions: what was suggested is set, gone half-way to, or only started from", () => {
  const versions: number[] = [];
  const asked: Question[] = [];
  const { rows } = tradeCrowd(15, {
    owners: 330,
    copies: {
      honestFirst: 30,
      outright: 0.5,
      halfWay: 0.2,
      batch: 50,
      publish: (sofar) => versions.push(sofar.length),
      suggest: (question) => {
        asked.push(question);
        const { fan_rpm, density_kg_m3, end } = question;
        return ((fan_rpm / 1000) * density_kg_m3 * (end === "low" ? 0.6 : 0.9)) / 1.225;
      },
    },
  });
  expect(versions.length).toBe(6);
  expect(versions).toEqual([...versions].sort((a, b) => a - b));
  expect(versions[0]).toBe(rows.findIndex((r) => r.contributor === "o30"));
  for (const row of rows.slice(0, versions[0])) {
    expect(row.suggested_Hz_per_krpm ?? row.mistake).toBeUndefined();
  }
  const copied = rows.filter((r) => r.mistake === "copied");
  expect(keys(copied)).toBeLessThanOrEqual(150);
  expect(keys(copied)).toBeGreaterThan(60);
  for (const { pump_Hz, fan_rpm, suggested_Hz_per_krpm = 0, found } of copied) {
    expect(Math.abs((suggested_Hz_per_krpm * fan_rpm) / 1000 - pump_Hz)).toBeLessThanOrEqual(
      0.0501,
    );
    expect([undefined, "as suggested"]).toContain(found);
  }
  expect(keys(rows.filter((r) => r.mistake === "half-way"))).toBe(60);
  expect(rows.some((r) => r.suggested_Hz_per_krpm && r.found === "bracketed")).toBe(true);
  expect(asked.length).toBe(rows.filter((r) => r.suggested_Hz_per_krpm !== undefined).length);
});

test("scenarios have names of their own, and each makes a crowd", () => {
  expect(TRADE_SCENARIOS.length).toBeGreaterThanOrEqual(30);
  expect(new Set(TRADE_SCENARIOS.map((s) => s.id)).size).toBe(TRADE_SCENARIOS.length);
  for (const { id, options } of TRADE_SCENARIOS) {
    const { rows } = tradeCrowd(16, { ...options, owners: Math.min(options.owners ?? 200, 300) });
    expect(keys(rows), id).toBeGreaterThan(0.6 * Math.min(options.owners ?? 200, 300));
    for (const r of rows) expect(r.pump_Hz > 0 && r.density_kg_m3 > 0.5, id).toBe(true);
  }
});
