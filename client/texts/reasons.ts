import { inLanguage } from "../language.ts";
import type { Figure, ReasonWords } from "./en/reasons.ts";

export type { Figure } from "./en/reasons.ts";

export const { reasonWords, asideWords } = await inLanguage<{
  reasonWords: ReasonWords | null;
  asideWords: Record<string, (figure: Figure) => string>;
}>({
  en: () => import("./en/reasons.ts"),
  de: () => import("./de/reasons.ts"),
  es: () => import("./es/reasons.ts"),
});
