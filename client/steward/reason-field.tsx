import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";
import { stewardWords as words } from "../texts/steward.ts";

const [SHORTEST, LONGEST] = [3, 300];

/** Whether the atlas takes it as a reason. */
export const isReason = (typed: string) =>
  typed.trim().length >= SHORTEST && typed.trim().length <= LONGEST;

/** Where a reason is typed. */
export function ReasonField(props: {
  name: string;
  label: ComponentChildren;
  value: string;
  /** It was sent as it is. */
  tried: boolean;
  field?: { current: HTMLInputElement | null };
  onValue: (value: string) => void;
}) {
  const { name, label, value, tried, field, onValue } = props;
  const id = useId();
  const wrong = tried && !isReason(value);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        {...(field && { ref: field })}
        name={name}
        autocomplete="off"
        value={value}
        maxLength={LONGEST}
        aria-invalid={wrong || undefined}
        aria-describedby={`${id}hint`}
        onInput={(event) => onValue(event.currentTarget.value)}
      />
      <p class={wrong ? "error" : "hint"} id={`${id}hint`}>
        {words.ownWordsHint}
      </p>
    </div>
  );
}
