import { inLanguage } from "../language.ts";

export const { scalingWords } = await inLanguage({
  en: () => import("./en/scaling.ts"),
  de: () => import("./de/scaling.ts"),
  es: () => import("./es/scaling.ts"),
});
