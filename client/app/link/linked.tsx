import { FIRST_QUESTION, type Question } from "../../base/question.ts";
import { recall } from "../../base/remember.ts";
import { linkWords as words } from "../../texts/link.ts";
import { lentUnits } from "../../ui/number-field.tsx";
import { factsOf } from "../heater/facts.ts";
import type { MyHeater } from "../heater/my-heater.ts";
import { atlasUnits } from "./atlas-units.ts";
import { type CardChoice, firstChoice } from "./card-choice.ts";
import { cardIn } from "./card-link.ts";
import { questionIn } from "./question-link.ts";
import { questionText } from "./question-text.ts";
import { refusedSentence } from "./refused-words.ts";
import type { UnitNames } from "./units-in.ts";
import type { Refusal } from "./values.ts";

/** What a link that was opened here asks, beside what this browser remembers: that stays as it was. */
export interface Linked {
  question: Question;
  /** The heater that the link tells of; null where it is the average one with the question's facts. */
  mine: MyHeater | null;
  card: CardChoice;
  /** The same with another question; the address says so from then on. */
  asking: (next: Question) => Linked;
  Notice: (props: NoticeProps) => preact.JSX.Element;
}

interface NoticeProps {
  /** Whether there is a heater here to ask the same for. */
  hasMine: boolean;
  /** Back to what this browser remembers, or to a question that it is to remember. */
  onEnd: (taken?: Question) => void;
}

/** The link in the address; null where the view has none that holds an answer. */
export function linkedHere(): Linked | null {
  const [path = "", query = ""] = location.hash.replace(/^#\/?/, "").split("?", 2);
  if (path === "card") {
    const { choice, units, refused } = cardIn(query);
    lend(units, "card");
    const question = { ...FIRST_QUESTION, ...factsOf(choice.heater) };
    return made({ question, mine: null, card: choice }, "card", refused);
  }
  if (path.includes("/")) return null;
  const { question, mine, units, refused } = questionIn(query);
  lend(units, "atlas");
  const card = { ...firstChoice(), heater: factsOf(question) };
  return made({ question, mine, card }, "question", refused);
}

type What = Pick<Linked, "question" | "mine" | "card">;

function made(what: What, asks: "question" | "card", refused: readonly Refusal[]): Linked {
  const sentences = refused.map((one) => refusedSentence(one, what, asks));
  const Notice = ({ hasMine, onEnd }: NoticeProps) => {
    const end = (taken?: Question) => {
      lentUnits.clear();
      onEnd(taken);
    };
    const known = { ...FIRST_QUESTION, ...recall<Question>("question") };
    return (
      <section class="sheet linked" aria-label={words.opened}>
        <p>
          {words.opened} {words.aside}
        </p>
        {sentences.length > 0 && (
          <ul class="warning">
            {sentences.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        )}
        <div class="row">
          {asks === "question" && hasMine && (
            <button type="button" onClick={() => end({ ...what.question, ...factsOf(known) })}>
              {words.take}
            </button>
          )}
          <button type="button" onClick={() => end()}>
            {words.leave}
          </button>
        </div>
      </section>
    );
  };
  const asking = (question: Question) => {
    const next = { ...what, question };
    const text = questionText(question, next.mine, atlasUnits(), next.mine !== null);
    const [path = ""] = location.hash.split("?", 1);
    history.replaceState(null, "", `${path || "#/"}?${text}`);
    // What was wrong with the link has been read; what is asked now is its reader's.
    return made(next, "question", []);
  };
  return { ...what, asking, Notice };
}

/** They show, and are not remembered. */
function lend(units: UnitNames | undefined, form: string): void {
  lentUnits.clear();
  for (const [quantity, name] of Object.entries(units ?? {}))
    lentUnits.set(`${form}.${quantity}`, name);
}
