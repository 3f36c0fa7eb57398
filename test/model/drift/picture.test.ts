import { assert, integer, property, record, shuffledSubarray } from "fast-check";
import { expect, test } from "vitest";
import { airAt } from "../../../model/air.ts";
import { driftOf } from "../../../model/drift/drift.ts";
import type { Logged, LoggedTune } from "../../../model/drift/logged.ts";
import { driftPictureOf } from "../../../model/drift/picture.ts";
import { seeded } from "../../../seed-demo/random.ts";
import { QUIET, seasonOf } from "../../study/drift/season.ts";

const tune = (id: string, change: Partial<LoggedTune> = {}): LoggedTune => ({
  kind: "tune",
  id,
  at: `2026-10-${id}T20:00:00.000Z`,
  density_kg_m3: 1.2,
  low: { pump_Hz: 1, fan_rpm: 1650, co_ppm: 14 },
  meter: "mine",
  hours: Number(id) * 10,
  ...change,
});

test("the same heater in thinner air, set leaner as the air asks, stands on one line; a richer setting stands above it by as much", () => {
  // The air's own ratio from the standard atmosphere (ISO 2533), 2,500 m against sea level.
  const ratio = airAt(2500, {}).density_kg_m3 / airAt(0, {}).density_kg_m3;
  expect(ratio).toBeCloseTo(0.7811, 3);
  const at = (id: string, density: number, times: number) =>
    tune(id, {
      density_kg_m3: density,
      low: { pump_Hz: 1.1 * (density / 1.225) * times, fan_rpm: 1650, co_ppm: 12 },
    });
  const picture = driftPictureOf(
    [at("01", 1.225, 1), at("02", 1.225 * ratio, 1), at("03", 1.225 * ratio, 1.1)],
    "low",
  );
  expect(picture?.axis).toBe("hours");
  const [first, thin, richer] = picture?.points ?? [];
  expect(first?.mixture_pct).toBe(0);
  expect(thin?.mixture_pct).toBeCloseTo(0, 9);
  expect(richer?.mixture_pct).toBeCloseTo(10, 9);
  expect(picture?.points.map(({ x }) => x)).toEqual([10, 20, 30]);
});

test("the line through CO is the one that is spoken of; what does not compare is drawn and told apart; cleanings stand where they were", () => {
  const logged = seasonOf({ ...QUIET, entries: 20, cleanings: 1, co_rise: 0.7 }, seeded(3));
  const last = logged.at(-1) as LoggedTune;
  // Read with another meter an hour before.
  const other = { ...last, id: "zz", meter: "another", at: last.at.replace("T20", "T19") };
  const all = [...logged, other];
  const { co } = driftOf(all).low;
  const picture = driftPictureOf(all, "low");
  if (!co || !picture?.co_line) throw new Error("There is no line.");
  expect([picture.co_line.from.ppm, picture.co_line.to.ppm]).toEqual([co.from_ppm, co.to_ppm]);
  expect(picture.co_line.to.x - picture.co_line.from.x).toBeCloseTo(co.over.amount, 9);
  expect(picture.points.filter(({ compares }) => compares)).toHaveLength(co.points);
  expect(picture.points.find(({ id }) => id === "zz")?.compares).toBe(false);
  expect(picture.points).toHaveLength(all.filter(({ kind }) => kind === "tune").length);
  const cleaning = all.find(({ kind }) => kind === "cleaning");
  expect(picture.cleanings).toEqual([cleaning?.hours]);
});

test("without hours it is drawn over the fuel since the last cleaning; with neither there is none; what says neither is counted", () => {
  const fuel = ["01", "02", "03"].map((id) => tune(id, { hours: undefined, fuel_L: 2 }));
  expect(driftPictureOf(fuel, "low")).toMatchObject({ axis: "fuel_L", left_out: 0 });
  expect(driftPictureOf(fuel, "low")?.points.map(({ x }) => x)).toEqual([0, 2, 4]);
  const cleaned: Logged[] = [
    ...fuel,
    { kind: "cleaning", id: "04", at: "2026-10-04T20:00:00.000Z", fuel_L: 0 },
    tune("05", { hours: undefined, fuel_L: 1 }),
    tune("06", { hours: undefined, fuel_L: 3 }),
  ];
  expect(driftPictureOf(cleaned, "low")?.points.map(({ x }) => x)).toEqual([1, 4]);
  const neither = fuel.map((one) => ({ ...one, fuel_L: undefined }));
  expect(driftPictureOf(neither, "low")).toBe(null);
  expect(driftPictureOf([tune("01")], "low")).toBe(null);
  expect(
    driftPictureOf([tune("01"), tune("02"), tune("03", { hours: undefined })], "low"),
  ).toMatchObject({
    axis: "hours",
    left_out: 1,
  });
  expect(driftPictureOf([tune("01"), tune("02")], "high")).toBe(null);
});

test("the order in which entries are given does not matter", () => {
  const season = record({
    seed: integer({ min: 1, max: 1e6 }),
    entries: integer({ min: 2, max: 10 }),
  }).map(({ seed, entries }) => seasonOf({ ...QUIET, entries, cleanings: 1 }, seeded(seed)));
  assert(
    property(
      season.chain((logged) =>
        shuffledSubarray(logged, { minLength: logged.length }).map((shuffled) => ({
          logged,
          shuffled,
        })),
      ),
      ({ logged, shuffled }) => {
        const sorted = (picture: ReturnType<typeof driftPictureOf>) =>
          picture && { ...picture, cleanings: [...picture.cleanings].sort() };
        expect(sorted(driftPictureOf(shuffled, "high"))).toEqual(
          sorted(driftPictureOf(logged, "high")),
        );
      },
    ),
  );
});
