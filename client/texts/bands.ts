import { inLanguage } from "./language.ts";

export const { b } = await inLanguage({ en: () => import("./en/bands.ts") });
