import { useId, useLayoutEffect, useRef, useState } from "preact/hooks";
import { type StewardVerdict, USUAL_REASONS } from "../../model/steward-reasons.ts";
import { stewardWords as words } from "../texts/steward.ts";
import { reasonSentence } from "../ui/reason-sentence.tsx";
import { isReason, ReasonField } from "./reason-field.tsx";
import type { Why } from "./steward-api.ts";

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
  // With the drawing: later it might take the focus out of the field that the next key went to.
  useLayoutEffect(() => first.current?.focus(), []);
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
          if (isReason(typed)) props.onWhy({ reason: typed.trim() });
        }}
        onKeyDown={(event) => {
          if (event.key === "Escape") props.onCancel();
        }}
      >
        <ReasonField
          name="reason"
          label={
            <>
              <kbd>0</kbd> {words.ownWords}
            </>
          }
          value={typed}
          tried={tried}
          field={props.ownWords}
          onValue={setTyped}
        />
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
