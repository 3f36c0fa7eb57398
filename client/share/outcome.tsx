import { useEffect, useRef, useState } from "preact/hooks";
import type { Submitted } from "../../server/contract.ts";
import { shareWords } from "../texts/share.ts";
import { goToHeading } from "../ui/go-to.ts";
import { comparedSentence } from "../ui/reason-sentence.tsx";
import { Reasons, type Suggestion } from "../ui/slips.tsx";
import { countsFrom } from "./counts-from.ts";
import { HighCo } from "./high-co.tsx";

/** What the atlas answered: verdict, reasons, comparison, and the receipt, shown this once. */
export function Outcome(props: {
  answer: Submitted;
  /** Whether this browser kept the receipt. */
  kept: boolean;
  onUse: (suggestions: Suggestion[]) => void;
}) {
  const { answer, kept, onUse } = props;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => goToHeading(heading.current), [answer]);
  const held = answer.verdict === "held";
  const waits = countsFrom(answer);
  return (
    <section class="sheet outcome" aria-labelledby="verdict" data-verdict={answer.verdict}>
      <h2 id="verdict" class="verdict" tabIndex={-1} ref={heading}>
        {shareWords[answer.verdict]}
      </h2>
      <p>{held ? shareWords.heldMeans : shareWords.acceptedMeans}</p>
      {waits && <p>{waits}</p>}
      <HighCo advice={answer.advice} />
      {answer.reasons.length > 0 && <Reasons reasons={answer.reasons} onUse={onUse} />}
      <ul>
        {answer.compared.map((compared) => (
          <li key={compared.end}>
            {comparedSentence(compared)}{" "}
            {compared.inside_band ? shareWords.insideBand : shareWords.outsideBand}
          </li>
        ))}
      </ul>
      {answer.receipt && <Receipt receipt={answer.receipt} kept={kept} />}
    </section>
  );
}

function Receipt({ receipt, kept }: { receipt: string; kept: boolean }) {
  const [copied, setCopied] = useState(false);
  return (
    <>
      <h3>{shareWords.receipt}</h3>
      <p class="receipt">{receipt}</p>
      <div class="row">
        <button
          type="button"
          onClick={() =>
            navigator.clipboard?.writeText(receipt).then(
              () => setCopied(true),
              () => {},
            )
          }
        >
          {copied ? shareWords.copied : shareWords.copy}
        </button>
      </div>
      <p class={kept ? "hint" : "warning"}>
        {kept ? shareWords.receiptNote : shareWords.receiptLost}
      </p>
    </>
  );
}
