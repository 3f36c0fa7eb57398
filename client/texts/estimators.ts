import { inLanguage } from "../language.ts";

const { estimators } = await inLanguage({
  en: () => import("./en/estimators.ts"),
  de: () => import("./de/estimators.ts"),
  es: () => import("./es/estimators.ts"),
});

/** An estimator of the study in the page's language; one that has no name there as the report calls it. */
export const estimatorName = (name: string) => estimators.names[name] ?? name;
/** The same where there is little room. */
export const shortEstimatorName = (name: string) => estimators.short[name] ?? estimatorName(name);
