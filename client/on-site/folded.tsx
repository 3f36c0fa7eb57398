import type { ComponentChildren } from "preact";

/** Fields that most people leave as they are, folded under what they say now. */
export function Folded(props: { title: string; says: string; children: ComponentChildren }) {
  return (
    <details class="folded wide">
      <summary>
        <strong>{props.title}</strong> <span class="note">{props.says}</span>
      </summary>
      <div class="columns">{props.children}</div>
    </details>
  );
}
