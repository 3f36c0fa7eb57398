import { CLEAN } from "./clean.ts";
import { MISTAKES } from "./mistakes.ts";
import { POOLING } from "./pooling.ts";
import type { Scenario } from "./scenario.ts";
import { SPREAD_AND_AIR } from "./spread-and-air.ts";
import { TRADE } from "./trade.ts";

/** Every scenario of the study, in the order in which it is reported. */
export const SCENARIOS: readonly Scenario[] = [
  ...CLEAN,
  ...MISTAKES,
  ...SPREAD_AND_AIR,
  ...POOLING,
  ...TRADE,
];

/** @throws RangeError when there is none of that id */
export function scenarioOf(id: string): Scenario {
  const scenario = SCENARIOS.find((s) => s.id === id);
  if (!scenario) throw new RangeError(`There is no scenario "${id}".`);
  return scenario;
}
