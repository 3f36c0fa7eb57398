import { z } from "zod";
import { tidyName } from "../../base/stop-schema.ts";

/** A value of an address that was not taken: its name there, and what was given, fit to be shown. */
export interface Refusal {
  name: string;
  given: string;
}

/** Nobody's answer needs more; what is longer was made to harm. */
const LONGEST = 12_000;
const LONGEST_SHOWN = 30;

/**
 * What an address holds, each value judged by itself: a bad one is refused and the others stand. Names that this page does
 * not know are passed over, since messengers put their own there.
 */
export function readValues<S extends Record<string, z.ZodType>>(
  query: string,
  schemas: S,
): { values: { [K in keyof S]?: z.infer<S[K]> }; refused: Refusal[] } {
  const values: { [K in keyof S]?: z.infer<S[K]> } = {};
  const refused: Refusal[] = [];
  const given = new URLSearchParams(query.slice(0, LONGEST));
  for (const name of Object.keys(schemas) as (keyof S & string)[]) {
    const text = given.get(name);
    if (text === null) continue;
    const judged = schemas[name]?.safeParse(text);
    if (judged?.success) values[name] = judged.data as z.infer<S[typeof name]>;
    else refused.push({ name, given: shortened(tidyName(text)) });
  }
  return { values, refused };
}

/** A number as written in an address: digits and a point, nothing that only looks like one. */
export const numberIn = <T extends z.ZodType<number, number>>(schema: T) =>
  z
    .string()
    .regex(/^-?\d{1,9}(\.\d{1,6})?$/)
    .transform(Number)
    .pipe(schema);

function shortened(text: string): string {
  const letters = [...text];
  return letters.length > LONGEST_SHOWN ? `${letters.slice(0, LONGEST_SHOWN).join("")}…` : text;
}
