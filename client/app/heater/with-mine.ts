import { type Facts, factsOf } from "./facts.ts";
import type { MyHeater } from "./my-heater.ts";

type Known<H> = { [K in keyof H]?: H[K] | undefined };

/** A view's own heater with what is known of mine in place of what was typed there. */
export function withMine<H extends Facts>(
  typed: H,
  mine: MyHeater | null | undefined,
  known: Known<H> = {},
): H {
  return mine ? { ...typed, ...givenOf(mine, known) } : typed;
}

/** What a view keeps of its heater: where mine is known, that stays in the logbook and what was typed stays as it was. */
export function withoutMine<H extends Facts>(
  next: H,
  typed: H,
  mine: MyHeater | null | undefined,
  known: Known<H> = {},
): H {
  if (!mine) return next;
  const names = Object.keys(givenOf(mine, known)) as (keyof H)[];
  return { ...next, ...Object.fromEntries(names.map((name) => [name, typed[name]])) };
}

function givenOf<H>({ heater }: MyHeater, known: Known<H>): Partial<H> {
  const all = Object.entries({ ...factsOf(heater), ...known });
  return Object.fromEntries(all.filter(([, value]) => value !== undefined)) as Partial<H>;
}
