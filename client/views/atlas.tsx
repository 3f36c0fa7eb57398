import type { PublishedFit } from "../../model/fit/group.ts";
import { usualFans } from "../../model/heater.ts";
import { PressureFields } from "../parts/air-fields.tsx";
import { Answer } from "../parts/answer.tsx";
import { Basis } from "../parts/basis.tsx";
import { later } from "../parts/later.tsx";
import { NumberField, useUnit } from "../parts/number-field.tsx";
import { SiteQuestion } from "../parts/site-question.tsx";
import { Soon } from "../parts/soon.tsx";
import { Ways } from "../parts/ways.tsx";
import { answer, atPoint, type Question } from "../question.ts";
import { t } from "../texts/app.ts";
import { format, formatIn, formatPercent, type Unit } from "../units.ts";

// The answer is painted first; the map with its libraries follows.
const MapPanel = later(() => import("./map-panel.tsx").then((m) => m.MapPanel));

interface AtlasProps {
  fit: PublishedFit;
  question: Question;
  onQuestion: (question: Question) => void;
}

/** Where in, start tune out, with what it rests on; then the finer questions, and the map. */
export function Atlas({ fit, question, onQuestion }: AtlasProps) {
  const [unit, chooseUnit] = useUnit("elevation", "atlas.elevation");
  const change = (part: Partial<Question>) => onQuestion({ ...question, ...part });
  return (
    <div class="atlas">
      <div class="answer-side">
        <SiteQuestion
          fit={fit}
          question={question}
          unit={unit}
          onUnit={chooseUnit}
          onQuestion={onQuestion}
        />
        <StartSheet fit={fit} question={question} unit={unit} />
        <Soon>
          <section class="sheet fields" aria-labelledby="heater">
            <h2 id="heater">{t.heater.title}</h2>
            <HeaterFields question={question} change={change} />
          </section>
          <section class="sheet fields" aria-labelledby="air">
            <h2 id="air">{t.air.title}</h2>
            <p class="hint wide">{t.air.temperatureWhy}</p>
            <PressureFields
              form="atlas"
              air={question.air}
              elevation_m={question.site.elevation_m}
              onAir={(air) => change({ air })}
            />
          </section>
        </Soon>
      </div>
      <MapPanel
        fit={fit}
        question={question}
        unit={unit}
        onPoint={(found) => onQuestion(atPoint(question, found))}
        onQuestion={onQuestion}
      />
    </div>
  );
}

/** The answer: both ends, the two ways, the air, what it rests on, and the caution that belongs to it. */
function StartSheet({
  fit,
  question,
  unit,
}: {
  fit: PublishedFit;
  question: Question;
  unit: Unit;
}) {
  const tune = answer(fit, question);
  const elevation = formatIn(question.site.elevation_m, unit);
  return (
    <section class="sheet" aria-labelledby="tune">
      <h2 id="tune" tabIndex={-1}>
        {t.answer.title}{" "}
        <span class="at">
          {question.place
            ? t.answer.at(question.place, elevation)
            : t.answer.elevationOnly(elevation)}
        </span>
      </h2>
      {tune ? (
        <>
          <Answer tune={tune} />
          <p class="note">
            <strong>{t.safety.brief}</strong>
          </p>
          <Basis tune={tune} publishedAt={fit.published_at} />
          <p class="note">
            {t.answer.air(
              format(tune.air.density_kg_m3, 3),
              `${formatPercent(tune.air.density_ratio * 100)} %`,
              formatIn(tune.air.density_altitude_m, unit),
            )}{" "}
            {tune.air.assumed.length > 0 &&
              t.answer.assumes(tune.air.assumed.map((what) => t.answer.assumed[what]).join(", "))}
          </p>
          <Ways tune={tune} />
        </>
      ) : (
        <p class="warning">{t.answer.cannot}</p>
      )}
    </section>
  );
}

/** Own fan speeds and dose; the class's usual fans stand in their place until then. */
function HeaterFields(props: { question: Question; change: (part: Partial<Question>) => void }) {
  const { question, change } = props;
  const usual = usualFans(question.heat_kW);
  return (
    <>
      <p class="hint wide">{t.heater.fanWhy}</p>
      <NumberField
        label={t.heater.lowFan}
        field="low.fan_rpm"
        value={question.low_fan_rpm}
        onValue={(low_fan_rpm) => change({ low_fan_rpm })}
        placeholder={String(usual.low_fan_rpm)}
      />
      <NumberField
        label={t.heater.highFan}
        field="high.fan_rpm"
        value={question.high_fan_rpm}
        onValue={(high_fan_rpm) => change({ high_fan_rpm })}
        placeholder={String(usual.high_fan_rpm)}
      />
      <NumberField
        label={t.heater.dose}
        field="heater.dose_uL"
        value={question.dose_uL}
        onValue={(dose_uL) => change({ dose_uL })}
        hint={t.heater.doseWhy}
      />
    </>
  );
}
