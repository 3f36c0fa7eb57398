/** What the page uses of d3-contour, which brings no types along. */
declare module "d3-contour" {
  type Ring = [x: number, y: number][];

  interface Contours {
    /** How many values a row has, and how many rows there are. */
    size(size: [width: number, height: number]): this;
    /** The areas with at least a value; values lie half a step from the area's edge. */
    contour(values: ArrayLike<number>, value: number): { coordinates: Ring[][] };
  }

  export function contours(): Contours;
}
