import { inLanguage } from "../language.ts";

export const { cardWords } = await inLanguage({
  en: () => import("./en/card.ts"),
  de: () => import("./de/card.ts"),
  es: () => import("./es/card.ts"),
});
