import { inLanguage } from "../language.ts";

export const { trip } = await inLanguage({
  en: () => import("./en/trip.ts"),
  de: () => import("./de/trip.ts"),
  es: () => import("./es/trip.ts"),
});
