import { converter } from "culori";
import { expect, test, vi } from "vitest";
import { FIRST_QUESTION } from "../../client/base/question.ts";
import { colourAt, PALETTES } from "../../client/map/palette.ts";
import { colourOfElevation, tunedColour } from "../../client/map/relief.ts";
import { HATCHING, sheetStyle } from "../../client/map/sheet-style.ts";
import {
  ASPECTS,
  elevationOfRate,
  pumpAt,
  shareOf,
  tintRange,
  tintStops,
  tunedElevations,
  valueAt,
} from "../../client/map/tint.ts";
import { airAt } from "../../model/air.ts";
import { groupOf, startTune } from "../../model/start.ts";
import { EMPTY_ATLAS, inventedFit } from "../model/invented-fit.ts";

/** OKLab of an sRGB colour: B. Ottosson, "A perceptual color space for image processing" (2020), by the library culori. */
function oklab(hex: string): [L: number, a: number, b: number] {
  const colour = inOklab(hex);
  if (!colour) throw new Error(`${hex} is no colour.`);
  return [colour.l, colour.a, colour.b];
}
const inOklab = converter("oklab");

for (const [theme, palette] of Object.entries(PALETTES)) {
  for (const aspect of ASPECTS) {
    const ramp = palette[aspect];

    test(`${theme} ${aspect}: equal steps look equal, each darker than the one before`, () => {
      const labs = ramp.map(oklab);
      const steps = labs.slice(1).map((lab, i) => {
        const before = labs[i] as typeof lab;
        expect(lab[0]).toBeLessThan(before[0]);
        return Math.hypot(...lab.map((value, k) => value - (before[k] as number)));
      });
      const mean = steps.reduce((sum, step) => sum + step) / steps.length;
      expect(mean).toBeGreaterThan(aspect === "sure" ? 0.09 : 0.1);
      for (const step of steps) expect(Math.abs(step - mean)).toBeLessThan(0.04 * mean);
    });

    test(`${theme} ${aspect}: even between the steps, as the map draws it`, () => {
      const labs = Array.from({ length: 25 }, (_, i) => oklab(colourAt(i / 24, ramp)));
      const steps = labs
        .slice(1)
        .map((lab, i) => Math.hypot(...lab.map((v, k) => v - (labs[i]?.[k] as number))));
      const mean = steps.reduce((sum, step) => sum + step) / steps.length;
      for (const step of steps) expect(Math.abs(step - mean)).toBeLessThan(0.25 * mean);
    });
  }
}

const { light } = PALETTES;

test("the land's colours are the start tune's at each elevation", () => {
  const fit = inventedFit();
  const question = { ...FIRST_QUESTION, air: { temperature_C: -8 } };
  for (const end of ["low", "high"] as const) {
    for (const aspect of ["rate", "sure"] as const) {
      const asked = { fit, question, end, aspect };
      const range = tintRange(asked);
      const stops = tintStops(asked, light);
      for (let i = 0; i < stops.length; i += 2) {
        const elevation_m = stops[i] as number;
        const site = { elevation_m, elevation_sd_m: 0, elevation_source: "given" as const };
        const tune = startTune(fit, { ...question, site })[end];
        expect(pumpAt(asked, elevation_m)).toBe(tune.pump_Hz_exact);
        const band = tune.new_heater_bands_Hz.find(({ level }) => level === 0.95);
        const width = (50 * ((band?.upper ?? 0) - (band?.lower ?? 0))) / tune.pump_Hz_exact;
        const told = aspect === "rate" ? tune.pump_Hz_exact : width;
        expect(valueAt(asked, elevation_m)).toBeCloseTo(told, 9);
        expect(stops[i + 1]).toBe(colourAt(shareOf(told, range), light[aspect]));
      }
    }
  }
});

test("the legend's elevation is the one at which the night asks for the rate, or none", () => {
  const asked = {
    fit: inventedFit(),
    question: { ...FIRST_QUESTION, air: { temperature_C: -8 } },
    end: "low" as const,
  };
  expect(elevationOfRate(asked, pumpAt(asked, 2345))).toBeCloseTo(2345, 1);
  expect(elevationOfRate(asked, pumpAt(asked, -500) * 1.01)).toBe(null);
  expect(elevationOfRate(asked, pumpAt(asked, 6000) * 0.99)).toBe(null);
});

test("the upper tint has the land's own colours within the tuned elevations and none outside", () => {
  const stops = [0, "#ffffff", 1000, "#808080", 2000, "#000000"];
  const [, , , ...over] = tunedColour({ stops, tuned: [500, 1500] }) as unknown as (
    | number
    | string
  )[];
  expect(over.filter((_, i) => i % 2 === 0)).toEqual([499, 500, 1000, 1500, 1501]);
  expect(over[1]).toMatch(/, 0\)$/);
  expect(over.at(-1)).toMatch(/, 0\)$/);
  expect(over[3]).toBe(colourOfElevation(stops, 500));
  expect(over[5]).toBe("#808080");
  const none = tunedColour({ stops, tuned: null }) as unknown as (number | string)[];
  expect(none.filter((part) => typeof part === "string" && part.startsWith("#"))).toEqual([]);
});

test("rates beyond the ramp take its ends; every step takes its own colour", () => {
  expect(colourAt(-0.8, light.rate)).toBe(light.rate[0]);
  expect(colourAt(9, light.rate)).toBe(light.rate.at(-1));
  light.rate.forEach((hex, i) => {
    expect(colourAt(i / (light.rate.length - 1), light.rate)).toBe(hex);
  });
});

test("what is not hatched is the air tuned in, on the night asked; with no tunes all is hatched", () => {
  const question = { ...FIRST_QUESTION, air: { temperature_C: -5 } };
  const asked = { fit: inventedFit(), question, end: "low", aspect: "rate" } as const;
  const [thinnest, densest] = groupOf(asked.fit, 5, "low").density_range as [number, number];
  const [lowest, highest] = tunedElevations(asked) as [number, number];
  const densityAt = (elevation_m: number) => airAt(elevation_m, question.air).density_kg_m3;
  expect(densityAt(highest)).toBeCloseTo(thinnest, 4);
  expect(densityAt(lowest)).toBeCloseTo(densest, 4);
  expect(tunedElevations({ ...asked, fit: EMPTY_ATLAS })).toBe(null);
});

test("no land is hatched that has not come: what is not drawn yet does not look as if nobody had tuned there", () => {
  vi.stubGlobal("location", { origin: "" });
  const land = tunedColour({ stops: [], tuned_m: null, contours: [] } as never);
  const address = "invented";
  const { layers } = sheetStyle({
    ...{ elevationTiles: address, contours: address, deepest: 6 },
    ...{ palette: PALETTES.light, land, tuned: land },
  });
  expect(layers.find(({ id }) => id === HATCHING)?.layout).toEqual({ visibility: "none" });
  vi.unstubAllGlobals();
});
