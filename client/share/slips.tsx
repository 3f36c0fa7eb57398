import type { Reason } from "../../server/contract.ts";
import { shareWords } from "../texts/share.ts";
import { reasonSentence, withUnit } from "./reason-sentence.tsx";

/** A figure to put in the place of what was typed. */
export interface Suggestion {
  field: string;
  value: number;
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
