import { randomText } from "../base/random.ts";
import { forget, recall, remember } from "../base/remember.ts";

const KEPT_AS = "contributor";

/** This browser's contributor key, made when first needed. */
export function contributorKey(): string {
  const kept = recall<string>(KEPT_AS);
  if (kept) return kept;
  const key = randomText();
  remember(KEPT_AS, key);
  return key;
}

export function hasContributorKey(): boolean {
  return recall(KEPT_AS) !== undefined;
}

export function forgetContributorKey(): void {
  forget(KEPT_AS);
}
