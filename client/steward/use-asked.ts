import { useEffect, useState } from "preact/hooks";

/** What the atlas answers, asked again when something has changed; null until it does, and kept where it does not. */
export function useAsked<T>(ask: () => Promise<T>, changes: unknown): T | null {
  const [answer, setAnswer] = useState<T | null>(null);
  useEffect(() => {
    let gone = false;
    ask().then(
      (found) => !gone && setAnswer(found),
      // What matters is told by the list, which asks first.
      () => {},
    );
    return () => {
      gone = true;
    };
  }, [changes]);
  return answer;
}
