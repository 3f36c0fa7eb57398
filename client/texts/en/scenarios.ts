/** What the study's scenarios are called, by their ids. In English they are shown as the study's report says it. */
export type ScenarioTitles = Record<string, string>;

export const scenarioTitles: ScenarioTitles | null = null;
