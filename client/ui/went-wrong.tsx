import type { ComponentChildren } from "preact";
import type { FieldError } from "../../model/tune.ts";
import type { Problem } from "../../server/contract.ts";
import { AtlasProblem } from "../base/answers/api.ts";
import { t } from "../texts/app.ts";
import { refusalWords } from "../texts/refusals.ts";
import { format, ofUnit } from "../units.ts";
import { InEnglish } from "./in-english.tsx";

/** What went wrong, in the page's language; in English alone where the atlas says what has no words here. */
export function whatWentWrong(error: unknown): ComponentChildren {
  return error instanceof AtlasProblem ? refusalOf(error.problem) : (error as Error).message;
}

/** The same, and what of it each field is to blame for. */
export function allThatWentWrong(error: unknown): ComponentChildren[] {
  return error instanceof AtlasProblem ? allOfRefusal(error.problem) : [whatWentWrong(error)];
}

export function allOfRefusal(problem: Problem): ComponentChildren[] {
  return [refusalOf(problem), ...(problem.errors ?? []).map((one) => namedFieldSentence(one))];
}

function refusalOf({ status, detail, title }: Problem): ComponentChildren {
  const said = refusalWords?.statuses[status] ?? (status >= 500 && refusalWords?.failed);
  return said || <InEnglish>{detail ?? title}</InEnglish>;
}

/** A bound of the schema that a figure lies beyond. */
export interface BeyondLimit extends FieldError {
  limit?: number | undefined;
}

/** What is wrong with a field, where its name stands beside it. */
export function fieldSentence(error: BeyondLimit): ComponentChildren {
  return sentenceOf(error) ?? <InEnglish>{error.message}</InEnglish>;
}

/** The same with the field's name. */
export function namedFieldSentence(error: BeyondLimit): ComponentChildren {
  const [part = "", ...rest] = error.field.split(".");
  const name = refusalWords?.fields[rest.at(-1) ?? part];
  const said = sentenceOf(error);
  if (!said || !name || !refusalWords) return <InEnglish>{error.message}</InEnglish>;
  const whole = part === "low" || part === "high" ? `${t[part]}, ${name}` : name;
  return refusalWords.of(whole, said);
}

function sentenceOf({ field, code, limit }: BeyondLimit): string | undefined {
  const name = field.split(".").at(-1) ?? "";
  if (code === "custom") return refusalWords?.together[name];
  return refusalWords?.codes[code]?.(limit === undefined ? "" : withUnit(name, limit));
}

const UNITS: Record<string, string> = {
  ...{ Hz: "Hz", rpm: t.rpm, ppm: "ppm", hPa: "hPa", pct: "%", C: "°C", m: "m" },
  ...{ uL: "µL", V: "V", kW: "kW", lat: "°", lon: "°" },
};

/** In the unit that the field's name ends with. */
function withUnit(name: string, value: number): string {
  const decimals = `${value}`.split(".")[1]?.length ?? 0;
  return ofUnit(format(value, decimals), UNITS[name.split("_").at(-1) ?? ""] ?? "").trim();
}
