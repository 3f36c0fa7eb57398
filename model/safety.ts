/** Cautions in our own words, shown on every view and sent with every answer that could set a heater. */
export interface Safety {
  notice: string;
  not_for: string[];
  defer_to: string[];
}

export const SAFETY: Safety = {
  notice:
    "Carbon monoxide kills. A starting point only, never a finished setting. Tune outdoors, watch the meter near the " +
    "exhaust, and keep a separate certified carbon monoxide alarm working wherever people sleep: never the meter used at " +
    "the exhaust. A silent alarm does not mean there is none. Alarm, headache or dizziness: everyone out into fresh air, then call for help.",
  not_for: [
    "tuning in a garage, tent, cabin or any closed space, or with anyone asleep inside",
    "replacing the maker's settings where changing them is not allowed: some approved installations may not be altered at all",
    "judging whether air is safe to breathe",
  ],
  defer_to: [
    "the maker's manual",
    "local codes and vehicle or boat approval rules",
    "licensed heating and electrical practice",
  ],
};

/** Said beside every verdict: accepted is not safe. */
export const ACCEPTED_MEANS = "Accepted means plausible beside other tunes. It does not mean safe.";

/** Both, as every answer with a verdict has them. */
export const CAUTIONS = { accepted_means: ACCEPTED_MEANS, safety: SAFETY };
