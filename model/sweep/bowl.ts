/**
 * CO over pump rate, an asymmetric bowl: CO = lowest · (1 + |u/width|^bend), u = ln(rate / minimum),
 * with a width of its own on each side. Which side is steeper is not known beforehand.
 */
export interface Bowl {
  lean_width: number;
  rich_width: number;
  bend: number;
  /** ln of its probability before any reading, up to a constant. */
  ln_weight: number;
}

/** How much higher than at the minimum, in ln. */
export function ln_rise(bowl: Bowl, u: number): number {
  const reach = u < 0 ? -u / bowl.lean_width : u / bowl.rich_width;
  return Math.log1p(reach ** bowl.bend);
}

/** Our own working values: CO doubles 3–25 % of the pump rate away from the minimum. */
const WIDTHS = Array.from({ length: 8 }, (_, i) => 0.03 * 1.34 ** i);
const RATIOS = [-2, -1, 0, 1, 2].map((k) => 1.65 ** k);
const BENDS = [1.6, 2.4];
const USUAL_WIDTH = 0.085;
const WIDTH_LN_SD = 0.5;
const RATIO_LN_SD = 0.5;

export const BOWLS: readonly Bowl[] = WIDTHS.flatMap((width) =>
  RATIOS.flatMap((ratio) =>
    BENDS.map((bend) => ({
      lean_width: width * Math.sqrt(ratio),
      rich_width: width / Math.sqrt(ratio),
      bend,
      ln_weight:
        likely(Math.log(width / USUAL_WIDTH) / WIDTH_LN_SD) + likely(Math.log(ratio) / RATIO_LN_SD),
    })),
  ),
);

function likely(z: number): number {
  return (-z * z) / 2;
}
