import { inLanguage } from "./language.ts";

export const { t } = await inLanguage({ en: () => import("./en/app.ts") });
