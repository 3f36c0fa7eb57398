import { inLanguage } from "../language.ts";
import type { RefusalWords } from "./en/refusals.ts";

export const { refusalWords } = await inLanguage<{ refusalWords: RefusalWords | null }>({
  en: () => import("./en/refusals.ts"),
  de: () => import("./de/refusals.ts"),
  es: () => import("./es/refusals.ts"),
});
