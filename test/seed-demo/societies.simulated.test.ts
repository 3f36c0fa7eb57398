import { expect, test } from "vitest";
import { airAt } from "../../model/air.ts";
import { ENDS } from "../../model/end.ts";
import { bandsAt } from "../../model/fit/bands.ts";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { FitRow } from "../../model/fit/row.ts";
import type { Tune } from "../../model/tune.ts";
import { scenario } from "../../seed-demo/scenario.ts";
import { TRUTH } from "../../seed-demo/truth.ts";

/** Density as the atlas has it of a tune, with its spread. */
function density({ site, air }: Tune) {
  const { density_kg_m3, ln_density_sd } = airAt(site.elevation_m, air, site.elevation_sd_m);
  return { density_kg_m3, ln_density_sd };
}

test("over many such societies the 95 % mean bands hold the truth as often as they say", () => {
  let [held, asked] = [0, 0];
  for (let seed = 1; seed <= 8; seed++) {
    const rows: FitRow[] = scenario(seed)
      .filter(({ kind }) => kind !== "slip")
      .flatMap(({ key, tune }) =>
        ENDS.map((end) => ({
          row: key,
          contributor: tune.contributor,
          cell: `${tune.site.lat}`,
          heat_kW: tune.heater.heat_kW,
          end,
          ...density(tune),
          pump_Hz: tune[end].pump_Hz,
          fan_rpm: tune[end].fan_rpm,
          found: tune.found,
          // As the atlas keeps one with every tune that is sent.
          suggested_Hz_per_krpm: 1,
        })),
      );
    for (const group of fitAtlas(rows).groups) {
      const { intercept, slope } = TRUTH[group.heat_kW as 2 | 5 | 8][group.end];
      for (const elevation_m of [0, 1500, 3000]) {
        const { density_kg_m3 } = airAt(elevation_m);
        const [band] = bandsAt(group, density_kg_m3, { mean_levels: [0.95] }).mean_bands;
        const truth = Math.exp(intercept + slope * Math.log(density_kg_m3 / 1.225));
        asked++;
        if (band && truth >= band.lower && truth <= band.upper) held++;
      }
    }
  }
  expect(asked).toBe(8 * 6 * 3);
  expect(held / asked).toBeGreaterThan(0.9);
});
