import { useState } from "preact/hooks";
import { t } from "../texts/en.ts";
import { forgetContributorKey, hasContributorKey } from "./contributor.ts";

/** What the contributor key is, and a way to forget it. */
export function KeyNote() {
  const [forgotten, setForgotten] = useState(false);
  return (
    <section class="sheet" aria-labelledby="key">
      <h2 id="key">{t.share.key}</h2>
      <p>{t.share.keyNote}</p>
      <div class="row">
        <button
          type="button"
          disabled={forgotten || !hasContributorKey()}
          onClick={() => {
            forgetContributorKey();
            setForgotten(true);
          }}
        >
          {t.share.forgetKey}
        </button>
      </div>
      <p class="hint" role="status">
        {forgotten ? t.share.keyForgotten : ""}
      </p>
    </section>
  );
}
