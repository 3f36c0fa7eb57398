import type { ComponentChildren } from "preact";
import { useId, useRef, useState } from "preact/hooks";
import { recall, remember } from "../base/remember.ts";
import { t } from "../texts/app.ts";
import {
  asTyped,
  isBegun,
  MAY_BE_NEGATIVE,
  parseNumber,
  type Quantity,
  toShown,
  toSi,
  UNITS,
  type Unit,
} from "../units.ts";

const PLAIN: Unit = { name: "", factor: 1, offset: 0, decimals: 3 };

/** Units that a link opened here shows its answer in, by field: they are not remembered. */
export const lentUnits = new Map<string, string>();

/** The unit a field shows: the link's, the one chosen there before, the one last chosen for such a quantity, or the first. */
export function unitOf(quantity: Quantity, field: string): Unit {
  const units: readonly Unit[] = UNITS[quantity];
  const name = lentUnits.get(field) ?? recall(`unit.${field}`) ?? recall(`unit.${quantity}`);
  return units.find((u) => u.name === name) ?? (units[0] as Unit);
}

/** The unit chosen for one field, remembered under the field's name, and for fields where none was chosen yet. */
export function useUnit(quantity: Quantity, field: string): [Unit, (name: string) => void] {
  const [unit, setUnit] = useState(() => unitOf(quantity, field));
  const choose = (chosen: string) => {
    lentUnits.delete(field);
    for (const key of [field, quantity]) remember(`unit.${key}`, chosen);
    setUnit(unitOf(quantity, field));
  };
  return [unit, choose];
}

interface NumberFieldProps {
  label: string;
  /** Path of the field, for errors and for the remembered unit. */
  field: string;
  /** SI value; undefined when empty. */
  value: number | undefined;
  onValue: (value: number | undefined) => void;
  quantity?: Quantity;
  /** Unit chosen outside, where several parts share it. */
  unit?: Unit;
  onUnit?: (name: string) => void;
  hint?: ComponentChildren;
  error?: ComponentChildren;
  placeholder?: string | undefined;
  /** "none" where the page brings keys of its own. */
  inputMode?: "none";
}

/** A number with its unit. What is typed stays as typed until it is changed from outside. */
export function NumberField(props: NumberFieldProps) {
  const { label, field, value, onValue, quantity, hint, placeholder } = props;
  const id = useId();
  const unit = props.unit ?? PLAIN;
  const [typed, setTyped] = useState(() => shownText(value, unit));
  const [bad, setBad] = useState(false);
  const seen = useRef({ value, unit: unit.name });
  let text = typed;
  if (seen.current.value !== value || seen.current.unit !== unit.name) {
    seen.current = { value, unit: unit.name };
    // Changed from outside: show the new value, but never rewrite what is typed while it says the same.
    if (!says(typed, unit, value)) {
      text = shownText(value, unit);
      setTyped(text);
      setBad(false);
    }
  }

  const onInput = (entered: string) => {
    setTyped(entered);
    const number = parseNumber(entered);
    const wrong = entered.trim() !== "" && number === null;
    // A sign alone is only called wrong once the field is left.
    setBad(wrong && !isBegun(entered));
    if (!wrong) onValue(number === null ? undefined : toSi(number, unit));
  };
  const error = bad ? t.site.notNumber : props.error;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="with-unit">
        <input
          id={id}
          name={field}
          type="text"
          inputMode={
            props.inputMode ?? (quantity && MAY_BE_NEGATIVE[quantity] ? "text" : "decimal")
          }
          autoComplete="off"
          autoCapitalize="off"
          spellcheck={false}
          value={text}
          placeholder={placeholder}
          aria-invalid={error ? "true" : undefined}
          data-unread={text.trim() !== "" && parseNumber(text) === null ? "" : undefined}
          aria-describedby={error || hint ? `${id}-note` : undefined}
          onInput={(e) => onInput(e.currentTarget.value)}
          onBlur={() => setBad(text.trim() !== "" && parseNumber(text) === null)}
        />
        {quantity && props.onUnit && (
          <select
            id={`${id}-unit`}
            aria-label={`${label}: ${t.unit}`}
            value={unit.name}
            onChange={(e) => props.onUnit?.(e.currentTarget.value)}
          >
            {UNITS[quantity].map(({ name }) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </select>
        )}
      </div>
      {(error || hint) && (
        <p id={`${id}-note`} class={error ? "error" : "hint"}>
          {error ?? hint}
        </p>
      )}
    </div>
  );
}

function shownText(value: number | undefined, unit: Unit): string {
  return value === undefined ? "" : asTyped(toShown(value, unit), unit.decimals);
}

function says(typed: string, unit: Unit, value: number | undefined): boolean {
  const number = parseNumber(typed);
  if (number === null || value === undefined) return number === null && value === undefined;
  return isClose(toSi(number, unit), value);
}

function isClose(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b));
}
