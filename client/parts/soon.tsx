import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";

/** Draws its content once what stands before it is on the screen, so that the answer need not wait for it. */
export function Soon({ children }: { children: ComponentChildren }) {
  const [answered, setAnswered] = useState(false);
  useEffect(() => setAnswered(true), []);
  return answered ? children : null;
}
