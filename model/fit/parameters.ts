/**
 * The parameters of one heater size and end, in the order of the vector that is maximised: spreads by their
 * logarithm, shares by their log-odds, so that every real number is allowed.
 */
export const PARAMETERS = [
  /** ln(Hz per 1,000 rpm) of the average heater at density 1.225, and its slope on ln(density/1.225). */
  "level",
  "slope",
  /** ln of the sd between heaters, between tunes of one heater, and of heaters' own slopes. */
  "ln_between",
  "ln_within",
  "ln_own_slope",
  /** ln(degrees of freedom − 4) of Student's t between heaters. */
  "ln_tail",
  /** Mixing proportions of owners against the honest: never re-tuned; anything at all. */
  "logit_never",
  "logit_other",
  /** Log-odds of a row: elevation in feet read as metres, with its rise over one sd of air; a slip of any other kind. */
  "logit_feet",
  "feet_rise",
  "logit_slip",
  /** Where the settings of those who never re-tune come from: height above `level`. */
  "never_level",
  /** Mean ln density of nights without a temperature against the standard atmosphere. */
  "night",
  /** Mean ln dose (µL) of the heater size. */
  "ln_dose",
  /** A second crowd: log-odds against the honest, its change per sd of air, shift, slope's difference, ln sd. */
  "logit_crowd",
  "crowd_odds",
  "crowd_shift",
  "crowd_tilt",
  "ln_crowd",
] as const;

export type Parameter = (typeof PARAMETERS)[number];

/** Place of each parameter in the vector. */
export const AT = Object.fromEntries(PARAMETERS.map((name, i) => [name, i])) as Record<
  Parameter,
  number
>;

/** Parameters of the model without, and with, a second crowd. */
export const ONE_CROWD = AT.logit_crowd;
export const TWO_CROWDS = PARAMETERS.length;

/** @returns the parameter's value; 0 where the vector is of the model without a second crowd */
export function parameter(t: Float64Array, name: Parameter): number {
  return t[AT[name]] ?? 0;
}
