import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { shareWords } from "../texts/share.ts";

interface SaidBarProps {
  /** What came of the last press; nothing to say when empty. */
  said: ComponentChildren;
  /** What went wrong instead. */
  problem?: ComponentChildren;
  /** Takes it back. */
  undo?: { label: string; onUndo: () => void } | undefined;
  onClose: () => void;
}

/** What came of the last press, at the foot of the screen: in sight wherever on a long page it was pressed. */
export function SaidBar({ said, problem, undo, onClose }: SaidBarProps) {
  const first = useRef<HTMLButtonElement>(null);
  // What was pressed is often gone with what it removed: the focus is not to be lost with it.
  useEffect(() => {
    const lost = document.activeElement === document.body;
    if (undo || lost) first.current?.focus({ preventScroll: true });
  }, [said, problem]);
  const shown = problem || said;
  // It speaks of the view it was said in.
  useEffect(() => {
    if (!shown) return;
    addEventListener("hashchange", onClose);
    return () => removeEventListener("hashchange", onClose);
  }, [shown]);
  return (
    <div role="status" class="said">
      {shown && (
        <div class="said-bar">
          <p class={problem ? "error" : undefined}>{shown}</p>
          {undo && (
            <button type="button" ref={first} onClick={undo.onUndo}>
              {undo.label}
            </button>
          )}
          <button type="button" ref={undo ? null : first} class="plain" onClick={onClose}>
            {shareWords.close}
          </button>
        </div>
      )}
    </div>
  );
}
