import { inLanguage } from "./language.ts";

export const { scalingWords } = await inLanguage({ en: () => import("./en/scaling.ts") });
