import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";

/** Folded on the screen, open on paper, where nobody can unfold it. */
export function OpensOnPaper(props: { summary: string; children: ComponentChildren }) {
  const folded = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    let opened = false;
    const open = () => {
      const { current } = folded;
      opened = current !== null && !current.open;
      if (current) current.open = true;
    };
    const fold = () => {
      if (opened && folded.current) folded.current.open = false;
      opened = false;
    };
    addEventListener("beforeprint", open);
    addEventListener("afterprint", fold);
    return () => {
      removeEventListener("beforeprint", open);
      removeEventListener("afterprint", fold);
    };
  }, []);
  return (
    <details ref={folded}>
      <summary>{props.summary}</summary>
      {props.children}
    </details>
  );
}
