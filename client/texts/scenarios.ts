import { inLanguage } from "../language.ts";
import type { ScenarioTitles } from "./en/scenarios.ts";

export const { scenarioTitles } = await inLanguage<{ scenarioTitles: ScenarioTitles | null }>({
  en: () => import("./en/scenarios.ts"),
  de: () => import("./de/scenarios.ts"),
  es: () => import("./es/scenarios.ts"),
});
