import { inLanguage } from "../language.ts";

export const { styleWords } = await inLanguage({
  en: () => import("./en/style.ts"),
  de: () => import("./de/style.ts"),
  es: () => import("./es/style.ts"),
});
