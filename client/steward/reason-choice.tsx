import { useEffect, useId, useRef, useState } from "preact/hooks";
import { type StewardVerdict, USUAL_REASONS } from "../../model/steward-reasons.ts";
import { reasonSentence } from "../share/reason-sentence.tsx";
import { stewardWords as words } from "../texts/steward.ts";
import type { Why } from "./steward-api.ts";

const [SHORTEST, LONGEST] = [3, 300];

/** Why: one of the usual reasons, or typed words. */
export function ReasonChoice(props: {
  verdict: StewardVerdict;
  count: number;
  ownWords: { current: HTMLInputElement | null };
  onWhy: (why: Why) => void;
  onCancel: () => void;
}) {
  const { verdict } = props;
  const [typed, setTyped] = useState("");
  const [tried, setTried] = useState(false);
  const first = useRef<HTMLButtonElement>(null);
  const id = useId();
  const reason = typed.trim();
  const wrong = tried && (reason.length < SHORTEST || reason.length > LONGEST);
  useEffect(() => first.current?.focus(), []);
  return (
    <section class="steward-why" aria-labelledby={`${id}title`}>
      <h4 id={`${id}title`}>{words.chooseWhy[verdict]}</h4>
      <p>{words.choosing(props.count)}</p>
      <ol>
        {Object.entries(USUAL_REASONS[verdict]).map(([code, sentence], n) => (
          <li key={code}>
            <button
              type="button"
              ref={n === 0 ? first : null}
              onClick={() => props.onWhy({ usual_reason: code })}
            >
              <kbd>{n + 1}</kbd> {reasonSentence({ code, field: "tune", sentence })}
            </button>
          </li>
        ))}
      </ol>
      <form
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          setTried(true);
          if (reason.length >= SHORTEST && reason.length <= LONGEST) props.onWhy({ reason });
        }}
        onKeyDown={(event) => {
          if (event.key === "Escape") props.onCancel();
        }}
      >
        <div class="field">
          <label for={id}>
            <kbd>0</kbd> {words.ownWords}
          </label>
          <input
            id={id}
            ref={props.ownWords}
            name="reason"
            autocomplete="off"
            value={typed}
            maxLength={LONGEST}
            aria-invalid={wrong || undefined}
            aria-describedby={`${id}hint`}
            onInput={(event) => setTyped(event.currentTarget.value)}
          />
          <p class={wrong ? "error" : "hint"} id={`${id}hint`}>
            {words.ownWordsHint}
          </p>
        </div>
        <div class="row">
          <button type="submit">{words.useOwnWords}</button>
          <button type="button" onClick={props.onCancel}>
            {words.cancel}
          </button>
        </div>
      </form>
    </section>
  );
}
