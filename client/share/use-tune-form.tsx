import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import type { PublishedFit } from "../../model/fit/group.ts";
import { monthHere } from "../base/clock.ts";
import { recall, remember } from "../base/remember.ts";
import { reasonSentence } from "../ui/reason-sentence.tsx";
import { fieldSentence } from "../ui/went-wrong.tsx";
import { type Draft, emptyDraft } from "./draft.ts";
import { type Judged, judge } from "./judge.ts";
import { useTerrain } from "./use-terrain.ts";

/** "2026-10": a month half typed is no error yet. */
const MONTH_LETTERS = 7;

export interface TuneForm {
  draft: Draft;
  /** Takes the next draft, or how to make it from the one there is by then. */
  setDraft: (change: Draft | ((draft: Draft) => Draft)) => void;
  judged: Judged;
  /** The error of a field, once it was filled in or sending was tried. */
  errorOf: (field: string) => ComponentChildren;
  /** From now on missing fields are errors too. */
  showMissing: (show: boolean) => void;
}

/** The draft, kept in this browser while it is filled in, judged at every change. */
export function useTuneForm(fit: PublishedFit): TuneForm {
  const [draft, keep] = useState<Draft>(() => ({ ...emptyDraft(), ...recall<Draft>("draft") }));
  const [missingShown, showMissing] = useState(false);
  const terrain = useTerrain(draft.site.lat, draft.site.lon);
  const setDraft: TuneForm["setDraft"] = (change) =>
    keep((before) => {
      const next = typeof change === "function" ? change(before) : change;
      remember("draft", next);
      return next;
    });
  const month = monthHere();
  const judged = judge(draft, { fit, terrain, month });
  const isFilled = (field: string) => {
    if (field === "tuned_on") return (draft.tuned_on?.length ?? 0) >= MONTH_LETTERS;
    const [part, name] = field.split(".") as ["low", "pump_Hz"];
    return draft[part]?.[name] !== undefined;
  };
  return {
    draft,
    setDraft,
    judged,
    showMissing,
    errorOf: (field) => (missingShown || isFilled(field) ? whatIsWrong(judged, field) : undefined),
  };
}

function whatIsWrong({ errors, refusals, slips }: Judged, field: string): ComponentChildren {
  if (errors[field]) return errors[field];
  if (refusals[field]) return fieldSentence(refusals[field]);
  const slip = slips.find((found) => found.field === field);
  return slip && reasonSentence(slip);
}
