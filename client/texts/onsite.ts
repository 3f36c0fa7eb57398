import { inLanguage } from "./language.ts";

export const { onsite } = await inLanguage({ en: () => import("./en/onsite.ts") });
