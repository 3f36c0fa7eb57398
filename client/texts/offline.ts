import { inLanguage } from "../language.ts";

export const { offline } = await inLanguage({
  en: () => import("./en/offline.ts"),
  de: () => import("./de/offline.ts"),
  es: () => import("./es/offline.ts"),
});
