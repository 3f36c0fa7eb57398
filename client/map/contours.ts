import type { Contour, Contours } from "./contour.ts";
import { type Asked, elevationOfRate, pumpAt, tunedElevations } from "./tint.ts";

/** Steps between lines, in hundredths of a Hz, so that no sum of them is off in its last digit; each is one of the next as well. */
const STEPS = [5, 10, 50, 100];
/** More lines than these would be a tangle, from afar and from near; our own working values. */
const MOST_FAR = 5;
const MOST_NEAR = 25;
/** So low a line would only follow the coast. */
const LOWEST_m = 30;

/**
 * Lines of equal pump rate at round figures. None where nobody has tuned in such air: the hatching says there that the
 * rates are not known so well.
 */
export function contoursOf(asked: Asked): Contours {
  const tuned = tunedElevations(asked);
  if (asked.aspect !== "rate" || !tuned) return { far: [], near: [] };
  const [from_m, to_m] = [Math.max(tuned[0], LOWEST_m), tuned[1]];
  const [most, least] = [pumpAt(asked, from_m), pumpAt(asked, to_m)];
  const within = (step: number) => {
    const [last, first] = [Math.floor((100 * most) / step), Math.ceil((100 * least) / step)];
    return Array.from({ length: Math.max(0, last - first + 1) }, (_, i): Contour => {
      const pump_Hz = ((first + i) * step) / 100;
      return { pump_Hz, elevation_m: elevationOfRate(asked, pump_Hz) ?? from_m };
    });
  };
  const all = STEPS.map(within);
  const atMost = (count: number) => all.find(({ length }) => length <= count) ?? [];
  return { far: atMost(MOST_FAR), near: atMost(MOST_NEAR) };
}
