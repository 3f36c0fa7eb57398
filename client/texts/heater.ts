import { inLanguage } from "../language.ts";

export const { heaterWords } = await inLanguage({
  en: () => import("./en/heater.ts"),
  de: () => import("./de/heater.ts"),
  es: () => import("./es/heater.ts"),
});
