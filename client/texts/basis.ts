import { inLanguage } from "../language.ts";

export const { basisWords } = await inLanguage({
  en: () => import("./en/basis.ts"),
  de: () => import("./de/basis.ts"),
  es: () => import("./es/basis.ts"),
});
