import { globSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { contrast, ENHANCED, MARK, PAIRS, TEXT } from "../../client/atlas/signs/contrast.ts";

const paper = readFileSync("client/app/paper.css", "utf8");
const [light = "", dark = "", sun = ""] = paper.split(
  /@media \(prefers-(?:color-scheme: dark|contrast: more)\)/,
);
const coloursIn = (rules: string) =>
  new Map(
    [...rules.matchAll(/--([\w-]+): (#[\da-f]{6});/g)].map(([, name, colour]) => [name, colour]),
  );

test("contrast is what WCAG defines: 21 for black on white, 1 for two alike", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 10);
  expect(contrast("#5d5140", "#5d5140")).toBe(1);
  // #767676 on white is the well-known grey that just reaches 4.5 (W3C, technique G18: 4.54).
  expect(contrast("#767676", "#ffffff")).toBeCloseTo(4.54, 2);
});

test.each([
  ["light", coloursIn(light)],
  ["dark", new Map([...coloursIn(light), ...coloursIn(dark)])],
  ["high contrast", new Map([...coloursIn(light), ...coloursIn(sun)])],
] as const)(
  "every pair of colours that meets on the page has the contrast it needs: %s",
  (_, colours) => {
    expect(colours.size).toBeGreaterThan(12);
    for (const [drawn, on, least] of PAIRS) {
      const ratio = contrast(colours.get(drawn) as string, colours.get(on) as string);
      expect(ratio, `${drawn} on ${on}`).toBeGreaterThanOrEqual(least);
    }
  },
);

test("in the theme for bright sun all text has the enhanced contrast of WCAG 2.2, 1.4.6, and marks that of text", () => {
  const colours = new Map([...coloursIn(light), ...coloursIn(sun)]);
  expect(coloursIn(sun).size).toBe(coloursIn(light).size);
  for (const [drawn, on, least] of PAIRS) {
    const ratio = contrast(colours.get(drawn) as string, colours.get(on) as string);
    const enough = least === MARK ? TEXT : ENHANCED;
    expect(ratio, `${drawn} on ${on}`).toBeGreaterThanOrEqual(enough);
  }
  expect(contrast(colours.get("ink") as string, colours.get("paper") as string)).toBeCloseTo(21, 5);
});

test("no style names left or right: text may run from either", () => {
  const physical =
    /(?:^|[\s;{])(?:(?:margin|padding|border)-(?:left|right)|left|right|border-(?:top|bottom)-(?:left|right)-radius)\s*:|(?:text-align|float|clear)\s*:\s*(?:left|right)/;
  for (const file of globSync("client/**/*.css")) {
    for (const [i, line] of readFileSync(file, "utf8").split("\n").entries()) {
      expect(physical.test(line), `${file}:${i + 1}: ${line}`).toBe(false);
    }
  }
});
