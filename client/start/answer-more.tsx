import type { StartTune } from "../../model/start.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { SendAnswer } from "../app/link/send-answer.tsx";
import type { Question } from "../base/question.ts";
import { basisWords } from "../texts/basis.ts";
import { Basis } from "../ui/basis.tsx";
import { NearTunes } from "../ui/near-tunes.tsx";
import { format, formatIn, formatPercent, type Unit } from "../units.ts";
import { AllFigures } from "./all-figures.tsx";
import { Ways } from "./ways.tsx";

/** An answer handed on, what it rests on, tunes like it, the two ways, and the air. */
export function AnswerMore(props: {
  tune: StartTune;
  question: Question;
  mine: MyHeater | null | undefined;
  /** Whether the bands are those of a heater with tunes of its own. */
  isOwn: boolean;
  publishedAt: string | null;
  unit: Unit;
}) {
  const { tune, question, mine, isOwn, publishedAt, unit } = props;
  const { air } = tune;
  return (
    <>
      <SendAnswer question={question} mine={mine} />
      <AllFigures tune={tune} isMine={isOwn} />
      <Basis tune={tune} publishedAt={publishedAt} />
      <NearTunes question={question} unit={unit} titled />
      <Ways tune={tune} steps={question} />
      <p class="note">
        {basisWords.air(
          format(air.density_kg_m3, 3),
          `${formatPercent(air.density_ratio * 100)} %`,
          formatIn(air.density_altitude_m, unit),
        )}{" "}
        {air.assumed.length > 0 &&
          basisWords.assumes(air.assumed.map((what) => basisWords.assumed[what]).join(", "))}
      </p>
    </>
  );
}
