import type { Press, Session } from "./session.ts";
import type { Stage } from "./stage.ts";

/** A press without its time. */
export type Pressed = Press extends infer P ? (P extends Press ? Omit<P, "at"> : never) : never;

/** What the view of a stage is given: the session, its stage, and what to call when something is pressed. */
export interface StageProps<S extends Stage["is"]> {
  session: Session;
  stage: Extract<Stage, { is: S }>;
  press: (press: Pressed) => void;
}
