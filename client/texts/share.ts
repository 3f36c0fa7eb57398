import { inLanguage } from "./language.ts";

export const { shareWords } = await inLanguage({ en: () => import("./en/share.ts") });
