import { ENDS } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { ElevationAnswer } from "../../server/contract.ts";
import { answer, type Question } from "../base/question.ts";
import { t } from "../texts/app.ts";
import { mapWords } from "../texts/map.ts";
import { NORMAL_95 } from "../ui/estimate-hint.ts";
import { goToHeading } from "../ui/go-to.ts";
import {
  format,
  formatFineRate,
  formatIn,
  formatPercent,
  formatRate,
  type Unit,
} from "../units.ts";

interface PointFootProps {
  fit: PublishedFit;
  question: Question;
  /** The point that the question is about. */
  found: ElevationAnswer;
  unit: Unit;
}

/** The start tune of a point on the map in brief, with the way to all of it. */
export function PointFoot({ fit, question, found, unit }: PointFootProps) {
  const tune = answer(fit, question);
  const { elevation_m, elevation_sd_m } = question.site;
  return (
    <>
      <p>
        <strong>
          {t.answer.title} {t.answer.elevationOnly(formatIn(elevation_m, unit))}
        </strong>
        {elevation_sd_m > 0 && ` ± ${formatIn(NORMAL_95 * elevation_sd_m, unit)}`}
        {" · "}
        {whereabouts(found, unit)}
      </p>
      {tune ? (
        <dl>
          {ENDS.map((end) => {
            const { pump_Hz, fan_rpm, new_heater_bands_Hz } = tune[end];
            const outer = new_heater_bands_Hz.at(-1);
            return (
              <div key={end}>
                <dt>{t[end]}</dt>
                <dd>
                  <strong>{formatRate(pump_Hz)} Hz</strong>
                </dd>
                <dd>{t.answer.fanAt(format(fan_rpm))}</dd>
                {outer && (
                  <dd class="note">
                    {t.answer.heaters(formatPercent(outer.level * 100))}:{" "}
                    {t.answer.range(formatFineRate(outer.lower), formatFineRate(outer.upper))}
                  </dd>
                )}
              </div>
            );
          })}
        </dl>
      ) : (
        <p class="warning">{t.answer.cannot}</p>
      )}
      <p class="note">{t.safety.brief}</p>
      <button type="button" onClick={goToAnswer}>
        {mapWords.foot.goToAnswer}
      </button>
    </>
  );
}

/** Beside the map, or in the view that has it. */
function goToAnswer(): void {
  const answered = document.getElementById("tune");
  if (answered) goToHeading(answered);
  else location.hash = "#/";
}

const METRES_A_MILE = 1609.344;

/** How far the nearest known place is; the position where none is near. */
function whereabouts({ nearest, lat, lon }: ElevationAnswer, unit: Unit): string {
  if (!nearest?.name) return mapWords.foot.position(format(lat, 2), format(lon, 2));
  const [metres, name] = unit.name === "ft" ? [METRES_A_MILE, "mi"] : [1000, "km"];
  const distance = nearest.distance_m / metres;
  return mapWords.foot.from(`${format(distance, distance < 10 ? 1 : 0)} ${name}`, nearest.name);
}
