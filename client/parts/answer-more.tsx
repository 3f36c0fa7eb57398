import type { StartTune } from "../../model/start.ts";
import { NearTunes } from "../heater/near-tunes.tsx";
import type { Question } from "../question.ts";
import { t } from "../texts/app.ts";
import { format, formatIn, formatPercent, type Unit } from "../units.ts";
import { Basis } from "./basis.tsx";
import { Ways } from "./ways.tsx";

/** What an answer rests on, tunes like it, the two ways, and the air. */
export function AnswerMore(props: {
  tune: StartTune;
  question: Question;
  publishedAt: string | null;
  unit: Unit;
}) {
  const { tune, question, publishedAt, unit } = props;
  const { air } = tune;
  return (
    <>
      <Basis tune={tune} publishedAt={publishedAt} />
      <NearTunes question={question} unit={unit} />
      <Ways tune={tune} />
      <p class="note">
        {t.answer.air(
          format(air.density_kg_m3, 3),
          `${formatPercent(air.density_ratio * 100)} %`,
          formatIn(air.density_altitude_m, unit),
        )}{" "}
        {air.assumed.length > 0 &&
          t.answer.assumes(air.assumed.map((what) => t.answer.assumed[what]).join(", "))}
      </p>
    </>
  );
}
