import type { Tune } from "../../model/tune.ts";
import { randomText } from "../base/random.ts";
import { forget, recall, remember } from "../base/remember.ts";

/**
 * The Idempotency-Key of a tune as it stands. Remembered beyond this tab: one that was closed while sending leaves the
 * form filled in, and what is sent from it again is the same tune.
 */
let attempt = { body: "", key: "" };

export function sendingKey(tune: Tune): string {
  const body = JSON.stringify(tune);
  if (attempt.body !== body) attempt = recall<typeof attempt>("attempt") ?? attempt;
  if (attempt.body !== body) attempt = { body, key: randomText() };
  remember("attempt", attempt);
  return attempt.key;
}

/** It arrived, and the form has moved on. */
export function forgetSendingKey(): void {
  attempt = { body: "", key: "" };
  forget("attempt");
}
