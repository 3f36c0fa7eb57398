import { useId } from "preact/hooks";

/** One of a few, each by its name. */
export function ChoiceField<T extends string | number>(props: {
  label: string;
  /** Where something else must find it. */
  id?: string;
  name?: string;
  value: T;
  options: readonly (readonly [value: T, text: string])[];
  hint?: string;
  onValue: (value: T) => void;
}) {
  const { label, name, value, options, hint, onValue } = props;
  const made = useId();
  const id = props.id ?? made;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select
        id={id}
        name={name}
        value={value}
        aria-describedby={hint && `${id}-note`}
        onChange={({ currentTarget: { selectedIndex } }) => {
          const chosen = options[selectedIndex];
          if (chosen) onValue(chosen[0]);
        }}
      >
        {options.map(([one, text]) => (
          <option key={one} value={one}>
            {text}
          </option>
        ))}
      </select>
      {hint && (
        <p id={`${id}-note`} class="hint">
          {hint}
        </p>
      )}
    </div>
  );
}
