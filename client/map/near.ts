/** From the zoom of these tiles on the map shows more: finer land and borders, smaller places. */
export { NEAR_ZOOM } from "../../model/geography/near-tiles.ts";

/** Address of the tiles. */
export const NEAR_TILES = "/geography/near/{z}/{x}/{y}.pbf";
