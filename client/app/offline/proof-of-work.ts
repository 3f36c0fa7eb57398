import { solveChallenge } from "altcha-lib";
import { deriveKey } from "altcha-lib/algorithms/web/pbkdf2";
import type { Problem } from "../../../server/contract.ts";

/**
 * Solves what the atlas asks in a flood. The browser derives keys beside the page's own thread, so nobody waits for it.
 * @returns the header that the tune is sent again with
 * @throws when it takes longer than a minute and a half
 */
export async function proofOf(
  challenge: NonNullable<Problem["challenge"]>,
): Promise<Record<string, string>> {
  const solution = await solveChallenge({ challenge, deriveKey });
  if (!solution) throw new Error("No proof of work was found in time.");
  const { counter, derivedKey } = solution;
  return {
    "Proof-Of-Work": btoa(JSON.stringify({ challenge, solution: { counter, derivedKey } })),
  };
}
