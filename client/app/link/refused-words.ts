import type { Question } from "../../base/question.ts";
import { t } from "../../texts/app.ts";
import { cardWords } from "../../texts/card.ts";
import { finerAir } from "../../texts/finer-air.ts";
import { linkWords as words } from "../../texts/link.ts";
import { format, formatIn, ofUnit, toShown } from "../../units.ts";
import { atlasUnits } from "./atlas-units.ts";
import type { CardChoice } from "./card-choice.ts";
import type { Refusal } from "./values.ts";

/** Which value of a link was not taken, and what stands in its place. */
export function refusedSentence(
  { name, given }: Refusal,
  { question, card }: { question: Question; card: CardChoice },
  asks: "question" | "card",
): string {
  const { elevation, temperature } = atlasUnits();
  const kilowatts = `${format(question.heat_kW, question.heat_kW % 1 ? 1 : 0)} kW`;
  const span = (values: readonly [number, number], unit: typeof elevation) =>
    ofUnit(values.map((value) => format(toShown(value, unit))).join("–"), unit.name);
  const instead: Record<string, string> = {
    heat_kW: words.instead(kilowatts),
    elevation_m: words.instead(
      asks === "card"
        ? span(card.elevation_m, elevation)
        : formatIn(question.site.elevation_m, elevation),
    ),
    low_fan_rpm: words.usual,
    high_fan_rpm: words.usual,
    end: words.instead(t.low),
    units: words.yourUnits,
    ...(asks === "card" && {
      temperature_C: words.instead(span(card.temperature_C, temperature)),
      paper: words.instead(cardWords.papers[card.paper]),
    }),
  };
  return words.refused(labelOf(name), given, instead[name] ?? words.leftOut);
}

/** A value's name as the fields of the page have it. */
function labelOf(name: string): string {
  const labels: Record<string, string> = {
    place: t.site.place,
    elevation_m: t.site.elevation,
    temperature_C: t.air.temperature,
    pressure_hPa: `${finerAir.pressure}, ${finerAir.station}`,
    qnh_hPa: `${finerAir.pressure}, ${finerAir.qnh}`,
    humidity_pct: finerAir.humidity,
    heat_kW: t.heater.heat,
    low_fan_rpm: t.heater.lowFan,
    high_fan_rpm: t.heater.highFan,
    dose_uL: t.heater.dose,
    paper: cardWords.fields.paper,
    ...words.labels,
  };
  return labels[name] ?? name;
}
