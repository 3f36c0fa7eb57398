import type { KeptTune } from "../../server/contract.ts";
import { locale } from "../language.ts";
import { shareWords } from "../texts/share.ts";

/** Days come without a zone. */
const day = new Intl.DateTimeFormat(locale, { dateStyle: "long", timeZone: "UTC" });

/** From when an accepted tune counts that has to wait; nothing of one that counts or is held. */
export function countsFrom({
  verdict,
  counts_from,
}: Pick<KeptTune, "verdict" | "counts_from">): string | null {
  if (verdict !== "accepted" || !counts_from) return null;
  return shareWords.countsFrom(day.format(new Date(counts_from)));
}
