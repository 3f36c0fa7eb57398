import { useId, useState } from "preact/hooks";
import type { Reason } from "../../server/contract.ts";
import { shareWords } from "../texts/share.ts";
import { reasonSentence, withUnit } from "./reason-sentence.tsx";

/** A figure to put in the place of what was typed. */
export interface Suggestion {
  field: string;
  value: number;
}

/** What looks mistyped must be seen before it is kept or sent: the first press shows it, a second one takes it as it is. */
export function useSeen(slips: readonly Reason[]): { unseen: boolean; see: () => void } {
  const [seen, setSeen] = useState("");
  const now = JSON.stringify(slips);
  return { unseen: slips.length > 0 && now !== seen, see: () => setSeen(now) };
}

/** What looks mistyped in a form, and what a second press does all the same. */
export function Slips(props: {
  title: string;
  anyway: string;
  slips: readonly Reason[];
  onUse: (suggestions: Suggestion[]) => void;
}) {
  const { title, anyway, slips, onUse } = props;
  const id = useId();
  if (slips.length === 0) return null;
  return (
    <section class="warning slips" tabIndex={-1} aria-labelledby={id}>
      <h3 id={id}>{title}</h3>
      <Reasons reasons={slips} onUse={onUse} />
      <p>{anyway}</p>
    </section>
  );
}

/** Reasons in sentences, each with a button that takes its suggestion, and one for all. */
export function Reasons(props: {
  reasons: readonly Reason[];
  onUse: (suggestions: Suggestion[]) => void;
}) {
  const { reasons, onUse } = props;
  const all = reasons.flatMap(({ field, suggestion }): Suggestion[] =>
    suggestion === undefined ? [] : [{ field, value: suggestion }],
  );
  return (
    <>
      <ul class="reasons">
        {reasons.map((reason) => (
          <li key={`${reason.code} ${reason.field}`}>
            {reasonSentence(reason)} <TakeIt {...reason} onUse={onUse} />
          </li>
        ))}
      </ul>
      {all.length > 1 && (
        <div class="row">
          <button type="button" onClick={() => onUse(all)}>
            {shareWords.useAll(all.length)}
          </button>
        </div>
      )}
    </>
  );
}

function TakeIt(props: Reason & { onUse: (suggestions: Suggestion[]) => void }) {
  const { field, suggestion, onUse } = props;
  if (suggestion === undefined) return null;
  return (
    <button type="button" onClick={() => onUse([{ field, value: suggestion }])}>
      {shareWords.use(withUnit(field, suggestion))}
    </button>
  );
}
