import { expect, test } from "vitest";
import {
  colourOf,
  pumpAt,
  RAMP,
  tintRange,
  tintStops,
  tunedElevations,
} from "../../client/map/tint.ts";
import { FIRST_QUESTION } from "../../client/question.ts";
import { airAt } from "../../model/air.ts";
import { groupOf, startTune } from "../../model/start.ts";
import { EMPTY_ATLAS, inventedFit } from "../model/invented-fit.ts";

/** Perceived lightness 0–1 of an sRGB colour: B. Ottosson, "A perceptual color space for image processing" (2020). */
function lightness(hex: string): number {
  const linear = [1, 3, 5].map((i) => {
    const c = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  const cone = (r: number, g: number, b: number) =>
    Math.cbrt(r * linear[0] + g * linear[1] + b * linear[2]);
  return (
    0.2104542553 * cone(0.4122214708, 0.5363325363, 0.0514459929) +
    0.793617785 * cone(0.2119034982, 0.6806995451, 0.1073969566) -
    0.0040720468 * cone(0.0883024619, 0.2817188376, 0.6299787005)
  );
}

test("the ramp darkens in even steps, so that its order is seen without colour", () => {
  const steps = RAMP.slice(1).map((hex, i) => lightness(RAMP[i] as string) - lightness(hex));
  const mean = steps.reduce((sum, step) => sum + step) / steps.length;
  expect(mean).toBeGreaterThan(0.06);
  for (const step of steps) expect(Math.abs(step - mean)).toBeLessThan(0.25 * mean);
});

test("the land's colours are the start tune's at each elevation", () => {
  const fit = inventedFit();
  const question = { ...FIRST_QUESTION, air: { temperature_C: -8 } };
  for (const end of ["low", "high"] as const) {
    const range = tintRange(fit, question, end);
    const stops = tintStops(fit, question, end);
    for (let i = 0; i < stops.length; i += 2) {
      const elevation_m = stops[i] as number;
      const site = { elevation_m, elevation_sd_m: 0, elevation_source: "given" as const };
      const rate = startTune(fit, { ...question, site })[end].pump_Hz_exact;
      expect(pumpAt(fit, question, end, elevation_m)).toBe(rate);
      expect(stops[i + 1]).toBe(colourOf(rate, range));
    }
  }
});

test("rates beyond the ramp take its ends; every step takes its own colour", () => {
  const range = { from_Hz: 1, to_Hz: 2 };
  expect(colourOf(0.2, range)).toBe(RAMP[0]);
  expect(colourOf(9, range)).toBe(RAMP.at(-1));
  RAMP.forEach((hex, i) => {
    expect(colourOf(1 + i / (RAMP.length - 1), range)).toBe(hex);
  });
});

test("what is not hatched is the air tuned in, on the night asked; with no tunes all is hatched", () => {
  const question = { ...FIRST_QUESTION, air: { temperature_C: -5 } };
  const fit = inventedFit();
  const [thinnest, densest] = groupOf(fit, 5, "low").density_range as [number, number];
  const [lowest, highest] = tunedElevations(fit, question, "low") as [number, number];
  const densityAt = (elevation_m: number) => airAt(elevation_m, question.air).density_kg_m3;
  expect(densityAt(highest)).toBeCloseTo(thinnest, 4);
  expect(densityAt(lowest)).toBeCloseTo(densest, 4);
  expect(tunedElevations(EMPTY_ATLAS, question, "low")).toBe(null);
});
