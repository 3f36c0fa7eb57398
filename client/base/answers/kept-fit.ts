import type { PublishedFit } from "../../../model/fit/group.ts";
import { recall } from "../remember.ts";

/** The fit kept from an earlier visit, unless an earlier release kept it in another form. */
export function keptFit(kept = recall<PublishedFit>("fit")): PublishedFit | undefined {
  return kept && "settings" in kept ? kept : undefined;
}
