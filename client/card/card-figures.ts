import { ELEVATION_RANGE_m } from "../../model/air.ts";
import { type CardTable, cardTable } from "../../model/card/card-table.ts";
import { type Nomogram, nomogram } from "../../model/card/nomogram.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { CardChoice, CardUnits, Span } from "../app/link/card-choice.ts";
import { toShown, toSi, type Unit } from "../units.ts";
import { finerSteps, roundSteps } from "./round-steps.ts";

/** What a card of A6 holds and a cold night's eye still parts. */
const MOST_ROWS = 10;
const MOST_COLUMNS = 6;
const MOST_TICKS = 75;

/** Size of the nomogram's scales, mm on A6; larger papers enlarge it. */
export const SCALES = { width: 66, height: 56, tick_gap: 1, label_gap: 3.6 } as const;

/** All figures of a card. */
export interface CardFigures {
  elevations_m: number[];
  temperatures_C: number[];
  table: CardTable;
  drawing: Nomogram;
}

/** The card's figures at values round in the units shown, or null while its numbers cannot stand together. */
export function cardFigures(
  fit: PublishedFit,
  choice: CardChoice,
  units: CardUnits,
): CardFigures | null {
  const rows = gridOf(choice.elevation_m, units.elevation, MOST_ROWS, ELEVATION_RANGE_m);
  const columns = gridOf(choice.temperature_C, units.temperature, MOST_COLUMNS);
  const grid = { elevations_m: rows.values, temperatures_C: columns.values };
  const scales = { elevations_m: rows.ticks, temperatures_C: columns.ticks };
  try {
    return {
      ...grid,
      table: cardTable(fit, choice.heater, grid),
      drawing: nomogram(fit, choice.heater, scales, SCALES),
    };
  } catch {
    return null;
  }
}

/** Values of a range that are round in the unit shown, in SI; those beyond what the atlas speaks of are left out. */
function gridOf([from, to]: Span, unit: Unit, most: number, allowed?: Span) {
  const steps = roundSteps(toShown(from, unit), toShown(to, unit), most);
  const isAllowed = (value: number) =>
    !allowed || (value >= allowed[0] - 1e-6 && value <= allowed[1] + 1e-6);
  const si = (shown: number[]) => shown.map((value) => toSi(value, unit)).filter(isAllowed);
  const values = si(steps.values);
  const labelled = new Set(steps.values);
  const shown = finerSteps(steps, MOST_TICKS);
  const ticks = shown
    .map((value) => ({ value: toSi(value, unit), labelled: labelled.has(value) }))
    .filter(({ value }) => isAllowed(value));
  return { values, ticks };
}
