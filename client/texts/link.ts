import { inLanguage } from "../language.ts";

export const { linkWords } = await inLanguage({
  en: () => import("./en/link.ts"),
  de: () => import("./de/link.ts"),
  es: () => import("./es/link.ts"),
});
