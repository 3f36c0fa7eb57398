import { inLanguage } from "../language.ts";

export const { t } = await inLanguage({
  en: () => import("./en/app.ts"),
  de: () => import("./de/app.ts"),
  es: () => import("./es/app.ts"),
});
