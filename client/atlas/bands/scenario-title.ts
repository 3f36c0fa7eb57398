import { unbroken } from "../../base/unbroken.ts";
import { scenarioTitles } from "../../texts/scenarios.ts";
import type { StudyScenario } from "./report.ts";

/** What a scenario is called in the page's language. */
export function scenarioTitle({ id, title }: StudyScenario): string {
  return scenarioTitles?.[id] ?? unbroken(title);
}
