import { ENDS, type End } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { settablePairsOf } from "../../model/settable.ts";
import type { StartTune } from "../../model/start.ts";
import type { ElevationAnswer } from "../../server/contract.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { ownView } from "../app/heater/own-view.ts";
import { basisSentence } from "../app/heater/own-words.ts";
import { answer, type Question } from "../base/question.ts";
import { t } from "../texts/app.ts";
import { basisWords } from "../texts/basis.ts";
import { heaterWords } from "../texts/heater.ts";
import { mapWords } from "../texts/map.ts";
import { NORMAL_95 } from "../ui/estimate-hint.ts";
import { goToHeading } from "../ui/go-to.ts";
import { format, formatFineRate, formatIn, formatRate, ofUnit, type Unit } from "../units.ts";

interface PointFootProps {
  fit: PublishedFit;
  question: Question;
  mine: MyHeater | null | undefined;
  /** The point that the question is about. */
  found: ElevationAnswer;
  unit: Unit;
  onNear: () => void;
}

/** Start's answer for a point on the map in brief, with the way to all of it and to tunes like it. */
export function PointFoot({ fit, question, mine, found, unit, onNear }: PointFootProps) {
  const view = mine ? ownView(fit, question, mine) : null;
  const tune = view?.tune ?? answer(fit, question);
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
        <>
          <dl>
            {ENDS.map((end) => (
              <EndInBrief key={end} end={end} tune={tune} question={question} />
            ))}
          </dl>
          {view?.own && view.own.tunes > 0 && (
            <p class="note own-basis">{basisSentence(view.own, tune.basis)}</p>
          )}
        </>
      ) : (
        <p class="warning">{t.answer.cannot}</p>
      )}
      <p class="note">{t.safety.brief}</p>
      <div class="row">
        <button type="button" onClick={goToAnswer}>
          {mapWords.foot.goToAnswer}
        </button>
        <button type="button" onClick={onNear}>
          {heaterWords.near.title}
        </button>
      </div>
    </>
  );
}

/** What can be set, the likelier step first, and where the best setting is 8 in 10 times. */
function EndInBrief(props: { end: End; tune: StartTune; question: Question }) {
  const { end, tune, question } = props;
  const [first, second] = settablePairsOf(tune, end, question);
  const [inner] = tune[end].new_heater_bands_Hz;
  if (!first || !inner) return null;
  const rate = (pump_Hz: number) => formatRate(pump_Hz, question.step_Hz);
  return (
    <div data-end={end}>
      <dt>{t[end]}</dt>
      <dd>
        <strong>{rate(first.pump_Hz)} Hz</strong>
      </dd>
      <dd>{t.answer.fanAt(format(first.fan_rpm))}</dd>
      {second && <dd class="note">{t.answer.or(rate(second.pump_Hz), format(second.fan_rpm))}</dd>}
      <dd class="note">
        {basisWords.times(
          format(inner.level * 10),
          formatFineRate(inner.lower),
          formatFineRate(inner.upper),
        )}
      </dd>
    </div>
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
  return mapWords.foot.from(ofUnit(format(distance, distance < 10 ? 1 : 0), name), nearest.name);
}
