import { trip as words } from "../texts/trip.ts";

interface NameFieldProps {
  id: string;
  /** Path of the field. */
  field: string;
  value: string;
  placeholder?: string;
  /** Told at every letter. */
  onType?: (name: string) => void;
  /** Told when it is done. */
  onName?: (name: string) => void;
}

/** What a stop is called. */
export function NameField({ id, field, value, placeholder, onType, onName }: NameFieldProps) {
  return (
    <div class="field">
      <label for={id}>{words.add.name}</label>
      <input
        id={id}
        name={field}
        type="text"
        autoComplete="off"
        placeholder={placeholder}
        value={value}
        onInput={(e) => onType?.(e.currentTarget.value)}
        onChange={(e) => onName?.(e.currentTarget.value)}
      />
    </div>
  );
}
