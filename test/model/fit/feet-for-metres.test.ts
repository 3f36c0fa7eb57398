import { expect, test } from "vitest";
import { standardDensity } from "../../../model/air.ts";
import { FEET_AS_METRES, feetByBand } from "../../../model/fit/feet-for-metres.ts";
import { BANDS, placeOnBands, xOf } from "../../../model/fit/grid.ts";

const bandAt = (elevation_m: number) => Math.floor(placeOnBands(xOf(standardDensity(elevation_m))));
const noVotes = () => new Float64Array(BANDS);

// The standard atmosphere is checked against ISO 2533's tables elsewhere; a foot is 0.3048 m exactly.
test("a slip moves a row as far as the standard air of so many feet lies from that of as many metres", () => {
  for (const stated of [1000, 2000, 3000, 4000, 5000]) {
    const moved = xOf(standardDensity(0.3048 * stated)) - xOf(standardDensity(stated));
    // To half a band's width times how fast the shift grows along it.
    expect(Math.abs((FEET_AS_METRES[bandAt(stated)] as number) - moved)).toBeLessThan(0.02);
  }
  expect(FEET_AS_METRES[BANDS - 1]).toBe(0);
});

test("slips come from where people tune: of a crowd below 500 m only to 1,640 m, and each of them once", () => {
  const votes = noVotes();
  votes[bandAt(100)] = 160;
  const sources = feetByBand(votes).map((times, band) => times * ((votes[band] as number) + 1) - 1);
  expect(sources.reduce((sum, v) => sum + v, 0)).toBeCloseTo(160, 9);
  expect(sources[bandAt(1000)]).toBeGreaterThan(20);
  expect(sources[bandAt(3500)]).toBeCloseTo(0, 9);
});

test("among few stated high up they are frequent, among many rare, and without votes as anywhere", () => {
  const crowded = (high: number) => {
    const votes = noVotes().fill(10);
    votes[bandAt(4000)] = high;
    return feetByBand(votes)[bandAt(4000)] as number;
  };
  expect(crowded(0)).toBeGreaterThan(3);
  expect(crowded(100)).toBeLessThan(0.05);
  expect([...feetByBand(noVotes())]).toEqual(Array(BANDS).fill(1));
});
