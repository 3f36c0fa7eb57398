import fc from "fast-check";
import { expect, test } from "vitest";
import { compareWithAtlas } from "../../model/compare.ts";
import { startTune } from "../../model/start.ts";
import { EMPTY_ATLAS, inventedFit } from "./invented-fit.ts";

/** How a tune stands beside the atlas, in figures and in a sentence. */

const FIT = inventedFit();
const SITE = { elevation_m: 1500, elevation_sd_m: 0, elevation_source: "given" } as const;
const EXPECTED = startTune(FIT, { heat_kW: 5, site: SITE, air: { temperature_C: -5 } });
const DENSITY = EXPECTED.air.density_kg_m3;

/** A tune at a multiple of what the atlas expects, at each end. */
function tuneAt(low: number, high: number) {
  return {
    low: { pump_Hz: EXPECTED.low.pump_Hz_exact * low, fan_rpm: EXPECTED.low.fan_rpm },
    high: { pump_Hz: EXPECTED.high.pump_Hz_exact * high, fan_rpm: EXPECTED.high.fan_rpm },
  };
}

test("richer and leaner, by how much, at which end", () => {
  const [low, high] = compareWithAtlas(FIT, 5, DENSITY, tuneAt(0.93, 1.12));
  expect(low).toMatchObject({
    end: "low",
    inside_band: true,
    sentence: "The tune at lowest power is 7 % leaner than the atlas expects at this density.",
  });
  expect(high).toMatchObject({
    end: "high",
    inside_band: true,
    sentence: "The tune at highest power is 12 % richer than the atlas expects at this density.",
  });
  expect(low?.mixture_shift_pct).toBeCloseTo(-7, 9);
  expect(high?.mixture_shift_pct).toBeCloseTo(12, 9);
});

test("just as expected", () => {
  const sentences = compareWithAtlas(FIT, 5, DENSITY, tuneAt(1, 1.004)).map((c) => c.sentence);
  expect(sentences).toEqual([
    "The tune at lowest power is just what the atlas expects at this density.",
    "The tune at highest power is just what the atlas expects at this density.",
  ]);
});

test("with nobody to compare with, it says that physics alone speaks", () => {
  for (const { sentence } of compareWithAtlas(EMPTY_ATLAS, 5, DENSITY, tuneAt(1.3, 1.3))) {
    expect(sentence).toMatch(
      /^The tune at (low|high)est power is .* physics alone expects at this density\.$/,
    );
  }
});

test("inside the band just as the start tune's own 95 % new-heater band says", () => {
  const band = EXPECTED.high.new_heater_bands_Hz.find(({ level }) => level === 0.95);
  if (!band) throw new Error("no 95 % band");
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 1.8, noNaN: true }), (factor) => {
      const tune = tuneAt(1, factor);
      const [, high] = compareWithAtlas(FIT, 5, DENSITY, tune);
      // The start tune's band is wider by the weather it had to assume.
      if (high?.inside_band) {
        expect(tune.high.pump_Hz).toBeGreaterThan(band.lower);
        expect(tune.high.pump_Hz).toBeLessThan(band.upper);
      } else {
        expect(Math.abs(Math.log(factor))).toBeGreaterThan(0.05);
      }
    }),
  );
});

test("the fan's speed does not matter, the mixture does", () => {
  const { low, high } = tuneAt(1.1, 0.8);
  const faster = {
    low: { pump_Hz: low.pump_Hz * 1.2, fan_rpm: low.fan_rpm * 1.2 },
    high: { pump_Hz: high.pump_Hz * 0.9, fan_rpm: high.fan_rpm * 0.9 },
  };
  const shifts = (tune: typeof faster) =>
    compareWithAtlas(FIT, 5, DENSITY, tune).map((c) => Math.round(c.mixture_shift_pct * 1e6));
  expect(shifts(faster)).toEqual(shifts({ low, high }));
});

test("what is not a finite, positive number is refused", () => {
  expect(() => compareWithAtlas(FIT, 5, Number.NaN, tuneAt(1, 1))).toThrow(/density_kg_m3/);
  const zero = { ...tuneAt(1, 1), high: { pump_Hz: 0, fan_rpm: 4400 } };
  expect(() => compareWithAtlas(FIT, 5, DENSITY, zero)).toThrow(RangeError);
});
