import { standardTemperature } from "../../model/air.ts";
import type { Question } from "../base/question.ts";
import { t } from "../texts/app.ts";
import { useUnit } from "../ui/number-field.tsx";
import { formatIn, type Unit } from "../units.ts";

/** Place and night in one row of a narrow screen; each opens the fields at its own. */
export function SiteRow(props: {
  question: Question;
  unit: Unit;
  /** The name of the field that is open; none while they are folded. */
  open: string | undefined;
  onOpen: (field: string | undefined) => void;
}) {
  const { question, unit, open, onOpen } = props;
  const [temperature] = useUnit("temperature", "atlas.temperature");
  const { place, site, air } = question;
  const elevation = formatIn(site.elevation_m, unit);
  const box = (field: string, first: string, second: string) => (
    <button
      type="button"
      aria-expanded={open !== undefined}
      onClick={() => onOpen(open ? undefined : field)}
    >
      <strong>{first}</strong> <span>{second}</span>
    </button>
  );
  return (
    <div class="site-row">
      {place ? box("place", place, elevation) : box("place", elevation, t.site.choose)}
      {box(
        "air.temperature_C",
        formatIn(air.temperature_C ?? standardTemperature(site.elevation_m), temperature),
        air.temperature_C === undefined ? t.site.assumed : t.site.tonight,
      )}
    </div>
  );
}
