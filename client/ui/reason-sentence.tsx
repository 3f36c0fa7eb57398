import type { ComponentChildren } from "preact";
import type { Compared } from "../../model/compare.ts";
import type { Reason } from "../../server/contract.ts";
import { t } from "../texts/app.ts";
import { reasonWords } from "../texts/reasons.ts";
import { format, formatPercent, formatRate, ofUnit } from "../units.ts";
import { InEnglish } from "./in-english.tsx";

const UNIT_OF: Record<string, [unit: string, decimals: number]> = {
  fan_rpm: [t.rpm, 0],
  dose_uL: ["µL", 1],
  elevation_m: ["m", 0],
  temperature_C: ["°C", 1],
  pressure_hPa: ["hPa", 1],
};

/** A suggestion with its unit. */
export function withUnit(field: string, value: number): string {
  if (field.endsWith("pump_Hz")) return `${formatRate(value)} Hz`;
  const [unit, decimals] = UNIT_OF[field.split(".").at(-1) ?? ""] ?? ["", 2];
  const places = Number.isInteger(value) ? 0 : decimals;
  return ofUnit(format(value, places), unit);
}

/** A reason in the page's language, by its code; one without words of its own is shown as the atlas says it. */
export function reasonSentence({ code, field, sentence, suggestion }: Reason): ComponentChildren {
  const say = reasonWords?.reasons[code];
  if (!say) return <InEnglish>{sentence}</InEnglish>;
  return say(figureOf(field), suggestion === undefined ? "" : withUnit(field, suggestion));
}

/** How one end lies beside the fit. */
export function comparedSentence({ end, mixture_shift_pct, sentence }: Compared) {
  if (!reasonWords) return <InEnglish>{sentence}</InEnglish>;
  const way = mixture_shift_pct > 0 ? "rich" : "lean";
  return reasonWords.compared(t[end], formatPercent(Math.abs(mixture_shift_pct)), way);
}

/** "low.pump_Hz" in words. */
function figureOf(field: string): string {
  const [end, quantity] = field.split(".") as ["low" | "high", "pump_Hz" | "fan_rpm"];
  const name = reasonWords?.quantities[quantity];
  return name ? `${t[end]}, ${name}` : "";
}
