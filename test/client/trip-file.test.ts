import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { caution } from "../../client/base/csv.ts";
import { Refused } from "../../client/base/refused.ts";
import { t } from "../../client/texts/app.ts";
import { trip as words } from "../../client/texts/trip.ts";
import { csvOfTrip, jsonOfTrip } from "../../client/trip/exports.ts";
import { LARGEST_FILE_bytes, stopsOfFile, stopsOfText } from "../../client/trip/read-file.ts";
import { NEW_TRIP, type Trip } from "../../client/trip/trip.ts";
import { planTrip } from "../../model/trip/trip.ts";
import { inventedFit } from "../model/invented-fit.ts";

/** GPX needs the browser's own reader of XML: test/browser/trip.test.ts. */

function refusal(text: string): { line: number | undefined; message: string } {
  try {
    stopsOfText(text);
  } catch (error) {
    if (error instanceof Refused) return error;
    throw error;
  }
  throw new Error("It was taken.");
}

test("CSV: columns in any order, decimal comma, quotes, byte order mark, Windows lines", () => {
  expect(
    stopsOfText(
      '\uFEFFname,elevation_m,temperature_C,lat,lon\r\n"Pass, upper",2300,-9,46.5,7.9\r\n',
    ),
  ).toEqual([{ name: "Pass, upper", elevation_m: 2300, temperature_C: -9, lat: 46.5, lon: 7.9 }]);
  expect(stopsOfText("Elevation_M;NAME;temperature_c\n1200,5;Lake;\n\n35;Harbour;4,5\n")).toEqual([
    { name: "Lake", elevation_m: 1200.5 },
    { name: "Harbour", elevation_m: 35, temperature_C: 4.5 },
  ]);
  expect(stopsOfText("lat,lon\n46.5,7.9\n")).toEqual([{ name: "", lat: 46.5, lon: 7.9 }]);
});

test("CSV that is wrong is refused as a whole, with its line and the reason", () => {
  const head = "name,elevation_m,temperature_C,lat,lon\n";
  const wrong: [string, number | undefined, RegExp][] = [
    [`${head}Pass,2300,-9,,\nLake,high,,,\n`, 3, /elevation_m is not a number: “high”/],
    [`${head}Pass,2300,-9,,\n\nLake,23000,,,\n`, 4, /elevation must be a number from -500 to 6000/],
    [`${head}Pass,2300,-90,,\n`, 2, /temperature must be/],
    [`${head}Pass,2300,-9,46,\n`, 2, /lat and lon belong together/],
    [`${head}Pass,,-9,,\n`, 2, /neither an elevation nor a position/],
    [`${head}Pass,2300\n`, 2, /fields/],
    [`${head}"Pass,2300,-9,,\n`, undefined, /quotation mark/],
    ["stop,height\nPass,2300\n", 1, /header line/],
    [head, undefined, /no stop/],
    ["", undefined, /empty/],
    ["\u0000\u0001\u0002", undefined, /not text/],
    [head + "Pass,2300,,,\n".repeat(101), undefined, /101 stops/],
  ];
  for (const [text, line, reason] of wrong) {
    const { line: named, message } = refusal(text);
    expect(message).toMatch(reason);
    if (line !== undefined) expect(named, text).toBe(line);
  }
});

const point = (coordinates: unknown, properties: unknown = {}) => ({
  type: "Feature",
  geometry: { type: "Point", coordinates },
  properties,
});
const collection = (...features: unknown[]) =>
  JSON.stringify({ type: "FeatureCollection", features }, null, 1);

test("GeoJSON: elevation from the properties, else from a third coordinate; the way between is left out", () => {
  const way = {
    type: "Feature",
    geometry: { type: "LineString", coordinates: [] },
    properties: null,
  };
  const text = collection(
    point([7.9, 46.5], { name: "Pass", elevation_m: 2300, temperature_C: -9 }),
    way,
    point([8, 46, 1200]),
    point([8, 46, 3], { ele: 1300 }),
    point([8.1, 46.1]),
  );
  expect(stopsOfText(text)).toEqual([
    { name: "Pass", elevation_m: 2300, temperature_C: -9, lat: 46.5, lon: 7.9 },
    { name: "", elevation_m: 1200, lat: 46, lon: 8 },
    { name: "", elevation_m: 1300, lat: 46, lon: 8 },
    { name: "", lat: 46.1, lon: 8.1 },
  ]);
  expect(stopsOfText('{"type":"Point","coordinates":[8,46,900]}')).toHaveLength(1);
});

test("GeoJSON that is wrong is refused with its line", () => {
  expect(
    refusal(
      '{\n"type": "FeatureCollection",\n"features": [\n{"type": "Feature", "geometry": high}\n]}',
    ),
  ).toMatchObject({ line: 4 });
  const swapped = refusal(collection(point([8, 46, 1]), point([8, 146, 1])));
  expect(swapped.message).toMatch(/lat must be/);
  expect(swapped.line).toBeGreaterThan(10);
  for (const text of ["[]", "{}", '{"type":"Topology"}', '{"type":"FeatureCollection"}']) {
    expect(refusal(text).message).toMatch(/not GeoJSON/);
  }
  expect(refusal(collection(null)).message).toMatch(/number 1/);
  expect(refusal(collection(point(["8", 46]))).message).toMatch(/two numbers/);
  expect(refusal(collection(point([8, 46], { ele: "high" }))).message).toMatch(/elevation must be/);
  expect(refusal(collection()).message).toMatch(/no stop/);
});

test("a file too large is refused before it is read", async () => {
  const file = new File(["x".repeat(LARGEST_FILE_bytes + 1)], "trip.csv");
  await expect(stopsOfFile(file)).rejects.toThrow(/larger than 2 MB/);
});

test("what is exported as CSV is read again as the same stops; no name can be a formula", () => {
  const stops = [
    { name: 'Pass, "upper"', elevation_m: 2300, temperature_C: -9, lat: 46.5, lon: 7.9 },
    { name: "=HYPERLINK(1)", elevation_m: 35, temperature_C: 4, nights: 2 },
    { name: "'s-Hertogenbosch", elevation_m: 5, temperature_C: 3, lat: -1.5, lon: -78 },
  ];
  const trip: Trip = {
    ...NEW_TRIP,
    heater: { heat_kW: 5, dose_uL: 22, supply_V: 24, tank_L: 2, battery_Ah: 10 },
    stops,
  };
  const csv = csvOfTrip(trip, planTrip(inventedFit(5, 12), trip));
  expect(csv).toContain("\r\n'=HYPERLINK(1),35,");
  expect(stopsOfText(csv)).toEqual(stops);
  const [head = [], , harbour = []] = csv.split("\r\n").map((row) => row.split(","));
  const told = (name: string) => harbour[head.indexOf(name)];
  // 14.7 Ah and a start of 4 minutes at 10 A, halved at 24 V.
  expect([told("supply_V"), told("battery_a_night_Ah"), told("battery_Ah")]).toEqual([
    "24",
    "7.7",
    "15.4",
  ]);
  expect([
    told("nights_a_tank_lasts"),
    told("fill_before_night"),
    told("then_every_nights"),
  ]).toEqual(["1", "1", "1"]);
  // The night before took 7.7 of 10 Ah, and each night takes as much: 2.3 are left before every charge.
  expect([
    told("nights_a_battery_lasts"),
    told("charge_before_night"),
    told("then_charge_every_nights"),
    told("left_before_charging_Ah"),
  ]).toEqual(["1", "1", "1", "2.32"]);
});

test("files of a trip say what the screen says: rates that can be set, whole percents, how they stand; and the cautions", () => {
  const trip: Trip = {
    ...NEW_TRIP,
    stops: [
      { name: "Coast", elevation_m: 5, temperature_C: 10 },
      { name: "Pass", elevation_m: 4600, temperature_C: -10 },
    ],
  };
  const answer = planTrip(inventedFit(5, 12), trip);
  const lines = parse(csvOfTrip(trip, answer), { columns: true }) as Record<string, string>[];
  expect(lines).toHaveLength(2);
  for (const [i, line] of lines.entries()) {
    for (const end of ["low", "high"] as const) {
      const { pump_Hz, pump_Hz_exact } = answer.stops[i]?.start[end] ?? {};
      expect(line[`${end}_pump_Hz`]).toBe(String(pump_Hz));
      expect(Number(line[`${end}_pump_Hz_exact`])).toBeCloseTo(pump_Hz_exact ?? 0, 3);
      expect(line[`${end}_one_tune_pump_Hz`]).toBe(String(answer.one[end].pump_Hz));
      expect(line[`${end}_one_tune_shift_pct`]).toBe(String(answer.one[end].shifts_pct[i]));
      const leg = answer.legs[Number(line.tune) - 1]?.tune[end];
      expect(line[`${end}_fewest_tunes_pump_Hz`]).toBe(String(leg?.pump_Hz));
      // No stop here shares its tune.
      expect(line[`${end}_fewest_tunes_shift_pct`]).toBe(String(leg?.shifts_pct[0]));
    }
    const outside = ["low", "high"].some((end) => {
      const shift = Number(line[`${end}_one_tune_shift_pct`]);
      return shift > trip.window.rich_pct || shift < -trip.window.lean_pct;
    });
    expect(line.one_tune_in_window === "no").toBe(outside);
    expect(line.fewest_tunes_in_window).toBe("yes");
    expect(line.caution).toBe(caution());
  }
  expect(lines.map(({ one_tune_in_window }) => one_tune_in_window)).toContain("no");
  expect(caution()).toContain(t.safety.notice);
  for (const line of t.safety.defer_to) expect(caution()).toContain(line);
  const { cautions, answer: told } = JSON.parse(jsonOfTrip(trip, answer, "1"));
  expect(cautions).toEqual([caution(), ...words.cautions.lines]);
  expect(told.one).toEqual(answer.one);
});
