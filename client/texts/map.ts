import { inLanguage } from "../language.ts";

export const { mapWords } = await inLanguage({
  en: () => import("./en/map.ts"),
  de: () => import("./de/map.ts"),
  es: () => import("./es/map.ts"),
});
