import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { ENDS } from "../../model/end.ts";
import { type NightQuestion, tuneAtNight } from "../../model/night-air.ts";
import { groupOf } from "../../model/start.ts";
import { EMPTY_ATLAS, inventedFit } from "./invented-fit.ts";

const fit = inventedFit();
const question: NightQuestion = {
  heat_kW: 5,
  site: { elevation_m: 2240, elevation_sd_m: 0, elevation_source: "given" },
  air: { temperature_C: 12 },
  night_C: -14,
  tune: { low: { pump_Hz: 1.1, fan_rpm: 1650 }, high: { pump_Hz: 4, fan_rpm: 4400 } },
};

/**
 * Densities of moist air as published: Gupta, Mass Metrology (Springer 2012), appendix, p. 205, at 40 % relative humidity;
 * the one at 730 mmHg brought to 760 mmHg in proportion to pressure.
 */
test("a tune of a published 40 °C in a published 10 °C: so much denser, and as much leaner as the fit's slope makes of it", () => {
  const { rows } = JSON.parse(
    readFileSync("test/reference/moist_air.json", "utf8"),
  ).publishedPoints;
  const [cold, warm] = rows as { t_C: number; p_Pa: number; rho_kg_m3: number }[];
  if (!cold || !warm) throw new Error("two points are needed");
  const ratio = (cold.rho_kg_m3 * (warm.p_Pa / cold.p_Pa)) / warm.rho_kg_m3;
  const at = tuneAtNight(EMPTY_ATLAS, {
    ...question,
    air: { temperature_C: warm.t_C, pressure_hPa: warm.p_Pa / 100, humidity_pct: 40 },
    night_C: cold.t_C,
  });
  expect(at.denser_pct).toBe(Math.round(100 * (ratio - 1)));
  for (const end of ENDS) {
    const gain = ratio ** groupOf(EMPTY_ATLAS, 5, end).slope;
    expect(at[end].shift_pct).toBe(Math.round(100 * (1 / gain - 1)));
    expect(at[end].pump_Hz).toBeCloseTo(Math.round(question.tune[end].pump_Hz * gain * 10) / 10, 9);
  }
});

test("the same temperature changes nothing; a tune richer or leaner than the fit's shifts as much as any", () => {
  const same = tuneAtNight(fit, { ...question, night_C: 12 });
  expect(same).toMatchObject({
    denser_pct: 0,
    standing: "roomy",
    low: { shift_pct: 0, pump_Hz: 1.1, pump_shift_pct: 0, fan_rpm: 1650, fan_change_pct: 0 },
    high: { shift_pct: 0, pump_Hz: 4, pump_shift_pct: 0, fan_rpm: 4400, fan_change_pct: 0 },
  });
  const coarse = tuneAtNight(fit, { ...question, step_rpm: 100 });
  for (const end of ENDS) expect((coarse[end].fan_rpm ?? 50) % 100).toBe(0);
  const { low, high } = question.tune;
  const richer = { low: { ...low, pump_Hz: 1.4 }, high: { ...high, pump_Hz: 5.2 } };
  for (const end of ENDS) {
    expect(tuneAtNight(fit, { ...question, tune: richer })[end].shift_pct).toBe(
      tuneAtNight(fit, question)[end].shift_pct,
    );
  }
});

test("a colder night is leaner, a warmer one richer; what is to be set is the nearest the controller has, and the fan does it more finely", () => {
  const steps = fc.constantFrom(0.01, 0.05, 0.1, 0.2);
  const temperatures = fc.integer({ min: -40, max: 40 });
  fc.assert(
    fc.property(temperatures, temperatures, steps, (now_C, night_C, step_Hz) => {
      const at = tuneAtNight(fit, {
        ...question,
        air: { temperature_C: now_C },
        night_C,
        step_Hz,
      });
      for (const end of ENDS) {
        const { pump_Hz, fan_rpm } = question.tune[end];
        const one = at[end];
        // Never the wrong way, and nothing out of nothing.
        expect(Math.sign(one.shift_pct) * Math.sign(night_C - now_C)).toBeGreaterThanOrEqual(0);
        expect((one.pump_Hz - pump_Hz) * (now_C - night_C)).toBeGreaterThanOrEqual(-1e-9);
        expect((one.pump_Hz / step_Hz) % 1 < 1e-6 || (one.pump_Hz / step_Hz) % 1 > 1 - 1e-6).toBe(
          true,
        );
        // Half a step of the pump is all that can be left, and a percent for rounding.
        const most = (100 * step_Hz) / 2 / one.pump_Hz + 1;
        expect(Math.abs(one.pump_shift_pct)).toBeLessThanOrEqual(most);
        if (one.fan_rpm === undefined) {
          expect(night_C).toBeGreaterThan(now_C);
          continue;
        }
        expect((one.fan_rpm - fan_rpm) * (night_C - now_C)).toBeGreaterThanOrEqual(0);
        expect(Math.abs(one.fan_shift_pct ?? 9)).toBeLessThanOrEqual(1);
      }
    }),
  );
});

test("it may stay until an end is beyond 12 % rich or 25 % lean, and near the edge it is called tight, with the room that is left", () => {
  const from = (now_C: number, night_C: number) =>
    tuneAtNight(fit, { ...question, air: { temperature_C: now_C }, night_C });
  expect(from(10, -10).standing).toBe("roomy");
  const warm = from(-15, 22);
  expect(warm.low.shift_pct).toBeGreaterThan(12);
  expect(warm.standing).toBe("beyond");
  expect(warm.room_pct).toBeLessThan(0);
  expect(tuneAtNight(fit, question, { rich_pct: 12, lean_pct: 5 }).standing).toBe("beyond");
  const { low, high } = from(-15, 15);
  const worst_pct = Math.max(low.shift_pct, high.shift_pct);
  expect(from(-15, 15)).toMatchObject({ standing: "tight", room_pct: 12 - worst_pct });
  // A temperature that was guessed while tuning needs more room.
  const guessed = tuneAtNight(fit, { ...question, air: {}, night_C: 15 });
  const known = from(guessed.found_in.temperature_C, 15);
  expect(known.low.shift_pct).toBe(guessed.low.shift_pct);
  expect([known.standing, guessed.standing]).toEqual(["roomy", "tight"]);
  // A fan that is at its limit cannot go faster for the warm night.
  const fast = { ...question.tune, high: { pump_Hz: 4, fan_rpm: 5000 } };
  const at = tuneAtNight(fit, {
    ...question,
    tune: fast,
    air: { temperature_C: -15 },
    night_C: 22,
  });
  expect(at.high.fan_rpm).toBeUndefined();
  expect(at.low.fan_rpm).toBeGreaterThan(1650);
});

test("nonsense is named", () => {
  expect(() => tuneAtNight(fit, { ...question, night_C: Number.NaN })).toThrow(/temperature_C/);
});
