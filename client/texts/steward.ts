import { inLanguage } from "../language.ts";

export const { stewardWords } = await inLanguage({
  en: () => import("./en/steward.ts"),
  de: () => import("./de/steward.ts"),
  es: () => import("./es/steward.ts"),
});
