import { densityAltitude, STANDARD_DENSITY_kg_m3, standardDensity } from "../air.ts";
import { exp } from "../ln-exp.ts";
import { BANDS, placeOnBands, xAtBand, xOf } from "./grid.ts";

const FEET_PER_M = 3.280_84;

/** The x of the true air where an elevation in feet was stated as metres: the site is lower, its air denser. */
function trueX(stated_x: number): number {
  const stated_m = densityAltitude(STANDARD_DENSITY_kg_m3 * exp(stated_x));
  return stated_m > 0 ? xOf(standardDensity(stated_m / FEET_PER_M)) : stated_x;
}

/** How far in x, for each band, such a slip has moved a row. */
export const FEET_AS_METRES = Float64Array.from({ length: BANDS }, (_, band) => {
  const x = xAtBand(band + 0.5);
  return trueX(x) - x;
});

/** Where the edges of each band truly lie, on the scale of bands. */
const TRUE_EDGES = Float64Array.from({ length: BANDS + 1 }, (_, edge) =>
  placeOnBands(trueX(xAtBand(edge))),
);

/** Votes added to both counts below, so that a band that few have been at does not decide by itself. */
export const USUAL_VOTES = 1;

/**
 * How many times as frequent as among all rows such slips are among the rows of each band, as far as its votes tell: many
 * more tune at a third of a great height than at that height itself, so of the few rows stated there more are slips.
 * @param votes of each band
 */
export function feetByBand(votes: Float64Array): Float64Array {
  const before = new Float64Array(BANDS + 1);
  votes.forEach((v, band) => {
    before[band + 1] = (before[band] as number) + v;
  });
  const upTo = (place: number) => {
    const band = Math.min(BANDS - 1, Math.floor(place));
    return (before[band] as number) + (place - band) * (votes[band] as number);
  };
  return votes.map((v, band) => {
    const source = upTo(TRUE_EDGES[band + 1] as number) - upTo(TRUE_EDGES[band] as number);
    return (source + USUAL_VOTES) / (v + USUAL_VOTES);
  });
}
