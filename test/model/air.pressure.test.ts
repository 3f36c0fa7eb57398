import { expect, test } from "vitest";
import {
  densityAltitude,
  geometric,
  pressureAltitude,
  standardPressure,
  stationPressureFromQnh,
} from "../../model/air.ts";
import pressure from "../reference/pressure.json" with { type: "json" };

/** QNH, pressure altitude and density altitude against handbook examples and other people's tests. */

const GAS_CONSTANT_J_kgK = 287.05287;
const { ft_m, inHg_Pa } = pressure.constants;
const { qnhToStation, densityAltitude: da } = pressure;

function off(value: number, reference: number): number {
  return Math.abs(value / reference - 1);
}

test("QNH to station pressure: the exact ICAO relation, computed elsewhere", () => {
  const rows = qnhToStation.metpyTests.rows;
  expect(rows).toHaveLength(5);
  for (const { altimeter_hPa, elev_m, icaoExact_hPa } of rows) {
    // Their elevation goes in as geopotential.
    const station = stationPressureFromQnh(altimeter_hPa, geometric(elev_m));
    expect(off(station, icaoExact_hPa)).toBeLessThan(1e-9);
  }
});

test("QNH to station pressure: MetPy's tests (Smithsonian Meteorological Tables), within their 0.3 hPa sensor term", () => {
  for (const { altimeter_hPa, elev_m, metpy_hPa } of qnhToStation.metpyTests.rows) {
    const difference_hPa = metpy_hPa - stationPressureFromQnh(altimeter_hPa, elev_m);
    expect(difference_hPa).toBeGreaterThan(0);
    expect(difference_hPa).toBeLessThan(0.36);
  }
});

test("QNH to station pressure: a wind service's own test at 1,588 m, within its 0.1 %", () => {
  const { A_hPa, elev_m, station_hPa, relTol } = qnhToStation.windsMobiTest;
  expect(off(stationPressureFromQnh(A_hPa, elev_m), station_hPa)).toBeLessThan(relTol);
});

test("QNH to station pressure: the US weather service's worked airports, within 0.4 hPa", () => {
  expect(qnhToStation.nwsWorked).toHaveLength(3);
  for (const row of qnhToStation.nwsWorked) {
    const qnh_hPa = row.A_hPa ?? (row.A_inHg * inHg_Pa) / 100;
    const station = stationPressureFromQnh(qnh_hPa, row.elev_ft * ft_m);
    expect(Math.abs(station - row.asos_hPa)).toBeLessThan(0.4);
    expect(Math.abs(station - row.inverse_hPa)).toBeLessThan(0.4);
    expect(Math.abs(standardPressure(row.elev_ft * ft_m) - row.isaAtElevation_hPa)).toBeLessThan(
      0.15,
    );
  }
});

test("six states computed elsewhere: station pressure, pressure altitude, density altitude", () => {
  expect(qnhToStation.examples).toHaveLength(6);
  for (const row of qnhToStation.examples) {
    const station = stationPressureFromQnh(row.qnh_hPa, row.z_m_geometric);
    expect(off(station * 100, row.stationPressure_Pa)).toBeLessThan(1e-11);
    expect(Math.abs(pressureAltitude(station) - row.pressureAltitude_m_geopotential)).toBeLessThan(
      1e-6,
    );
    expect(
      Math.abs(densityAltitude(row.dryDensity) - row.densityAltitude_m_geopotential),
    ).toBeLessThan(1e-3);
  }
});

test("the Pilot's Handbook of Aeronautical Knowledge, density altitude sample problem 1", () => {
  const { elev_ft, oat_F, altimeter_inHg } = da.phak;
  // The chart knows geopotential feet; its reader cannot see the difference.
  const station_hPa = stationPressureFromQnh(
    (altimeter_inHg * inHg_Pa) / 100,
    geometric(elev_ft * ft_m),
  );
  const kelvin = (oat_F - 32) / 1.8 + 273.15;
  const density = (station_hPa * 100) / (GAS_CONSTANT_J_kgK * kelvin);
  expect(Math.abs(pressureAltitude(station_hPa) / ft_m - da.phak.pressureAltitude_ft)).toBeLessThan(
    5,
  );
  expect(Math.abs(densityAltitude(density) / ft_m - da.phak.densityAltitude_ft)).toBeLessThan(100);
  expect(densityAltitude(density) / ft_m).toBeCloseTo(da.phak.computed.densityAltitude_ft, 1);
});

test("pressure altitude: the two corrections read in published handbook pages, to the foot", () => {
  const correction_ft = (inHg: number) => pressureAltitude((inHg * inHg_Pa) / 100) / ft_m;
  expect(Math.round(correction_ft(30.1))).toBe(-165);
  expect(Math.round(correction_ft(29.7))).toBe(205);
});

test("pressure altitude: the whole conversion column, as computed elsewhere", () => {
  const { rows } = da.faaPressureAltitudeConversion;
  expect(rows).toHaveLength(9);
  for (const { inHg, ft } of rows) {
    expect(pressureAltitude((inHg * inHg_Pa) / 100) / ft_m).toBeCloseTo(ft, 6);
  }
});

test("QNH taken for station pressure at 5,577 ft overstates density by over a fifth", () => {
  const elevation_m = 5577 * ft_m;
  const qnh_hPa = (30.11 * inHg_Pa) / 100;
  expect(qnh_hPa / stationPressureFromQnh(qnh_hPa, elevation_m) - 1).toBeCloseTo(0.227, 2);
});
