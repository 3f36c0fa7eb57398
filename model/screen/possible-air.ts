import { type Air, airAt, ELEVATION_RANGE_m, type GivenAir } from "../air.ts";
import { FOOT_m } from "../units.ts";
import { screenTemperature } from "./bounds.ts";

/**
 * The air of a tune as stated, wherever there can be such air. An elevation or temperature that no place has, which is held
 * in any case, is taken as it was meant: feet and °F undone where that gives a possible figure, else the nearest elevation
 * and an unknown temperature. So the formulas are never asked outside what they hold for: at 12,020 m and 100 °C
 * the vapour alone would press more than the air does.
 * @param elevation_m as the schema lets it in
 * @param given as the schema lets it in
 * @param elevation_sd_m standard deviation of the elevation
 * @returns air of a density above 0
 * @throws RangeError as {@link airAt} does
 */
export function possibleAir(elevation_m: number, given: GivenAir = {}, elevation_sd_m = 0): Air {
  const [questioned] = screenTemperature(given.temperature_C);
  return airAt(
    possibleElevation(elevation_m),
    questioned ? { ...given, temperature_C: questioned.suggestion } : given,
    elevation_sd_m,
  );
}

function possibleElevation(elevation_m: number): number {
  const [lowest, highest] = ELEVATION_RANGE_m;
  const isPossible = (value: number) => value >= lowest && value <= highest;
  if (isPossible(elevation_m)) return elevation_m;
  const fromFeet = Math.round(elevation_m * FOOT_m);
  return isPossible(fromFeet) ? fromFeet : Math.min(highest, Math.max(lowest, elevation_m));
}
