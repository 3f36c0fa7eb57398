import { useState } from "preact/hooks";
import { ELEVATION_RANGE_m } from "../../model/air.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { atElevation, atPlace, atPoint, type Question } from "../question.ts";
import { t } from "../texts/app.ts";
import { formatIn, type Unit } from "../units.ts";
import { TemperatureField } from "./air-fields.tsx";
import { estimateHint } from "./estimate-hint.ts";
import { classesOf, HeatClassField } from "./heat-class-field.tsx";
import { NumberField } from "./number-field.tsx";
import { PlaceSearch } from "./place-search.tsx";
import { PositionButton } from "./position-button.tsx";

/** What an answer needs at least: a place or an elevation, how cold the night is, which heater. */
export function SiteQuestion(props: {
  fit: PublishedFit;
  question: Question;
  unit: Unit;
  onUnit: (name: string) => void;
  onQuestion: (question: Question) => void;
  /** Why the night's temperature is asked for, where it is not for the answer at once. */
  nightHint?: string;
}) {
  const { fit, question, unit, onUnit, onQuestion, nightHint = t.air.temperatureShort } = props;
  const [outOfRange, setOutOfRange] = useState(false);
  const { site, heat_kW, air } = question;
  const ask = (next: Question) => {
    setOutOfRange(false);
    onQuestion(next);
  };
  const setElevation = (elevation_m: number | undefined) => {
    const [lowest, highest] = ELEVATION_RANGE_m;
    const good = elevation_m !== undefined && elevation_m >= lowest && elevation_m <= highest;
    setOutOfRange(elevation_m !== undefined && !good);
    if (good && elevation_m !== site.elevation_m) onQuestion(atElevation(question, elevation_m));
  };
  return (
    <section class="sheet question" aria-labelledby="where">
      <h2 id="where" class="visually-hidden">
        {t.site.title}
      </h2>
      <PlaceSearch
        chosen={question.place}
        unit={unit}
        onPlace={(place) => ask(atPlace(question, place))}
      />
      <NumberField
        label={t.site.elevation}
        field="site.elevation_m"
        quantity="elevation"
        unit={unit}
        onUnit={onUnit}
        value={site.elevation_m}
        onValue={setElevation}
        error={
          outOfRange ? t.site.outOfRange(formatIn(-500, unit), formatIn(6000, unit)) : undefined
        }
        hint={estimateHint(site.elevation_sd_m, unit)}
      />
      <TemperatureField
        form="atlas"
        air={air}
        onAir={(next) => onQuestion({ ...question, air: next })}
        hint={nightHint}
      />
      <HeatClassField
        id="heat"
        value={heat_kW}
        classes={classesOf(fit, heat_kW)}
        onValue={(kW) => onQuestion({ ...question, heat_kW: kW })}
      />
      <PositionButton onPosition={(found) => ask(atPoint(question, found))} />
    </section>
  );
}
