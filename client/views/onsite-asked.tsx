import { useState } from "preact/hooks";

/** A button that asks back once before it does what cannot be taken lightly. */
export function Asked(props: { ask: string; sure: string; no: string; onSure: () => void }) {
  const [asked, setAsked] = useState(false);
  if (!asked) {
    return (
      <button type="button" onClick={() => setAsked(true)}>
        {props.ask}
      </button>
    );
  }
  return (
    <>
      <button type="button" class="danger" onClick={props.onSure}>
        {props.sure}
      </button>
      <button type="button" onClick={() => setAsked(false)}>
        {props.no}
      </button>
    </>
  );
}
