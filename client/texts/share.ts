import { inLanguage } from "../language.ts";

export const { shareWords } = await inLanguage({
  en: () => import("./en/share.ts"),
  de: () => import("./de/share.ts"),
  es: () => import("./es/share.ts"),
});
