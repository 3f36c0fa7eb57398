import type { ComponentChildren } from "preact";
import { Scrolls } from "./scrolls.tsx";

/** Figures under their columns' names, a row each. */
export function FiguresTable(props: {
  label: string;
  columns: readonly string[];
  class?: string;
  caption?: string;
  whole?: boolean;
  children: ComponentChildren;
}) {
  const { label, columns, caption, whole, children } = props;
  return (
    <Scrolls label={label} whole={whole}>
      <table class={props.class}>
        {caption && <caption>{caption}</caption>}
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </Scrolls>
  );
}
