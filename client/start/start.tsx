import { useEffect, useMemo, useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { answer, atPoint, type Question } from "../base/question.ts";
import { t } from "../texts/app.ts";
import { later } from "../ui/later.tsx";
import { useUnit } from "../ui/number-field.tsx";
import { formatIn, type Unit } from "../units.ts";
import { Answer } from "./answer.tsx";
import { LAPTOP, TABLET, useScreen } from "./screen.ts";
import { SiteRow } from "./site-row.tsx";

// The answer is painted first; what it rests on, the fields and the map with its libraries follow.
const SiteQuestion = later(() => import("../ui/site-question.tsx").then((m) => m.SiteQuestion));
const AnswerMore = later(() => import("./answer-more.tsx").then((m) => m.AnswerMore));
const FinerQuestions = later(() => import("./finer-questions.tsx").then((m) => m.FinerQuestions));
const MapPanel = later(() => import("../map/map-panel.tsx").then((m) => m.MapPanel));

interface StartProps {
  fit: PublishedFit;
  question: Question;
  mine: MyHeater | null | undefined;
  onQuestion: (question: Question) => void;
}

/** Where in, what to set out; then the finer questions. A wide screen has the map beside it, to choose a place on. */
export function Start({ fit, question, mine, onQuestion }: StartProps) {
  const [unit, chooseUnit] = useUnit("elevation", "atlas.elevation");
  const isWide = useScreen(LAPTOP);
  const hasRow = !useScreen(TABLET);
  const [focus, setFocus] = useState<string>();
  const change = (part: Partial<Question>) => onQuestion({ ...question, ...part });
  return (
    <div class="start">
      <div class="answer-side">
        {hasRow && <SiteRow question={question} unit={unit} open={focus} onOpen={setFocus} />}
        {(!hasRow || focus) && (
          <div class="where">
            <SiteQuestion
              fit={fit}
              question={question}
              unit={unit}
              onUnit={chooseUnit}
              onQuestion={onQuestion}
              isMine={Boolean(mine)}
              focus={hasRow ? focus : undefined}
              onChosen={() => setFocus(undefined)}
            />
          </div>
        )}
        <StartSheet fit={fit} question={question} mine={mine} unit={unit} isWide={isWide} />
        <FinerQuestions question={question} isMine={Boolean(mine)} change={change} />
      </div>
      {isWide && (
        <MapPanel
          fit={fit}
          question={question}
          mine={mine}
          unit={unit}
          onPoint={(found) => onQuestion(atPoint(question, found))}
          onQuestion={onQuestion}
        />
      )}
    </div>
  );
}

/** The answer first, with its caution; then what it rests on, tunes like it, and the two ways. */
function StartSheet(props: {
  fit: PublishedFit;
  question: Question;
  mine: MyHeater | null | undefined;
  unit: Unit;
  isWide: boolean;
}) {
  const { fit, question, mine, unit, isWide } = props;
  const own = useOwnAnswer(fit, question, mine);
  const tune = own?.tune ?? answer(fit, question);
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
          {own?.lead}
          <Answer tune={tune} steps={question} now={own?.now} />
          {own?.basis}
          <p class="note">
            <strong>{t.safety.brief}</strong>
          </p>
          <div class="onward">
            <a class="main" href="#/onsite">
              {t.answer.tuneHere}
            </a>
            <a href="#/card">{t.answer.printCard}</a>
            {!isWide && <a href="#/map">{t.answer.onMap}</a>}
          </div>
          <AnswerMore
            tune={tune}
            question={question}
            mine={mine}
            isOwn={own?.isOwn ?? false}
            publishedAt={fit.published_at}
            unit={unit}
          />
        </>
      ) : (
        <p class="warning">{t.answer.cannot}</p>
      )}
    </section>
  );
}

type OwnAnswer = typeof import("./own-answer.tsx")["ownAnswer"];

/** The answer for my heater, once its part of the model is there: the average one's stands until then. */
function useOwnAnswer(
  fit: PublishedFit,
  question: Question,
  mine: MyHeater | null | undefined,
): ReturnType<OwnAnswer> | undefined {
  const [answerFor, setAnswerFor] = useState<{ own: OwnAnswer }>();
  const isMine = Boolean(mine);
  useEffect(() => {
    if (!isMine) return;
    import("./own-answer.tsx").then(
      ({ ownAnswer: own }) => setAnswerFor({ own }),
      () => {},
    );
  }, [isMine]);
  return useMemo(
    () => (mine ? answerFor?.own(fit, question, mine) : undefined),
    [fit, question, mine, answerFor],
  );
}
