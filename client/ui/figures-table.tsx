import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";
import { ColumnHead } from "./column-head.tsx";
import { Scrolls } from "./scrolls.tsx";

/** Figures under their columns' names, a row each. */
export function FiguresTable(props: {
  label: string;
  columns: readonly string[];
  class?: string;
  /** Stands above the table's place, since within it a wide table would take a part of it out of sight. */
  caption?: string;
  whole?: boolean;
  children: ComponentChildren;
}) {
  const { label, columns, caption, whole, children } = props;
  const id = useId();
  return (
    <>
      {caption && (
        <p class="table-caption" id={id}>
          {caption}
        </p>
      )}
      <Scrolls label={label} whole={whole}>
        <table class={`of-figures ${props.class ?? ""}`} aria-labelledby={caption && id}>
          <thead>
            <tr>
              {columns.map((column) => (
                <ColumnHead key={column} text={column} />
              ))}
            </tr>
          </thead>
          <tbody>{children}</tbody>
        </table>
      </Scrolls>
    </>
  );
}
