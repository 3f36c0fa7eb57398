import { inLanguage } from "./language.ts";

export const { offline } = await inLanguage({ en: () => import("./en/offline.ts") });
