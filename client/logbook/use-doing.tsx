import type { ComponentChild } from "preact";
import { useState } from "preact/hooks";
import { NotKept } from "../app/records/store.ts";
import { logbookWords as words } from "../texts/logbook.ts";
import { SaidBar } from "../ui/said-bar.tsx";
import { whatWentWrong } from "../ui/went-wrong.tsx";

/** What was said last, and what takes it back. */
export interface Said {
  text: string;
  undo?: () => Promise<void>;
}

/** Runs a change of the logbook, and says what came of it. */
export type Doing = (work: () => Promise<Said | undefined>) => Promise<boolean>;

/** Runs changes of the logbook one at a time; what was said of the last one, to be drawn where its reader sees it. */
export function useDoing(): { doing: Doing; said: ComponentChild } {
  const [said, setSaid] = useState<Said | null>(null);
  const [problem, setProblem] = useState<unknown>(null);
  const doing: Doing = async (work) => {
    setProblem(null);
    setSaid(null);
    try {
      setSaid((await work()) ?? null);
      return true;
    } catch (error) {
      setProblem(error);
      return false;
    }
  };
  const undo = said?.undo;
  const bar = (
    <SaidBar
      said={said?.text}
      problem={
        problem !== null &&
        (problem instanceof NotKept ? words.store[problem.why] : whatWentWrong(problem))
      }
      undo={
        undo && {
          label: words.entry.undo,
          onUndo: () =>
            void doing(async () => {
              await undo();
              return { text: words.entry.undone };
            }),
        }
      }
      onClose={() => {
        setSaid(null);
        setProblem(null);
      }}
    />
  );
  return { doing, said: bar };
}
