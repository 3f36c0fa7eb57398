import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { standardDensity } from "../../model/air.ts";
import { fuelFlow, heatOutput } from "../../model/mixture.ts";
import { SAFETY } from "../../model/safety.ts";
import { type StartQuestion, type StartTune, startTune } from "../../model/start.ts";
import {
  EMPTY_ATLAS,
  INVENTED_RANGE,
  inventedFit,
  TRUE_PER_KRPM,
  TRUE_SLOPE,
} from "./invented-fit.ts";

/** The start tune: both ends, both strategies, the bands, and what it rests on. */

const FIT = inventedFit();

function question(elevation_m: number, more: Partial<StartQuestion> = {}): StartQuestion {
  return {
    heat_kW: 5,
    site: { elevation_m, elevation_sd_m: 0, elevation_source: "given" },
    air: { temperature_C: -5, humidity_pct: 60 },
    ...more,
  };
}

function start(elevation_m: number, more: Partial<StartQuestion> = {}, fit = FIT): StartTune {
  return startTune(fit, question(elevation_m, more));
}

const elevation = fc.integer({ min: -400, max: 5500 });
const temperature = fc.integer({ min: -40, max: 40 });

describe("pump rate", () => {
  test("recovers what the invented crews do, at their densities", () => {
    for (const elevation_m of [0, 1500, 3000]) {
      const { air, low, high } = start(elevation_m);
      const expected = (end: "low" | "high", fan_rpm: number) =>
        (TRUE_PER_KRPM[end] * air.density_ratio ** TRUE_SLOPE * fan_rpm) / 1000;
      expect(low.pump_Hz_exact / expected("low", 1650)).toBeCloseTo(1, 1);
      expect(high.pump_Hz_exact / expected("high", 4400)).toBeCloseTo(1, 1);
    }
  });

  test("falls with density, whatever lowers it: higher, warmer, more humid", () => {
    const exact = (z: number, temperature_C: number, humidity_pct = 50) =>
      start(z, { air: { temperature_C, humidity_pct } }).high.pump_Hz_exact;
    fc.assert(
      fc.property(elevation, temperature, (z, t) => {
        expect(exact(z + 50, t)).toBeLessThan(exact(z, t));
        expect(exact(z, t + 2)).toBeLessThan(exact(z, t));
        expect(exact(z, t, 60)).toBeLessThan(exact(z, t, 50));
      }),
      { numRuns: 50 },
    );
  });

  test("is rounded to what a controller can be set to, and the exact value kept", () => {
    fc.assert(
      fc.property(elevation, (z) => {
        for (const { pump_Hz, pump_Hz_exact } of ends(start(z))) {
          expect(Math.abs(pump_Hz * 10 - Math.round(pump_Hz * 10))).toBeLessThan(1e-9);
          expect(Math.abs(pump_Hz - pump_Hz_exact)).toBeLessThanOrEqual(0.05 + 1e-9);
          expect(String(pump_Hz).length).toBeLessThanOrEqual(4);
        }
      }),
      { numRuns: 50 },
    );
  });

  test("is proportional to the asked fan speed; unasked, the class's usual ones", () => {
    const usual = start(1000);
    expect([usual.low.fan_rpm, usual.high.fan_rpm]).toEqual([1650, 4400]);
    const asked = start(1000, { low_fan_rpm: 1320, high_fan_rpm: 4840 });
    expect([asked.low.fan_rpm, asked.high.fan_rpm]).toEqual([1320, 4840]);
    expect(asked.low.pump_Hz_exact / usual.low.pump_Hz_exact).toBeCloseTo(0.8, 10);
    expect(asked.high.pump_Hz_exact / usual.high.pump_Hz_exact).toBeCloseTo(1.1, 10);
  });
});

describe("bands", () => {
  test("hold the exact value, and lie within each other: mean band, 80 %, 95 %", () => {
    fc.assert(
      fc.property(elevation, fc.boolean(), fc.boolean(), (z, knowsTemperature, empty) => {
        const air = knowsTemperature ? { temperature_C: -5 } : {};
        for (const end of ends(start(z, { air }, empty ? EMPTY_ATLAS : FIT))) {
          const [eighty, ninetyFive] = end.new_heater_bands_Hz;
          if (!eighty || !ninetyFive) throw new Error("two new-heater bands are expected");
          expect([eighty.level, ninetyFive.level, end.mean_band_Hz.level]).toEqual([
            0.8, 0.95, 0.95,
          ]);
          for (const { lower, upper } of [end.mean_band_Hz, eighty, ninetyFive]) {
            expect(lower).toBeLessThan(end.pump_Hz_exact);
            expect(upper).toBeGreaterThan(end.pump_Hz_exact);
          }
          expect(isInside(end.mean_band_Hz, ninetyFive)).toBe(true);
          expect(isInside(eighty, ninetyFive)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });

  test("widen when the temperature is unknown, and when the elevation is vague", () => {
    const width = ({ high }: StartTune) => high.mean_band_Hz.upper / high.mean_band_Hz.lower;
    const known = width(start(2000));
    expect(width(start(2000, { air: {} }))).toBeGreaterThan(known * 1.05);
    const vague = { elevation_m: 2000, elevation_sd_m: 300, elevation_source: "grid" } as const;
    expect(width(start(2000, { site: vague }))).toBeGreaterThan(known * 1.05);
  });
});

describe("strategies", () => {
  test("keep the fan: the start tune itself, and heat falls with density", () => {
    const tune = start(3000);
    expect(tune.strategies.keep_fan.low).toEqual(tune.low);
    expect(tune.strategies.keep_fan.high).toEqual(tune.high);
    const { slope } = FIT.groups.find((g) => g.end === "high") ?? { slope: Number.NaN };
    expect(tune.strategies.keep_fan.heat_fraction).toBeCloseTo(tune.air.density_ratio ** slope, 12);
  });

  test("keep the heat: the same pump rate as at sea level, where the fan can go fast enough", () => {
    const fans = { low_fan_rpm: 1500, high_fan_rpm: 3600 };
    const there = start(2000, fans);
    const { keep_heat } = there.strategies;
    const seaLevel = start(0, { ...fans, air: { temperature_C: 15, humidity_pct: 0 } });
    expect(keep_heat.fan_suffices).toBe(true);
    expect(keep_heat.low.fan_rpm).toBeGreaterThan(1500);
    // The fan is set in steps of 10 rpm, which is what keeps these from being equal to the last digit.
    expect(keep_heat.low.pump_Hz_exact / seaLevel.low.pump_Hz_exact).toBeCloseTo(1, 2);
    expect(keep_heat.high.pump_Hz_exact / seaLevel.high.pump_Hz_exact).toBeCloseTo(1, 2);
    expect(keep_heat.heat_fraction).toBeCloseTo(1, 2);
  });

  test("a coarser fan is set in its own steps", () => {
    const { keep_heat } = start(2000, { step_rpm: 100 }).strategies;
    for (const end of ["low", "high"] as const) expect(keep_heat[end].fan_rpm % 100).toBe(0);
    expect(start(2000).strategies.keep_heat.low.fan_rpm % 100).not.toBe(0);
    expect(() => start(2000, { step_rpm: 0 })).toThrow("step_rpm");
  });

  test("both strategies burn the same mixture: pump rate per fan speed is equal", () => {
    fc.assert(
      fc.property(elevation, (z) => {
        const { keep_fan, keep_heat } = start(z).strategies;
        for (const end of ["low", "high"] as const) {
          const perFan = (s: { pump_Hz_exact: number; fan_rpm: number }) =>
            s.pump_Hz_exact / s.fan_rpm;
          expect(perFan(keep_heat[end]) / perFan(keep_fan[end])).toBeCloseTo(1, 10);
        }
      }),
      { numRuns: 30 },
    );
  });

  test("a fan at its limit: it goes no faster, says so, and the heat falls; about 60 % of sea level's is left at 5,000 m (common practice, no source)", () => {
    const standard = { air: {}, high_fan_rpm: 5000 };
    const { keep_heat, keep_fan } = start(5000, standard, EMPTY_ATLAS).strategies;
    expect(keep_heat.fan_suffices).toBe(false);
    expect(keep_heat.high.fan_rpm).toBe(keep_heat.fan_limit_rpm);
    expect(keep_heat.heat_fraction).toBeCloseTo(0.6, 1);
    expect(keep_heat.heat_fraction).toBe(keep_fan.heat_fraction);
    expect(standardDensity(5000) / standardDensity(0)).toBeCloseTo(0.6, 2);
  });

  test("a fan that is short by less than its own step can be set, and suffices", () => {
    // Dry standard air at sea level asks for just the fan speed given, which is at the limit and on no step.
    const sea = { air: { temperature_C: 15, humidity_pct: 0 } };
    for (const high_fan_rpm of [5000, 5003, 5007]) {
      expect(start(0, { ...sea, high_fan_rpm }).strategies.keep_heat.fan_suffices).toBe(true);
    }
    expect(start(100, { ...sea, high_fan_rpm: 5000 }).strategies.keep_heat.fan_suffices).toBe(
      false,
    );
  });

  test("the fan never exceeds its limit, even where the limit is no whole step", () => {
    fc.assert(
      fc.property(elevation, fc.integer({ min: 3500, max: 5600 }), (z, high_fan_rpm) => {
        const { keep_heat } = start(z, { high_fan_rpm }).strategies;
        expect(keep_heat.high.fan_rpm).toBeLessThanOrEqual(keep_heat.fan_limit_rpm);
        expect(keep_heat.fan_limit_rpm).toBe(Math.max(5000, high_fan_rpm));
      }),
      { numRuns: 50 },
    );
  });
});

describe("with a dose", () => {
  test("fuel and heat at both ends and in both strategies; without one, neither is guessed", () => {
    const tune = start(1500, { dose_uL: 28 });
    for (const end of [
      ...ends(tune),
      tune.strategies.keep_heat.low,
      tune.strategies.keep_heat.high,
    ]) {
      expect(end.fuel_L_h).toBeCloseTo(fuelFlow(end.pump_Hz, 28), 12);
      expect(end.heat_kW).toBeCloseTo(heatOutput(end.fuel_L_h ?? Number.NaN), 12);
    }
    for (const end of ends(start(1500))) {
      expect(end).not.toHaveProperty("fuel_L_h");
      expect(end).not.toHaveProperty("heat_kW");
    }
  });
});

describe("what it rests on", () => {
  test("a fit: counts, range and version; not extrapolated within the densities seen", () => {
    const { basis } = start(1500);
    expect(basis).toMatchObject({
      heat_kW: 5,
      tunes: 80,
      contributors: 40,
      extrapolated: false,
      prior_only: false,
      fit: "2026-11-25.1",
      demo: true,
    });
    expect(basis.density_range?.[0]).toBeCloseTo(INVENTED_RANGE[0], 1);
    expect(basis.density_range?.[1]).toBeCloseTo(INVENTED_RANGE[1], 1);
  });

  test("beyond the densities seen, on either side, it says that it extrapolates", () => {
    expect(start(5400).basis.extrapolated).toBe(true);
    expect(start(-300, { air: { temperature_C: -35 } }).basis.extrapolated).toBe(true);
  });

  test("a class nobody has tuned, or an empty atlas: the physics prior alone, labelled, wide, still both ends", () => {
    for (const tune of [start(1500, { heat_kW: 8 }), start(1500, {}, EMPTY_ATLAS)]) {
      expect(tune.basis).toMatchObject({
        tunes: 0,
        contributors: 0,
        density_range: null,
        extrapolated: true,
        prior_only: true,
      });
      const [, prior] = tune.high.new_heater_bands_Hz;
      const [, fitted] = start(1500).high.new_heater_bands_Hz;
      if (!prior || !fitted) throw new Error("two new-heater bands are expected");
      expect(prior.upper / prior.lower).toBeGreaterThan(2 * (fitted.upper / fitted.lower));
      expect(tune.low.pump_Hz).toBeGreaterThan(0.5);
      expect(tune.high.pump_Hz).toBeLessThan(7);
    }
  });

  test("site and air as asked, and the cautions, go with every answer", () => {
    const asked = question(2240);
    const tune = startTune(FIT, asked);
    expect(tune.site).toEqual(asked.site);
    expect(tune.air.temperature_C).toBe(-5);
    expect(tune.air.assumed).toEqual(["pressure"]);
    expect(tune.safety).toBe(SAFETY);
    expect(SAFETY.notice).toMatch(/Carbon monoxide kills/);
  });
});

test("asking changes neither the fit nor the question, and the same question has the same answer", () => {
  const before = structuredClone(FIT);
  const asked = question(2240, { dose_uL: 22 });
  const kept = structuredClone(asked);
  expect(startTune(FIT, asked)).toEqual(startTune(FIT, asked));
  expect(FIT).toEqual(before);
  expect(asked).toEqual(kept);
});

test("what is not a finite, positive number is refused by name", () => {
  for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, 0, -1]) {
    expect(() => start(0, { heat_kW: bad })).toThrow(/heat_kW must be a positive number/);
    expect(() => start(0, { low_fan_rpm: bad })).toThrow(/low_fan_rpm/);
    expect(() => start(0, { high_fan_rpm: bad })).toThrow(/high_fan_rpm/);
    expect(() => start(0, { dose_uL: bad })).toThrow(/dose_uL/);
  }
  expect(() => start(Number.NaN)).toThrow(/elevation_m must be a finite number/);
  expect(() => start(0, { air: { temperature_C: Number.NaN } })).toThrow(/temperature_C/);
});

function ends(tune: StartTune) {
  return [tune.low, tune.high];
}

function isInside(
  inner: { lower: number; upper: number },
  outer: { lower: number; upper: number },
) {
  return inner.lower >= outer.lower && inner.upper <= outer.upper;
}
