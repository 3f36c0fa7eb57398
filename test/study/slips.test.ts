import { expect, test } from "vitest";
import { standardDensity } from "../../model/air.ts";
import { rowOf } from "./crowd.ts";
import { SLIPS } from "./slips.ts";

const tunedAt = (elevation_m: number, night = 1) =>
  rowOf({
    contributor: "c",
    k: 0,
    site: { cell: "a", elevation_m },
    month: "2026-01",
    night,
    y: Math.log(0.66),
    stated: { density_kg_m3: standardDensity(elevation_m) * night },
  });

// 15 °C is 59 °F; −40 is the same in both. Air of one pressure is as dense as it is cold (ideal gas).
test("°F stated as °C is the air of a night as many °C warm", () => {
  const warm = tunedAt(0);
  const { density_kg_m3 } = SLIPS.fahrenheit(warm);
  expect(density_kg_m3 / warm.density_kg_m3).toBeCloseTo(288.15 / (273.15 + 59), 9);
  const arctic = tunedAt(0, 288.15 / (273.15 - 40));
  expect(SLIPS.fahrenheit(arctic).density_kg_m3).toBeCloseTo(arctic.density_kg_m3, 9);
});

// ISO 2533:1975, Table 5: 701.212 hPa at 3,000 m (geometric), 1,013.25 by the sea.
test("a sea-level pressure stated as the station's makes the air denser by the ratio of the two", () => {
  const row = tunedAt(3000);
  const { density_kg_m3 } = SLIPS.sea_level_pressure(row);
  expect(density_kg_m3 / row.density_kg_m3).toBeCloseTo(1013.25 / 701.212, 4);
});

// 3,000 m is 9,840 ft; no map has such a place, and the form takes none above 6,000 m.
test("feet stated as metres are the air of a place more than three times as high, up to 6,000 m", () => {
  expect(SLIPS.feet(tunedAt(1000)).density_kg_m3).toBeCloseTo(standardDensity(3280), 9);
  expect(SLIPS.feet(tunedAt(3000)).density_kg_m3).toBeCloseTo(standardDensity(6000), 9);
});
