import type { PublishedFit } from "../../model/fit/group.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { type OwnView, ownView } from "../app/heater/own-view.ts";
import {
  asideSentences,
  basisSentence,
  bestSentence,
  contradictionSentence,
  dayOf,
  leadSentence,
} from "../app/heater/own-words.ts";
import type { Question } from "../base/question.ts";
import { heaterWords as words } from "../texts/heater.ts";

/** The answer for my heater in place of the average one's, with what is said before and after its figures. */
export function ownAnswer(fit: PublishedFit, question: Question, mine: MyHeater) {
  const view = ownView(fit, question, mine);
  if (!view) return null;
  const { tune } = view;
  return {
    tune,
    now: mine.settings,
    isOwn: (view.own?.tunes ?? 0) > 0,
    lead: <Lead view={view} mine={mine} />,
    basis: (
      <>
        <SetOn view={view} mine={mine} />
        <OwnBasis view={view} mine={mine} />
      </>
    ),
  };
}

interface Said {
  view: OwnView;
  mine: MyHeater;
}

function Lead({ view: { shifts_pct }, mine: { settings } }: Said) {
  if (!shifts_pct || !settings) return null;
  return (
    <p class="lead" data-low={shifts_pct.low} data-high={shifts_pct.high}>
      <strong>{leadSentence(shifts_pct)}</strong>
    </p>
  );
}

/** Of when the settings are that would be left. */
function SetOn({ view: { shifts_pct }, mine: { settings } }: Said) {
  if (!shifts_pct || !settings) return null;
  return <p class="note">{words.lead.since(dayOf(settings.at))}</p>;
}

function OwnBasis({ view: { own, tune }, mine: { found_at } }: Said) {
  if (!own) return null;
  return (
    <>
      {own.tunes > 0 && <p class="own-basis">{basisSentence(own, tune.basis)}</p>}
      {own.best_Hz && <p class="own-best">{bestSentence(own.best_Hz)}</p>}
      {asideSentences(own.set_aside, found_at).map((sentence) => (
        <p key={sentence} class="warning">
          {sentence}
        </p>
      ))}
      {own.contradictions.map((one) => (
        <p key={one.end} class="warning">
          {contradictionSentence(one, found_at)}
        </p>
      ))}
    </>
  );
}
