import type { End, PublishedFit } from "../../model/fit/group.ts";
import type { Question } from "../question.ts";
import { t } from "../texts/app.ts";
import { mapWords } from "../texts/map.ts";
import { format } from "../units.ts";
import { colourOf, RAMP, tintRange } from "./tint.ts";

/** Steps of the tint with their pump rates. */
export function Legend({
  fit,
  question,
  end,
}: {
  fit: PublishedFit;
  question: Question;
  end: End;
}) {
  const range = tintRange(fit, question, end);
  const steps = RAMP.map(
    (_, i) => range.from_Hz + ((range.to_Hz - range.from_Hz) * i) / (RAMP.length - 1),
  );
  return (
    <figure class="legend">
      <figcaption>{mapWords.legend(t.endWord[end])}</figcaption>
      <ol>
        {steps.map((value) => (
          <li key={value}>
            <svg viewBox="0 0 40 16" aria-hidden="true">
              <rect width="40" height="16" fill={colourOf(value, range)} />
            </svg>
            {format(value, end === "low" ? 2 : 1)}
          </li>
        ))}
      </ol>
      <ul>
        <li>
          <svg viewBox="0 0 40 16" aria-hidden="true">
            <path class="hatched" d="M-4 16L12 0M4 16L20 0M12 16L28 0M20 16L36 0M28 16L44 0" />
          </svg>
          {mapWords.hatched}
        </li>
        <li>
          <svg viewBox="0 0 40 16" aria-hidden="true">
            <circle class="cell-mark" cx="20" cy="8" r="7" />
          </svg>
          {mapWords.cellMark}
        </li>
      </ul>
    </figure>
  );
}
