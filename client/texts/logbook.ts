import { inLanguage } from "../language.ts";

export const { logbookWords } = await inLanguage({
  en: () => import("./en/logbook.ts"),
  de: () => import("./de/logbook.ts"),
  es: () => import("./es/logbook.ts"),
});
