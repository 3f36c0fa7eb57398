import { inLanguage } from "../language.ts";

export const { b } = await inLanguage({
  en: () => import("./en/bands.ts"),
  de: () => import("./de/bands.ts"),
  es: () => import("./es/bands.ts"),
});
