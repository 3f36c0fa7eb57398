import { useId } from "preact/hooks";
import { stewardWords as words } from "../texts/steward.ts";
import { KEYS } from "./shortcuts.ts";

/** All keys and what they do; they can be turned off, for those whose speech or whose braille display types letters. */
export function ShortcutList({ on, onChange }: { on: boolean; onChange: (on: boolean) => void }) {
  const id = useId();
  return (
    <section class="sheet steward-keys" aria-labelledby={id}>
      <h3 id={id}>{words.keys}</h3>
      <label class="check">
        <input
          type="checkbox"
          checked={on}
          onChange={(event) => onChange(event.currentTarget.checked)}
        />
        {words.keysOn}
      </label>
      <dl>
        {(Object.keys(KEYS) as (keyof typeof KEYS)[]).map((name) => (
          <div key={name}>
            <dt>
              {KEYS[name].map((key) => (
                <kbd key={key}>{key}</kbd>
              ))}
            </dt>
            <dd>{words.keyList[name]}</dd>
          </div>
        ))}
      </dl>
      <p class="hint">{words.keysHint}</p>
    </section>
  );
}
