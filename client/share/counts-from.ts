import type { KeptTune } from "../../server/contract.ts";
import { locale } from "../language.ts";
import { shareWords } from "../texts/share.ts";

/** Days come without a zone. */
const day = new Intl.DateTimeFormat(locale, { dateStyle: "long", timeZone: "UTC" });

/** What an accepted tune waits for before it counts; nothing of one that counts or is held. */
export function countsFrom({
  verdict,
  counts_from,
  owners_needed,
}: Pick<KeptTune, "verdict" | "counts_from" | "owners_needed">): string | null {
  if (verdict !== "accepted") return null;
  const waits = [
    counts_from && shareWords.countsFrom(day.format(new Date(counts_from))),
    owners_needed && shareWords.countsOnce(owners_needed),
  ].filter(Boolean);
  return waits.join(" ") || null;
}
