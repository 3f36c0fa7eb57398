import type { DecisionRow } from "../db/decisions.ts";
import { UNDONE } from "../db/steward.ts";
import type { Reason } from "../model/screen.ts";

/** A decision that says what a tune's verdict is; the fit's and the end of waiting change none. */
export type Verdicted = DecisionRow & { verdict: "accepted" | "held" | "removed" };

const says = (decision: DecisionRow): decision is Verdicted =>
  decision.by === "screening" || decision.by === "steward";

export const reasonsOf = ({ reasons }: Pick<DecisionRow, "reasons">): Reason[] =>
  JSON.parse(reasons);

const takesBack = (decision: DecisionRow) =>
  reasonsOf(decision).some(({ code }) => code === UNDONE);

/**
 * The decisions on a tune that were not taken back, the one in force last. Taking back ends the one before it and leaves
 * no verdict of its own.
 * @param history all decisions on the tune, oldest first
 */
export function inForce(history: readonly DecisionRow[]): Verdicted[] {
  const stands: Verdicted[] = [];
  for (const decision of history.filter(says)) {
    if (takesBack(decision)) stands.pop();
    else stands.push(decision);
  }
  return stands;
}
