import type { Reason } from "../../server/contract.ts";
import { shareWords } from "../texts/share.ts";
import { format } from "../units.ts";

const UNIT_OF: Record<string, [unit: string, decimals: number]> = {
  pump_Hz: ["Hz", 2],
  fan_rpm: ["rpm", 0],
  dose_uL: ["µL", 1],
  elevation_m: ["m", 0],
  temperature_C: ["°C", 1],
  pressure_hPa: ["hPa", 1],
};

/** A figure to put in the place of what was typed. */
export interface Suggestion {
  field: string;
  value: number;
}

/** Reasons in sentences, each with a button that takes its suggestion, and one for all. */
export function Reasons(props: {
  reasons: readonly Reason[];
  onUse: (suggestions: Suggestion[]) => void;
}) {
  const { reasons, onUse } = props;
  const all = reasons.flatMap(({ field, suggestion }): Suggestion[] =>
    suggestion === undefined ? [] : [{ field, value: suggestion }],
  );
  return (
    <>
      <ul class="reasons">
        {reasons.map(({ code, field, sentence, suggestion }) => (
          <li key={`${code} ${field}`}>
            {sentence}{" "}
            {suggestion !== undefined && (
              <button type="button" onClick={() => onUse([{ field, value: suggestion }])}>
                {shareWords.use(withUnit(field, suggestion))}
              </button>
            )}
          </li>
        ))}
      </ul>
      {all.length > 1 && (
        <div class="row">
          <button type="button" onClick={() => onUse(all)}>
            {shareWords.useAll(all.length)}
          </button>
        </div>
      )}
    </>
  );
}

function withUnit(field: string, value: number): string {
  const [unit, decimals] = UNIT_OF[field.split(".").at(-1) ?? ""] ?? ["", 2];
  const places = Number.isInteger(value) ? 0 : decimals;
  return `${format(value, places)} ${unit}`;
}
