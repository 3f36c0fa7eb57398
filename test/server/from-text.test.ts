import { expect, test } from "vitest";
import { z } from "zod";
import { fromText } from "../../server/contract/from-text.ts";

const number = fromText(z.number());

/** One pass over them takes a moment; a pattern of which two parts can take the same digit needs more than an hour. */
const DIGITS = "1".repeat(1_000_000);

test("a long text that is no number is refused in one pass, wherever its digits stand", () => {
  for (const text of [
    `${DIGITS}x`,
    `-${DIGITS}x`,
    `1.${DIGITS}x`,
    `.${DIGITS}x`,
    `${DIGITS}.${DIGITS}x`,
    `1e${DIGITS}x`,
    `${" ".repeat(DIGITS.length)}x`,
  ])
    expect(number.safeParse(text).success).toBe(false);
});

test("strict decimal text becomes a number, anything else is left to the schema", () => {
  for (const [text, value] of [
    ["5", 5],
    [" +1.5 ", 1.5],
    ["-.5", -0.5],
    ["2.", 2],
    ["1e-3", 0.001],
  ] as const)
    expect(number.parse(text)).toBe(value);
  for (const text of ["", " ", "5 kW", "0x10", "1,5", "1e", ".", "Infinity", "--1"])
    expect(number.safeParse(text).success, text).toBe(false);
});
