/** What a steward may say of a tune. Removed: it is shown to nobody but its owner, who may revise it. */
export const STEWARD_VERDICTS = ["accepted", "held", "removed"] as const;
export type StewardVerdict = (typeof STEWARD_VERDICTS)[number];

/**
 * Why, by a stable short name, as the tune's owner reads it: the reasons that come up every day, so that nobody types
 * them, and that owners read in their own language. Any other reason is typed.
 */
export const USUAL_REASONS: Record<StewardVerdict, Record<string, string>> = {
  accepted: {
    steward_can_be_right: "A steward looked at the figures: they can be right as they are.",
    steward_own_tunes_agree: "Unusual, but other tunes of the same owner agree with it.",
    steward_place_explains: "Unusual, but the place and its weather explain it.",
  },
  held: {
    steward_asks_to_check: "Please check the figures, then revise the tune or withdraw it.",
    steward_waits_for_more: "Held until more tunes of this kind have come in.",
    steward_many_alike_held:
      "One of many alike that came in together: held until it is clear where they come from.",
  },
  removed: {
    steward_mistyped: "The figures are mistyped, and what was meant cannot be told from them.",
    steward_not_measured: "This does not look like something that was measured at a heater.",
    steward_shared_twice: "The same tune was shared more than once.",
    steward_many_alike: "One of many alike that came in together under new keys.",
  },
};
