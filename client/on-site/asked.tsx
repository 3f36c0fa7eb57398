import { useLayoutEffect, useRef, useState } from "preact/hooks";

/** A button that asks back once before it does what cannot be taken lightly. The answers take the focus, and are in sight. */
export function Asked(props: { ask: string; sure: string; no: string; onSure: () => void }) {
  const [asked, setAsked] = useState<boolean>();
  const question = useRef<HTMLButtonElement>(null);
  const answers = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (asked === false) question.current?.focus();
    if (!asked) return;
    answers.current?.scrollIntoView({ block: "nearest" });
    answers.current?.focus({ preventScroll: true });
  }, [asked]);
  if (!asked) {
    return (
      <button type="button" ref={question} onClick={() => setAsked(true)}>
        {props.ask}
      </button>
    );
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields, and these are two buttons
    <div class="row asked" role="group" aria-label={props.ask} tabIndex={-1} ref={answers}>
      <button type="button" class="danger" onClick={props.onSure}>
        {props.sure}
      </button>
      <button type="button" onClick={() => setAsked(false)}>
        {props.no}
      </button>
    </div>
  );
}
