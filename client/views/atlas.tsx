import { useState } from "preact/hooks";
import { ELEVATION_RANGE_m } from "../../model/air.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { PointElevation } from "../../model/geography/terrain.ts";
import { HEAT_CLASSES_kW, usualFans } from "../../model/heater.ts";
import type { Place } from "../../server/contract.ts";
import { api } from "../api.ts";
import { AirFields } from "../parts/air-fields.tsx";
import { Answer, Basis, Ways } from "../parts/answer.tsx";
import { NumberField, useUnit } from "../parts/number-field.tsx";
import { nameOf, PlaceSearch } from "../parts/place-search.tsx";
import { PositionButton } from "../parts/position-button.tsx";
import { answer, atElevation, type Question } from "../question.ts";
import { t } from "../texts/en.ts";
import { format, formatIn } from "../units.ts";
import { MapPanel } from "./map-panel.tsx";

interface AtlasProps {
  fit: PublishedFit;
  question: Question;
  onQuestion: (question: Question) => void;
}

/** Where in, start tune out; then what it rests on, and the map. */
export function Atlas({ fit, question, onQuestion }: AtlasProps) {
  const [unit, chooseUnit] = useUnit("elevation", "atlas.elevation");
  const [outOfRange, setOutOfRange] = useState(false);
  const change = (part: Partial<Question>) => onQuestion({ ...question, ...part });
  const { site, heat_kW } = question;
  const usual = usualFans(heat_kW);

  const setElevation = (elevation_m: number | undefined) => {
    const [lowest, highest] = ELEVATION_RANGE_m;
    const good = elevation_m !== undefined && elevation_m >= lowest && elevation_m <= highest;
    setOutOfRange(elevation_m !== undefined && !good);
    if (good && elevation_m !== site.elevation_m) onQuestion(atElevation(question, elevation_m));
  };
  const setPlace = (place: Place) => {
    setOutOfRange(false);
    onQuestion({
      ...atElevation(question, place.elevation_m as number),
      place: nameOf(place),
      lat: place.lat,
      lon: place.lon,
    });
  };
  const setPoint = (
    found: Pick<PointElevation, "lat" | "lon" | "elevation_m" | "sd_m" | "uncertainty_95_m"> & {
      source: string;
    },
  ) => {
    const [lowest, highest] = ELEVATION_RANGE_m;
    setOutOfRange(false);
    change({
      site: {
        elevation_m: Math.min(highest, Math.max(lowest, found.elevation_m)),
        elevation_sd_m: found.sd_m,
        elevation_source: found.source as Question["site"]["elevation_source"],
      },
      place: null,
      lat: found.lat,
      lon: found.lon,
      uncertainty_95_m: found.uncertainty_95_m,
    });
  };
  const tune = answer(fit, question);
  return (
    <div class="atlas">
      <div class="answer-side">
        <section class="sheet where" aria-labelledby="where">
          <h2 id="where">{t.site.title}</h2>
          <PlaceSearch chosen={question.place} unit={unit} onPlace={setPlace} />
          <NumberField
            label={t.site.elevation}
            field="site.elevation_m"
            quantity="elevation"
            unit={unit}
            onUnit={chooseUnit}
            value={site.elevation_m}
            onValue={setElevation}
            error={outOfRange ? t.site.outOfRange : undefined}
            hint={
              question.uncertainty_95_m === null
                ? undefined
                : t.site.estimate(formatIn(question.uncertainty_95_m, unit))
            }
          />
          <PositionButton onPosition={setPoint} />
        </section>
        <section class="sheet" aria-labelledby="tune" aria-live="polite">
          <h2 id="tune">{t.answer.title}</h2>
          <p class="site-line">
            {question.place
              ? t.answer.at(question.place, formatIn(site.elevation_m, unit))
              : t.answer.elevationOnly(formatIn(site.elevation_m, unit))}
          </p>
          {tune ? (
            <>
              <Answer tune={tune} />
              <p class="note">
                {t.answer.air(
                  format(tune.air.density_kg_m3, 3),
                  `${format(tune.air.density_ratio * 100)} %`,
                  formatIn(tune.air.density_altitude_m, unit),
                )}{" "}
                {tune.air.assumed.length > 0 &&
                  t.answer.assumes(
                    tune.air.assumed.map((what) => t.answer.assumed[what]).join(", "),
                  )}
              </p>
            </>
          ) : (
            <p class="warning">{t.answer.cannot}</p>
          )}
        </section>
        <section class="sheet fields" aria-labelledby="air">
          <h2 id="air">{t.air.title}</h2>
          <AirFields
            form="atlas"
            air={question.air}
            elevation_m={site.elevation_m}
            onAir={(air) => change({ air })}
          />
        </section>
        <section class="sheet fields" aria-labelledby="heater">
          <h2 id="heater">{t.heater.title}</h2>
          <div class="field">
            <label for="heat">{t.heater.heat}</label>
            <select
              id="heat"
              name="heater.heat_kW"
              value={heat_kW}
              onChange={(e) => change({ heat_kW: Number(e.currentTarget.value) })}
            >
              {classesOf(fit, heat_kW).map((kW) => (
                <option key={kW} value={kW}>
                  {t.heater.heatOption(kW)}
                </option>
              ))}
            </select>
          </div>
          <NumberField
            label={t.heater.lowFan}
            field="low.fan_rpm"
            value={question.low_fan_rpm}
            onValue={(low_fan_rpm) => change({ low_fan_rpm })}
            placeholder={String(usual.low_fan_rpm)}
            hint={t.heater.fanWhy}
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
        </section>
        {tune && <Ways tune={tune} />}
        {tune && <Basis tune={tune} publishedAt={fit.published_at} />}
      </div>
      <MapPanel
        fit={fit}
        question={question}
        unit={unit}
        onPoint={setPoint}
        elevationOf={api.elevation}
      />
    </div>
  );
}

/** Classes on offer: the usual ones, those the atlas has tunes of, and the one asked for. */
export function classesOf(fit: PublishedFit, asked: number): number[] {
  const all = new Set<number>([...HEAT_CLASSES_kW, ...fit.groups.map((g) => g.heat_kW), asked]);
  return [...all].sort((a, b) => a - b);
}
