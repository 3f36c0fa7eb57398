import { FIT_SETTINGS } from "../../model/fit/settings.ts";
import { inLanguage } from "./language.ts";

const words = await inLanguage({
  en: () => import("./en/method.ts"),
  de: () => import("./de/method.ts"),
  es: () => import("./es/method.ts"),
});

export const m = words.m(FIT_SETTINGS);
