import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import { onsite as words } from "../texts/onsite.ts";
import { format } from "../units.ts";

const ROWS = [
  [1, 2, 3, 4, 5],
  [6, 7, 8, 9, 0],
];
/** As a number is written here: "." or ",". */
const DECIMAL = format(0.1, 1).replace(/\d/g, "");
const SIGN = /^\s*[-−–]\s*/;

/**
 * Large buttons that type into the number field above them, so that a cold thumb needs no system keyboard. They do what a
 * keyboard does there and no more, which is why the Tab key passes over them.
 */
export function Keys(props: {
  /** The field, which asks for no keyboard of the system's (`inputMode="none"`). */
  children: ComponentChildren;
  decimal?: boolean;
  minus?: boolean;
  /** Buttons of the field's own, in the row of the others. */
  more?: ComponentChildren;
  /** Delete was pressed in an empty field. */
  onEmpty?: () => void;
}) {
  const place = useRef<HTMLDivElement>(null);
  const change = (changed: (typed: string) => string) => {
    const field = place.current?.querySelector("input");
    if (!field) return;
    if (field.value === "") props.onEmpty?.();
    field.value = changed(field.value);
    // The field learns of it as of anything typed.
    field.dispatchEvent(new Event("input", { bubbles: true }));
  };
  const key = (label: string, changed: (typed: string) => string, name?: string) => (
    <button
      type="button"
      tabIndex={-1}
      key={label}
      aria-label={name}
      onClick={() => change(changed)}
    >
      {label}
    </button>
  );
  return (
    <div class="keyed" ref={place}>
      {props.children}
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields, and these are buttons */}
      <div class="keys" role="group" aria-label={words.keys.label}>
        {ROWS.map((digits) => (
          <div class="key-row" key={digits[0]}>
            {digits.map((digit) => key(format(digit), (typed) => `${typed}${digit}`))}
          </div>
        ))}
        <div class="key-row">
          {props.minus &&
            key(
              "−",
              (typed) => (SIGN.test(typed) ? typed.replace(SIGN, "") : `−${typed}`),
              words.keys.minus,
            )}
          {props.decimal && key(DECIMAL, (typed) => `${typed}${DECIMAL}`, words.keys.decimal)}
          {props.more}
          {key(words.keys.remove, (typed) => typed.slice(0, -1))}
        </div>
      </div>
    </div>
  );
}
