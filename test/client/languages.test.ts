import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { StudyReport } from "../../client/atlas/bands/report.ts";
import { LANGUAGES } from "../../client/language.ts";
import { t as german } from "../../client/texts/de/app.ts";
import {
  asideWords as germanAside,
  reasonWords as germanReasons,
} from "../../client/texts/de/reasons.ts";
import { scenarioTitles as germanScenarios } from "../../client/texts/de/scenarios.ts";
import { t as english } from "../../client/texts/en/app.ts";
import { asideWords as englishAside } from "../../client/texts/en/reasons.ts";
import { shareWords } from "../../client/texts/en/share.ts";
import { t as spanish } from "../../client/texts/es/app.ts";
import {
  asideWords as spanishAside,
  reasonWords as spanishReasons,
} from "../../client/texts/es/reasons.ts";
import { scenarioTitles as spanishScenarios } from "../../client/texts/es/scenarios.ts";
import { ACCEPTED_MEANS, SAFETY } from "../../model/safety.ts";
import { USUAL_REASONS } from "../../model/steward-reasons.ts";

const FOLDER = "client/texts";
const sections = readdirSync(`${FOLDER}/en`);
const others = LANGUAGES.filter((language) => language !== "en");

/** A catalogue by the path of each word: texts as they are, functions by their number of arguments and what they say. */
async function wordsOf(language: string, section: string): Promise<Map<string, string | number>> {
  const found = new Map<string, string | number>();
  const walk = (value: unknown, path: string) => {
    if (typeof value === "function") {
      found.set(`${path}()`, value.length);
      found.set(`${path} says`, String(said(value as (...all: never[]) => unknown)));
    } else if (typeof value === "object" && value !== null) {
      for (const [key, inner] of Object.entries(value)) walk(inner, `${path}.${key}`);
    } else found.set(path, value as string);
  };
  const words = await import(/* @vite-ignore */ `../../${FOLDER}/${language}/${section}`);
  for (const [name, value] of Object.entries(words)) walk(value, name);
  return found;
}

/** A sentence with something in its blanks; those that take other things than texts and numbers are looked at by their types alone. */
function said(sentence: (...all: never[]) => unknown): unknown {
  try {
    return sentence(...(Array(sentence.length).fill(2) as never[]));
  } catch {
    return "";
  }
}

/** What other languages write as English does: names, units, figures, commands, international words. */
const SAME =
  /^(Hypsotune|Theil–Sen|Huber|Atlas|Start|CSV|QNH|English|–|unit|rpm|[a-bρ]|Band|Data|MIT|Error, %|Band, %|CO, ppm|Name|\d+ s|GeoNames \(CC BY 4\.0\), Natural Earth|npm run .*|\/api\/.*)$/;
/** Nothing but marks, figures, blanks and units. */
const NO_WORDS = /^(?:[\d\s.,:;·%±−+()/?<≥-]|ppm|rpm|kW|Hz|kg\/m³|km|min|h|°C|°F|m|ft|MB|L|CSV)*$/;

test("every section has all three languages, with the same words and the same blanks", async () => {
  const written = Object.fromEntries(
    LANGUAGES.map((language) => [language, readdirSync(`${FOLDER}/${language}`)]),
  );
  for (const language of others) expect(written[language], language).toEqual(sections);
  for (const section of sections.filter(
    (name) => !["reasons.ts", "refusals.ts", "scenarios.ts"].includes(name),
  )) {
    const shape = (words: Map<string, string | number>) =>
      [...words].map(([path, value]) => (path.endsWith("()") ? `${path} takes ${value}` : path));
    const expected = shape(await wordsOf("en", section));
    for (const language of others) {
      expect(shape(await wordsOf(language, section)), `${language}/${section}`).toEqual(expected);
    }
  }
});

test("nothing is left in English", async () => {
  for (const section of sections) {
    const inEnglish = await wordsOf("en", section);
    for (const language of others) {
      const left = [...(await wordsOf(language, section))].filter(
        ([path, value]) =>
          typeof value === "string" &&
          value === inEnglish.get(path) &&
          !SAME.test(value) &&
          !NO_WORDS.test(value),
      );
      expect(left, `${language}/${section}`).toEqual([]);
    }
  }
});

test("every section is fetched in all three languages", () => {
  for (const file of readdirSync(FOLDER).filter((name) => name.endsWith(".ts"))) {
    const text = readFileSync(`${FOLDER}/${file}`, "utf8");
    for (const language of LANGUAGES) expect(text, file).toContain(`"./${language}/${file}"`);
  }
});

test("the cautions on the page are those of the model, all of them in every language", () => {
  const { notice, not_for, defer_to } = english.safety;
  expect({ notice, not_for, defer_to }).toEqual(SAFETY);
  expect(shareWords.acceptedMeans).toBe(ACCEPTED_MEANS);
  const sentences = (text: string) => text.split(/[.?!](?:\s|$)/).length;
  for (const { safety } of [english, german, spanish])
    expect(safety.notice.indexOf(`${safety.title}. `)).toBe(0);
  for (const { safety } of [german, spanish]) {
    expect(safety.not_for).toHaveLength(SAFETY.not_for.length);
    expect(safety.defer_to).toHaveLength(SAFETY.defer_to.length);
    expect(sentences(safety.notice)).toBe(sentences(SAFETY.notice));
  }
});

test("every reason that screening gives has words in German and Spanish", () => {
  const sources = ["bounds", "settings", "site", "slips"]
    .map((name) => readFileSync(`model/screen/${name}.ts`, "utf8"))
    .join("\n");
  const coded = [
    ...sources.matchAll(
      /(?:code: |\["|repaired\(\s*)"?(?!(?:pump_Hz|fan_rpm)")([a-z]+_[a-zA-Z_]+)"/g,
    ),
  ].map(([, code]) => code as string);
  expect(new Set(coded).size).toBeGreaterThan(15);
  for (const { reasons } of [germanReasons, spanishReasons]) {
    for (const code of coded) expect(Object.keys(reasons)).toContain(code);
  }
});

test("every usual reason of a steward has words in German and Spanish", () => {
  const usual = Object.values(USUAL_REASONS).flatMap((reasons) => Object.keys(reasons));
  expect(usual.length).toBeGreaterThan(8);
  for (const { reasons } of [germanReasons, spanishReasons]) {
    for (const code of usual) expect(Object.keys(reasons)).toContain(code);
  }
});

test("every reason for which a tune does not count has words in every language", () => {
  const source = ["server/aside-reason.ts", "model/fit/standing.ts"]
    .map((file) => readFileSync(file, "utf8"))
    .join("\n");
  const codes = [
    ...new Set([...source.matchAll(/"((?:far|held)_[a-z_]+)"/g)].map(([, code]) => code as string)),
  ];
  expect(codes.length).toBeGreaterThan(2);
  for (const words of [englishAside, germanAside, spanishAside]) {
    expect(Object.keys(words).sort()).toEqual(codes.toSorted());
  }
});

test("every scenario of the study has a title in every language, with its figures", () => {
  const { scenarios } = JSON.parse(
    readFileSync("client/atlas/bands/report.json", "utf8"),
  ) as StudyReport;
  expect(scenarios.length).toBeGreaterThan(50);
  const ids = scenarios.map(({ id }) => id).toSorted();
  const figures = (title: string) =>
    title
      .replace(/(\d)[.,](?=\d)/g, "$1")
      .match(/\d+/g)
      ?.toSorted();
  for (const titles of [germanScenarios, spanishScenarios]) {
    expect(Object.keys(titles).toSorted()).toEqual(ids);
    expect(new Set(Object.values(titles)).size).toBe(ids.length);
    for (const { id, title } of scenarios)
      expect(figures(titles[id] ?? ""), id).toEqual(figures(title));
  }
});
