import type { ColorReliefLayerSpecification } from "maplibre-gl";
import type { Contours } from "./contour.ts";
import { colourAt } from "./palette.ts";

/** Elevations between which nothing is hatched, m; null hatches everything. */
export type Tuned = [number, number] | null;

/** How the land looks: colours over elevation, [elevation, colour, elevation, colour, …], what is not hatched, and contours. */
export interface Look {
  stops: (number | string)[];
  tuned: Tuned;
  contours: Contours;
}

export type ReliefColour = NonNullable<
  NonNullable<ColorReliefLayerSpecification["paint"]>["color-relief-color"]
>;

/** Name of the stripes' picture, and how wide their pattern is. */
export const STRIPES = "stripes";
export const STRIPES_px = 8;

const CLEAR = "rgba(0, 0, 0, 0)";
/** Over so many metres the tint comes and goes at the edges of what is tuned. */
const EDGE_m = 1;

/** All land in its colours. */
export function reliefColour(stops: (number | string)[]): ReliefColour {
  return ["interpolate", ["linear"], ["elevation"], ...stops] as unknown as ReliefColour;
}

/** The land within the tuned elevations in its colours, nothing elsewhere. */
export function tunedColour({ stops, tuned }: Pick<Look, "stops" | "tuned">): ReliefColour {
  if (!tuned) return reliefColour([stops[0] as number, CLEAR, stops.at(-2) as number, CLEAR]);
  const [from, to] = [tuned[0], Math.max(tuned[1], tuned[0] + EDGE_m)];
  const within = stops.flatMap((elevation_m, i) =>
    i % 2 === 0 && (elevation_m as number) > from && (elevation_m as number) < to
      ? [elevation_m, stops[i + 1] as string]
      : [],
  );
  return reliefColour([
    from - EDGE_m,
    CLEAR,
    from,
    colourOfElevation(stops, from),
    ...within,
    to,
    colourOfElevation(stops, to),
    to + EDGE_m,
    CLEAR,
  ]);
}

/** Colour of the land at an elevation, m: between the stops as the map draws it. */
export function colourOfElevation(stops: (number | string)[], elevation_m: number): string {
  const ramp = stops.filter((_, i) => i % 2 === 1) as string[];
  const [first, last] = [stops[0] as number, stops.at(-2) as number];
  return colourAt((elevation_m - first) / (last - first), ramp);
}

/** Stripes as pixels, for a pattern that repeats. */
export function stripes([red, green, blue]: readonly number[], alpha: number) {
  const data = new Uint8ClampedArray(4 * STRIPES_px * STRIPES_px);
  for (let y = 0; y < STRIPES_px; y++)
    for (let x = 0; x < STRIPES_px; x++)
      if (isStripe(x, y)) {
        const at = 4 * (y * STRIPES_px + x);
        data.set([red as number, green as number, blue as number, alpha], at);
      }
  return { width: STRIPES_px, height: STRIPES_px, data };
}

/** Whether a pixel lies on a stripe. */
export function isStripe(x: number, y: number): boolean {
  return (x + y) % STRIPES_px < 2;
}
