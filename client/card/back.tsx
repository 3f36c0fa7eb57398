import { COMMON_PRACTICE } from "../../model/sweep/common-practice.ts";
import type { CardUnits } from "../app/link/card-choice.ts";
import { cardWords as words } from "../texts/card.ts";
import { formatFineRate, formatIn, formatRate, formatUp } from "../units.ts";
import type { CardFigures } from "./card-figures.ts";
import { type Example, NomogramDrawing } from "./nomogram-drawing.tsx";

/** The card's back: the nomogram with the card's own address, how to use it all without a phone, the cautions. */
export function Back(props: {
  figures: CardFigures;
  units: CardUnits;
  step_Hz: number | undefined;
  address: string;
}) {
  const { figures, units, step_Hz, address } = props;
  const { drawing, table } = figures;
  const example = exampleOf(figures);
  const { nomogram, use, safety } = words;
  const finest_Hz = formatRate(Math.max(COMMON_PRACTICE.fine_step_Hz, step_Hz ?? 0));
  return (
    <section class="card-side" data-side="back">
      <h3>{nomogram.title}</h3>
      <p>{nomogram.how}</p>
      <NomogramDrawing
        drawing={drawing}
        table={table}
        units={units}
        example={example}
        address={address}
      />
      <p>
        {nomogram.example(
          formatIn(example.elevation_m, units.elevation),
          formatIn(example.temperature_C, units.temperature),
          formatFineRate(example.low_Hz),
          formatFineRate(example.high_Hz),
        )}{" "}
        {nomogram.error(formatUp(drawing.greatest_error_pct, 0.1))}{" "}
        {isPartlyUnknown(drawing) && nomogram.dashed}
      </p>
      <h4>{use.title}</h4>
      <ol>
        {use.steps(finest_Hz).map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <h4>{safety.title}</h4>
      <ul>
        {safety.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

function isPartlyUnknown({ known, elevation, temperature }: CardFigures["drawing"]): boolean {
  const bottom = Math.max(...[...elevation, ...temperature].map(({ y }) => y));
  return known !== null && (known[0] > 0.01 || known[1] < bottom - 0.01);
}

/** The reading that the drawing shows: the middle row and column. */
function exampleOf({ elevations_m, temperatures_C, table }: CardFigures): Example {
  const [row, column] = [elevations_m.length >> 1, (temperatures_C.length - 1) >> 1];
  const rate = (end: "low" | "high") => table[end].rows[row]?.cells[column]?.pump_Hz_exact ?? 0;
  return {
    elevation_m: elevations_m[row] as number,
    temperature_C: temperatures_C[column] as number,
    low_Hz: rate("low"),
    high_Hz: rate("high"),
  };
}
