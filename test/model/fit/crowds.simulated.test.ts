import { describe, expect, test } from "vitest";
import { standardDensity } from "../../../model/air.ts";
import { bandsAt } from "../../../model/fit/bands.ts";
import { fitAtlas } from "../../../model/fit/fit.ts";
import type { GroupFit } from "../../../model/fit/group.ts";
import type { FitRow } from "../../../model/fit/row.ts";
import { crowd, oneMore, type Seeded, seeded, trueMean, withFakes } from "./simulated-crowd.ts";

const ELEVATIONS_m = [0, 1500, 3000, 4500];

interface Study {
  /** Root-mean-square error of the mean at 0, 1,500, 3,000 and 4,500 m, %. */
  rmse: number[];
  /** Share of true means in the 95 % mean band, and of new heaters in the 80 % and 95 % bands, %. */
  mean95: number;
  new80: number;
  new95: number;
  /** Share of rows set aside, %. */
  rejected: number;
}

function study(seed: number, runs: number, make: (random: Seeded) => FitRow[]): Study {
  const random = seeded(seed);
  const squares = ELEVATIONS_m.map(() => 0);
  let [mean95, new80, new95, rejected, rows] = [0, 0, 0, 0, 0];
  const heaters = 10;
  for (let run = 0; run < runs; run++) {
    const data = make(random);
    const group = fitAtlas(data).groups[0] as GroupFit;
    rejected += group.rejected;
    rows += data.length;
    for (const [i, elevation_m] of ELEVATIONS_m.entries()) {
      const density = standardDensity(elevation_m);
      const truth = trueMean(density);
      const bands = bandsAt(group, density, {
        mean_levels: [0.95],
        new_heater_levels: [0.8, 0.95],
      });
      squares[i] = (squares[i] as number) + (Math.log(bands.pump_Hz_per_krpm) - truth) ** 2;
      const holds = (y: number, band = bands.mean_bands[0]) =>
        Number(band !== undefined && Math.exp(y) >= band.lower && Math.exp(y) <= band.upper);
      mean95 += holds(truth);
      for (let k = 0; k < heaters; k++) {
        const y = oneMore(random, density);
        new80 += holds(y, bands.new_heater_bands[0]);
        new95 += holds(y, bands.new_heater_bands[1]);
      }
    }
  }
  const asked = runs * ELEVATIONS_m.length;
  return {
    rmse: squares.map((sum) => 100 * Math.sqrt(sum / runs)),
    mean95: (100 * mean95) / asked,
    new80: (100 * new80) / (asked * heaters),
    new95: (100 * new95) / (asked * heaters),
    rejected: (100 * rejected) / rows,
  };
}

/**
 * Simulated crowds with a known truth (simulated-crowd.ts; nothing outside the project). Errors at most, in %, at
 * 0 / 1,500 / 3,000 / 4,500 m: twice what the study reports, for so few runs.
 */
describe("simulated crowds", () => {
  test.each<[name: string, runs: number, most: number[], make: (r: Seeded) => FitRow[]]>([
    ["200 contributors", 10, [1.5, 1.5, 2.2, 3.2], (r) => crowd(r, 200)],
    ["8 contributors", 60, [4.2, 4.2, 4.6, 5.6], (r) => crowd(r, 8)],
    ["3 contributors", 60, [7.0, 7.0, 7.4, 8.0], (r) => crowd(r, 3)],
    [
      "40 % fake contributors spread out, 1.6 ×",
      6,
      [1.5, 1.5, 2.2, 3.2],
      (r) => withFakes(r, crowd(r, 200), { share: 0.4, times: 1.6, spread: true }),
    ],
    [
      "30 % fake contributors spread out, 1.25 ×",
      6,
      [1.5, 1.5, 2.4, 3.4],
      (r) => withFakes(r, crowd(r, 200), { share: 0.3, times: 1.25, spread: true }),
    ],
    [
      "30 % of all rows are slips that nobody screened",
      6,
      [1.8, 2, 3.4, 5],
      (r) => crowd(r, 200, 0.3),
    ],
  ])("%s", (_, runs, most, make) => {
    const { rmse, mean95, new80, new95 } = study(17, runs, make);
    for (const [i, error] of rmse.entries()) expect(error).toBeLessThan(most[i] as number);
    expect(mean95).toBeGreaterThan(80);
    expect(new80).toBeGreaterThan(73);
    expect(new95).toBeGreaterThan(90);
  });

  test("few honest rows are set aside, and bands of many contributors are not wider than they say", () => {
    const { rejected, new80, new95 } = study(18, 10, (r) => crowd(r, 200));
    expect(rejected).toBeLessThan(1);
    expect(new80).toBeLessThan(87);
    expect(new95).toBeLessThan(98.5);
  });
});
