import type { ComponentChildren } from "preact";

/** What may be wider than its place scrolls in it, by keyboard too; on paper it stands whole where so asked. */
export function Scrolls(props: {
  label: string;
  whole?: boolean | undefined;
  children: ComponentChildren;
}) {
  const { label, whole, children } = props;
  const name = whole ? "scrolls whole" : "scrolls";
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard
    <section class={name} tabIndex={0} aria-label={label}>
      {children}
    </section>
  );
}
