import { useEffect, useId, useState } from "preact/hooks";
import { recall, remember } from "../remember.ts";
import { t } from "../texts/en.ts";
import { parseNumber, type Quantity, toShown, toSi, UNITS, type Unit } from "../units.ts";

const PLAIN: Unit = { name: "", factor: 1, offset: 0, decimals: 3 };

/** The unit chosen for one field, remembered under the field's name. */
export function useUnit(quantity: Quantity, field: string): [Unit, (name: string) => void] {
  const units: readonly Unit[] = UNITS[quantity];
  const [name, setName] = useState(() => recall<string>(`unit.${field}`) ?? units[0]?.name);
  const choose = (chosen: string) => {
    remember(`unit.${field}`, chosen);
    setName(chosen);
  };
  return [units.find((u) => u.name === name) ?? (units[0] as Unit), choose];
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
  hint?: string | undefined;
  error?: string | undefined;
  placeholder?: string | undefined;
}

/** A number with its unit. What is typed stays as typed until it is changed from outside. */
export function NumberField(props: NumberFieldProps) {
  const { label, field, value, onValue, quantity, hint, placeholder } = props;
  const id = useId();
  const unit = props.unit ?? PLAIN;
  const [text, setText] = useState(() => shownText(value, unit));
  const [bad, setBad] = useState(false);

  // What is typed must not be rewritten while it says the same.
  useEffect(() => {
    const typed = parseNumber(text);
    const same =
      typed === null
        ? value === undefined
        : value !== undefined && isClose(toSi(typed, unit), value);
    if (!same) {
      setText(shownText(value, unit));
      setBad(false);
    }
  }, [value, unit.name]);

  const onInput = (typed: string) => {
    setText(typed);
    const number = parseNumber(typed);
    const wrong = typed.trim() !== "" && number === null;
    setBad(wrong);
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
          inputMode="decimal"
          autoComplete="off"
          value={text}
          placeholder={placeholder}
          aria-invalid={error ? "true" : undefined}
          aria-describedby={error || hint ? `${id}-note` : undefined}
          onInput={(e) => onInput(e.currentTarget.value)}
        />
        {quantity && props.onUnit && (
          <select
            aria-label={`${label}: unit`}
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
  return value === undefined ? "" : String(Number(toShown(value, unit).toFixed(unit.decimals)));
}

function isClose(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b));
}
