import { inLanguage } from "../language.ts";

export const { coWords } = await inLanguage({
  en: () => import("./en/co.ts"),
  de: () => import("./de/co.ts"),
  es: () => import("./es/co.ts"),
});
