import { t } from "../texts/app.ts";
import { mapWords } from "../texts/map.ts";
import { format, formatFineRate, formatIn, type Unit } from "../units.ts";
import type { Palette } from "./palette.ts";
import { type Asked, elevationOfRate, stepsOf, tintRange } from "./tint.ts";

interface LegendProps {
  asked: Asked;
  palette: Palette;
  unit: Unit;
}

/** Steps of the tint with their values, and at which elevation the night asks for each; contours, hatching and cells. */
export function Legend({ asked, palette, unit }: LegendProps) {
  const { aspect, end } = asked;
  const ramp = palette[aspect];
  const steps = stepsOf(tintRange(asked), ramp);
  // Where the bands are much alike, whole percent would give two colours one figure.
  const decimals = new Set(steps.map((pct) => format(pct))).size < steps.length ? 1 : 0;
  return (
    <figure class="legend">
      <figcaption>{mapWords.legends[aspect](t.endWord[end])}</figcaption>
      <ol>
        {steps.map((value, i) => (
          <li key={ramp[i]} data-value={value}>
            <svg viewBox="0 0 40 16" aria-hidden="true">
              <rect width="40" height="16" fill={ramp[i]} />
            </svg>
            {aspect === "rate" ? (
              <>
                <strong>{formatFineRate(value)} Hz</strong>{" "}
                <span>{elevationWord(elevationOfRate(asked, value), unit)}</span>
              </>
            ) : (
              <strong>
                {aspect === "sure" ? `± ${format(value, decimals)} %` : format(value, 2)}
              </strong>
            )}
          </li>
        ))}
      </ol>
      <ul>
        {aspect === "rate" && (
          <li>
            <svg viewBox="0 0 40 16" aria-hidden="true">
              <path class="contour-mark" d="M0 12C12 12 14 4 24 4S34 8 40 8" />
            </svg>
            {mapWords.contour}
          </li>
        )}
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

/** To the hundred: the legend's colours are no finer. */
function elevationWord(elevation_m: number | null, unit: Unit): string {
  if (elevation_m === null) return mapWords.nowhere;
  const hundred_m = 100 / unit.factor;
  return mapWords.atElevation(formatIn(Math.round(elevation_m / hundred_m) * hundred_m, unit));
}
