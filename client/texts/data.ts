import { inLanguage } from "../language.ts";

export const { dataWords } = await inLanguage({
  en: () => import("./en/data.ts"),
  de: () => import("./de/data.ts"),
  es: () => import("./es/data.ts"),
});
