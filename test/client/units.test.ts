import { expect, test } from "vitest";
import {
  format,
  formatDown,
  formatFineRate,
  formatIn,
  formatPercent,
  formatRate,
  formatTenths,
  formatUp,
  isBegun,
  parseNumber,
  toShown,
  toSi,
  UNITS,
} from "../../client/units.ts";

test("units convert as the standards define them, both ways", () => {
  // NIST SP 811 (2008), appendix B.8: foot, degree Fahrenheit, inch of mercury (conventional).
  const [, ft] = UNITS.elevation;
  const [, fahrenheit] = UNITS.temperature;
  const [, inHg] = UNITS.pressure;
  expect(toSi(1, ft)).toBeCloseTo(0.3048, 12);
  expect(toSi(-40, fahrenheit)).toBeCloseTo(-40, 12);
  expect(toSi(212, fahrenheit)).toBeCloseTo(100, 12);
  expect(toSi(1, inHg)).toBeCloseTo(33.86389, 4);
  for (const unit of Object.values(UNITS).flat()) {
    for (const value of [-500, 0, 0.37, 6000]) {
      expect(toSi(toShown(value, unit), unit)).toBeCloseTo(value, 9);
    }
  }
});

test("numbers are read with point or comma, any minus sign and spaces around; nothing else is a number", () => {
  expect(parseNumber(" 4,2 ")).toBe(4.2);
  expect(parseNumber("−9")).toBe(-9);
  expect(parseNumber("–9.5")).toBe(-9.5);
  expect(parseNumber(".5")).toBe(0.5);
  // Hyphens, dashes and signs that keyboards, their corrections and copied texts bring.
  for (const minus of ["-", "−", "–", "—", "‐", "‑", "﹣", "－"]) {
    expect([minus, parseNumber(`${minus}9,5`), parseNumber(`${minus} 9`)]).toEqual([
      minus,
      -9.5,
      -9,
    ]);
    expect([minus, isBegun(minus)]).toEqual([minus, true]);
    expect(parseNumber(`1${minus}2`)).toBe(null);
  }
  for (const text of ["", "-1", "x", "--"]) expect([text, isBegun(text)]).toEqual([text, false]);
  for (const text of ["", "-", "1e3", "1,000,5", "1.000.5", "12 m", "0x10", "Infinity", "NaN"]) {
    expect(parseNumber(text), text).toBe(null);
  }
});

test("thousands may be parted as the page's language does it, or by spaces", () => {
  expect(parseNumber("1,700")).toBe(1700);
  expect(parseNumber("1,000.5")).toBe(1000.5);
  expect(parseNumber("-1 700")).toBe(-1700);
  expect(parseNumber("1.700")).toBe(1.7);
  const german = { thousands: ".", decimal: "," };
  expect(parseNumber("1.700", german)).toBe(1700);
  expect(parseNumber("12.345,5", german)).toBe(12345.5);
  expect(parseNumber("1,1", german)).toBe(1.1);
  expect(parseNumber("1.1", german)).toBe(1.1);
});

test("figures are written with their thousands parted and the decimals of their unit", () => {
  expect(format(3097)).toBe("3,097");
  expect(format(1, 2)).toBe("1.00");
  expect(formatIn(3097, UNITS.elevation[1])).toBe("10,161\u00a0ft");
});

test("what is below nothing carries a true minus sign, and reads back; what rounds to nothing carries none", () => {
  expect(formatIn(-500, UNITS.elevation[0])).toBe("−500\u00a0m");
  expect(parseNumber(format(-1234.5, 1))).toBe(-1234.5);
  expect(format(-0.04, 1)).toBe("0.0");
});

test("pump rates: those set as they are, a whole step with the step's decimals; those nobody sets one decimal finer", () => {
  expect([1, 1.1, 4.2, 1.05, 0.955].map((rate) => formatRate(rate))).toEqual([
    ...["1.0", "1.1", "4.2", "1.05", "0.955"],
  ]);
  expect([1, 1.1].map((rate) => formatRate(rate, 0.05))).toEqual(["1.00", "1.10"]);
  expect([0.9549, 1.1234, 2].map((rate) => formatFineRate(rate))).toEqual(["0.95", "1.12", "2.00"]);
  expect(formatFineRate(1.12345, 0.05)).toBe("1.123");
});

test("percentages whole, half of one away from 0; what is needed rounded up, what is left rounded down", () => {
  expect([12.5, 12.4, -12.5, -0.4].map(formatPercent)).toEqual(["13", "12", "−13", "0"]);
  expect([formatUp(10.01, 0.1), formatUp(10, 0.1), formatUp(3.01, 1)]).toEqual([
    ...["10.1", "10.0", "4"],
  ]);
  expect([formatDown(0.19, 0.1), formatDown(0.3, 0.1), formatDown(9.9, 1)]).toEqual([
    ...["0.1", "0.3", "9"],
  ]);
  // 0.1 + 0.2 is 0.30000000000000004.
  expect([formatUp(0.1 + 0.2, 0.1), formatDown(3 * 0.1, 0.1)]).toEqual(["0.3", "0.3"]);
  expect([12, 12.5, 12.34].map(formatTenths)).toEqual(["12", "12.5", "12.3"]);
});
