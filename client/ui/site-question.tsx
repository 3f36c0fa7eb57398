import { useLayoutEffect, useRef } from "preact/hooks";
import { ELEVATION_RANGE_m } from "../../model/air.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { atElevation, atPlace, atPoint, type Question } from "../base/question.ts";
import { t } from "../texts/app.ts";
import { formatIn, type Unit } from "../units.ts";
import { estimateHint } from "./estimate-hint.ts";
import { classesOf, HeatClassField } from "./heat-class-field.tsx";
import { NumberWithin } from "./number-within.tsx";
import { PlaceSearch } from "./place-search.tsx";
import { PositionButton } from "./position-button.tsx";
import { TemperatureField } from "./temperature-field.tsx";

/** What an answer needs at least: a place or an elevation, how cold the night is, which heater. */
export function SiteQuestion(props: {
  fit: PublishedFit;
  question: Question;
  unit: Unit;
  onUnit: (name: string) => void;
  onQuestion: (question: Question) => void;
  /** Why the night's temperature is asked for, where it is not for the answer at once. */
  nightHint?: string;
  /** Whether the size comes with a heater chosen elsewhere. */
  isMine: boolean;
  /** The field to type in at once. */
  focus?: string | undefined;
  /** A place was chosen, or what was typed is over. */
  onChosen?: () => void;
}) {
  const { fit, question, unit, onUnit, onQuestion, nightHint = t.air.temperatureShort } = props;
  const { site, heat_kW, air } = question;
  const section = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    if (props.focus)
      section.current?.querySelector<HTMLElement>(`[name="${props.focus}"]`)?.focus();
  }, [props.focus]);
  const choose = (next: Question) => {
    onQuestion(next);
    props.onChosen?.();
  };
  const typed = (e: KeyboardEvent) => {
    const { name } = e.target as HTMLInputElement;
    // In the place's field it chooses from the list.
    if (e.key === "Enter" && (name === "site.elevation_m" || name === "air.temperature_C"))
      props.onChosen?.();
  };
  const [lowest, highest] = ELEVATION_RANGE_m;
  return (
    <section ref={section} class="sheet question" aria-labelledby="where" onKeyDown={typed}>
      <h2 id="where" class="visually-hidden">
        {t.site.title}
      </h2>
      <PlaceSearch
        chosen={question.place}
        unit={unit}
        onPlace={(place, name) => choose(atPlace(question, place, name))}
      />
      <NumberWithin
        label={t.site.elevation}
        field="site.elevation_m"
        quantity="elevation"
        unit={unit}
        onUnit={onUnit}
        value={site.elevation_m}
        range={ELEVATION_RANGE_m}
        optional
        outOfRange={() => t.site.outOfRange(formatIn(lowest, unit), formatIn(highest, unit))}
        onValue={(elevation_m) => {
          // Emptied to type another: the last one stands.
          if (elevation_m === undefined || elevation_m === site.elevation_m) return;
          onQuestion(atElevation(question, elevation_m));
        }}
        hint={estimateHint(site.elevation_sd_m, unit)}
      />
      <TemperatureField
        form="atlas"
        air={air}
        onAir={(next) => onQuestion({ ...question, air: next })}
        hint={nightHint}
      />
      {!props.isMine && (
        <HeatClassField
          id="heat"
          value={heat_kW}
          classes={classesOf(fit, heat_kW)}
          onValue={(kW) => onQuestion({ ...question, heat_kW: kW })}
        />
      )}
      <PositionButton onPosition={(found) => choose(atPoint(question, found))} />
    </section>
  );
}
