import { inLanguage } from "../language.ts";

export const { sweepStudy } = await inLanguage({
  en: () => import("./en/sweep-study.ts"),
  de: () => import("./de/sweep-study.ts"),
  es: () => import("./es/sweep-study.ts"),
});
