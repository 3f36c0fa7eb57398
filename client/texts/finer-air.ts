import { inLanguage } from "../language.ts";

export const { finerAir } = await inLanguage({
  en: () => import("./en/finer-air.ts"),
  de: () => import("./de/finer-air.ts"),
  es: () => import("./es/finer-air.ts"),
});
