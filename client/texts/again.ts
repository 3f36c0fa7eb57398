import { inLanguage } from "./language.ts";

export const { again } = await inLanguage({ en: () => import("./en/again.ts") });
