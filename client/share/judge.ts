import type { PublishedFit } from "../../model/fit/group.ts";
import { type Reason, type ScreenContext, screen } from "../../model/screen.ts";
import { type Tune, tuneSchema } from "../../model/tune.ts";
import { shareWords } from "../texts/share.ts";
import type { BeyondLimit } from "../ui/went-wrong.tsx";
import { type Draft, tuneOf, valueAt } from "./draft.ts";
import { refusedBySchema } from "./refused-by-schema.ts";

/** Stands for the contributor key until a tune is sent, so that looking at the form makes none. */
const NOBODY_YET = "key-made-on-sending";

/** A draft beside schema and screening. */
export interface Judged {
  /** Null while the schema finds errors. */
  tune: Tune | null;
  /** By field: what keeps it from being sent. */
  errors: Record<string, string>;
  /** By field: what else the schema refuses. */
  refusals: Record<string, BeyondLimit>;
  /** What looks like a slip: it can be sent, and would be held. */
  slips: Reason[];
}

export function judge(
  draft: Draft,
  context: { fit: PublishedFit; terrain: ScreenContext["terrain"]; month: string },
): Judged {
  const parsed = tuneSchema.safeParse(tuneOf(draft, NOBODY_YET));
  if (parsed.success) {
    return {
      tune: parsed.data,
      errors: {},
      refusals: {},
      slips: screen(parsed.data, context).reasons,
    };
  }
  const errors: Record<string, string> = {};
  const refusals: Record<string, BeyondLimit> = {};
  for (const error of refusedBySchema(parsed.error)) {
    const { field, code } = error;
    if (code === "missing" || field.endsWith("co_ppm")) errors[field] ??= missing(field);
    else refusals[field] ??= error;
  }
  return { tune: null, errors, refusals, slips: [] };

  function missing(field: string): string {
    const end = field.startsWith("low") ? draft.low : draft.high;
    if (!field.endsWith("co_ppm")) return shareWords.missing;
    if (end.nothing_shown) return shareWords.missingFloor;
    return valueAt(draft, field) === undefined ? shareWords.missingCo : shareWords.badCo;
  }
}
