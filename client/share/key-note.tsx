import { useState } from "preact/hooks";
import { shareWords } from "../texts/share.ts";
import { forgetContributorKey, hasContributorKey } from "./contributor.ts";

/** What the contributor key is, and a way to forget it. */
export function KeyNote() {
  const [forgotten, setForgotten] = useState(false);
  return (
    <section class="sheet" aria-labelledby="key">
      <h2 id="key">{shareWords.key}</h2>
      <p>{shareWords.keyNote}</p>
      <div class="row">
        <button
          type="button"
          disabled={forgotten || !hasContributorKey()}
          onClick={() => {
            forgetContributorKey();
            setForgotten(true);
          }}
        >
          {shareWords.forgetKey}
        </button>
      </div>
      <p class="hint" role="status">
        {forgotten ? shareWords.keyForgotten : ""}
      </p>
    </section>
  );
}
