import { inLanguage } from "../language.ts";

export const { onsite } = await inLanguage({
  en: () => import("./en/onsite.ts"),
  de: () => import("./de/onsite.ts"),
  es: () => import("./es/onsite.ts"),
});
