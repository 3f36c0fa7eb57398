import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { refusalWords as german } from "../../client/texts/de/refusals.ts";
import { refusalWords as spanish } from "../../client/texts/es/refusals.ts";
import { fieldErrors, tuneSchema } from "../../model/tune.ts";

test("every status that the atlas refuses with has words in German and Spanish", () => {
  const source = readFileSync("server/problem.ts", "utf8");
  const statuses = [...source.matchAll(/^ {2}(\d{3}): "/gm)].map(([, status]) => status as string);
  expect(statuses.length).toBeGreaterThan(10);
  for (const words of [german, spanish])
    expect(Object.keys(words?.statuses ?? {})).toEqual(statuses);
});

/** Whole parts, and what the page writes itself: only another program sends them wrong. */
const NO_FIELD = /^(heater|site|air|low|high|meter|contributor)$/;

test("whatever the tune's schema refuses in a field has words in German and Spanish, and the field a name", () => {
  const end = { pump_Hz: 9e9, fan_rpm: 0, co_ppm: -1, co_below_ppm: 0, power: 101 };
  const wrong = [
    {},
    { heater: 5, site: "high", air: [], low: null, meter: 1, tuned_on: 2026, contributor: 5 },
    {
      heater: { heat_kW: 2.3, dose_uL: 0, supply_V: 48, fuel: 1 },
      site: { elevation_m: 1e6, elevation_sd_m: -1, lat: 91 },
      air: { temperature_C: 999, pressure_hPa: 1, qnh_hPa: 1, humidity_pct: 101 },
      low: end,
      high: { pump_Hz: "5", fan_rpm: 1e9 },
      found: "by ear",
      meter: { kind: "nose", distance_m: 0 },
      tuned_on: "last week",
      contributor: "me",
    },
  ];
  const errors = wrong.flatMap((tune) => {
    const { error } = tuneSchema.safeParse(tune);
    return error ? fieldErrors(error) : [];
  });
  expect(errors.length).toBeGreaterThan(30);
  for (const { field, code } of errors) {
    const name = field.split(".").at(-1) as string;
    for (const words of [german, spanish]) {
      const said = code === "custom" ? words?.together[name] : words?.codes[code]?.("");
      expect(said, `${field}: ${code}`).toBeTruthy();
      if (code !== "unknown_field" && !NO_FIELD.test(field))
        expect(words?.fields[name], field).toBeTruthy();
    }
  }
});
