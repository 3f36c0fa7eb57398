import betainc from "@stdlib/math-base-special-betainc";

/**
 * Distribution function of Student's t, by the regularised incomplete beta function (Abramowitz & Stegun 1964, 26.7.1).
 * @param df degrees of freedom, > 0 and finite
 */
export function studentCdf(t: number, df: number): number {
  const tail = betainc(df / (df + t * t), df / 2, 0.5, true, false) / 2;
  return t < 0 ? tail : 1 - tail;
}
