import { inLanguage } from "../language.ts";

export const { poisoningStudy } = await inLanguage({
  en: () => import("./en/poisoning-study.ts"),
  de: () => import("./de/poisoning-study.ts"),
  es: () => import("./es/poisoning-study.ts"),
});
