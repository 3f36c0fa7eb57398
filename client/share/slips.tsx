import type { Reason } from "../../server/contract.ts";
import { t } from "../texts/en.ts";
import { format } from "../units.ts";

const UNIT_OF: Record<string, [unit: string, decimals: number]> = {
  pump_Hz: ["Hz", 2],
  fan_rpm: ["rpm", 0],
  dose_uL: ["µL", 1],
  elevation_m: ["m", 0],
  temperature_C: ["°C", 1],
  pressure_hPa: ["hPa", 1],
};

/** Reasons in sentences, each with a button that takes the suggestion. */
export function Reasons(props: {
  reasons: readonly Reason[];
  onUse: (field: string, value: number) => void;
}) {
  return (
    <ul class="reasons">
      {props.reasons.map((reason) => (
        <li key={`${reason.code} ${reason.field}`}>
          {reason.sentence}{" "}
          {reason.suggestion !== undefined && (
            <button
              type="button"
              onClick={() => props.onUse(reason.field, reason.suggestion as number)}
            >
              {t.share.use(withUnit(reason.field, reason.suggestion))}
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}

function withUnit(field: string, value: number): string {
  const [unit, decimals] = UNIT_OF[field.split(".").at(-1) ?? ""] ?? ["", 2];
  const places = Number.isInteger(value) ? 0 : decimals;
  return `${format(value, places)} ${unit}`;
}
