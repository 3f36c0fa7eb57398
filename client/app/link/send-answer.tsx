import { useState } from "preact/hooks";
import type { Question } from "../../base/question.ts";
import { t } from "../../texts/app.ts";
import { linkWords as words } from "../../texts/link.ts";
import type { MyHeater } from "../heater/my-heater.ts";
import { atlasUnits } from "./atlas-units.ts";
import { OwnTunesCheck } from "./own-tunes-check.tsx";
import { questionText } from "./question-text.ts";
import { addressOf, useSending } from "./use-sending.ts";

/** The answer as an address: sent, copied, or read off. Own tunes are in it only when asked for. */
export function SendAnswer(props: { question: Question; mine: MyHeater | null | undefined }) {
  const { question, mine } = props;
  const [withOwn, setWithOwn] = useState(false);
  const own = mine?.own_tunes.length ?? 0;
  const link = () => addressOf("", questionText(question, mine, atlasUnits(), withOwn && own > 0));
  const { hasSheet, send, copy, said } = useSending(link, t.name);
  return (
    <div class="send-answer">
      <div class="row">
        {hasSheet && (
          <button type="button" onClick={() => void send()}>
            {words.send}
          </button>
        )}
        <button type="button" onClick={() => void copy()}>
          {words.copy}
        </button>
      </div>
      <OwnTunesCheck own={own} checked={withOwn} onChecked={setWithOwn} />
      <p class="hint" aria-live="polite">
        {said}
      </p>
      {said !== "" && (
        <div class="field">
          <label for="answer-link">{words.label}</label>
          <input
            id="answer-link"
            name="link"
            type="text"
            readOnly
            value={link()}
            onFocus={(e) => e.currentTarget.select()}
          />
          <p class="hint">{words.holds}</p>
        </div>
      )}
    </div>
  );
}
