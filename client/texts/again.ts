import { inLanguage } from "../language.ts";

export const { again } = await inLanguage({
  en: () => import("./en/again.ts"),
  de: () => import("./de/again.ts"),
  es: () => import("./es/again.ts"),
});
