import type { CardCell } from "../../model/card/card-table.ts";
import type { End } from "../../model/end.ts";
import { isOnStep } from "../../model/rounding.ts";
import type { CardUnits } from "../app/link/card-choice.ts";
import { t } from "../texts/app.ts";
import { cardWords as words } from "../texts/card.ts";
import { format, formatRate, formatUp, toShown, type Unit } from "../units.ts";
import type { CardFigures } from "./card-figures.ts";

/** One end's start rates by elevation and night temperature, with the reach of the bands row by row. */
export function RateTable(props: {
  end: End;
  figures: CardFigures;
  units: CardUnits;
  step_Hz: number | undefined;
}) {
  const { end, figures, units, step_Hz } = props;
  const { temperatures_C, table } = figures;
  const { fan_rpm, rows } = table[end];
  const levels = rows[0]?.reach.map(({ level }) => level) ?? [];
  return (
    <table data-end={end}>
      <caption>{words.end(t[end], format(fan_rpm))}</caption>
      <thead>
        <tr>
          <th scope="col" rowSpan={2}>
            {words.elevation(units.elevation.name)}
          </th>
          <th scope="colgroup" colSpan={temperatures_C.length}>
            {words.night(units.temperature.name)}
          </th>
          <th scope="colgroup" colSpan={levels.length}>
            {words.bands}
          </th>
        </tr>
        <tr>
          {temperatures_C.map((temperature_C) => (
            <th key={temperature_C} scope="col">
              {plain(temperature_C, units.temperature)}
            </th>
          ))}
          {levels.map((level) => (
            <th key={level} scope="col">
              {shareInWords(level)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ elevation_m, cells, reach }) => (
          <tr key={elevation_m}>
            <th scope="row">{plain(elevation_m, units.elevation)}</th>
            {cells.map((cell, i) => (
              <td key={temperatures_C[i]} class="card-rate">
                {rateIn(cell, table.basis.prior_only, step_Hz)}
              </td>
            ))}
            {reach.map(({ level, below_pct, above_pct }) => (
              <td key={level} class="card-reach">
                {words.reach(formatUp(below_pct, 1), formatUp(above_pct, 1))}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** In so few words as a column holds. @example shareInWords(0.8) // "8 in 10" */
function shareInWords(level: number): string {
  return isOnStep(level, 0.1)
    ? words.inTen(format(level * 10))
    : words.inHundred(format(level * 100));
}

/** In brackets where nobody has tuned, unless nobody has anywhere. */
function rateIn(
  { pump_Hz, extrapolated }: CardCell,
  everywhere: boolean,
  step_Hz: number | undefined,
): string {
  const rate = formatRate(pump_Hz, step_Hz);
  return extrapolated && !everywhere ? `(${rate})` : rate;
}

/** Without its unit, which stands in the head. */
function plain(si: number, unit: Unit): string {
  return format(toShown(si, unit));
}
