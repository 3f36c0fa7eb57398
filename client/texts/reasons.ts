import type { ReasonWords } from "./en/reasons.ts";
import { inLanguage } from "./language.ts";

export const { reasonWords } = await inLanguage<{ reasonWords: ReasonWords | null }>({
  en: () => import("./en/reasons.ts"),
  de: () => import("./de/reasons.ts"),
  es: () => import("./es/reasons.ts"),
});
