/** From this zoom on the map shows more: finer land and borders, smaller places. Its tiles are of this zoom alone. */
export const NEAR_ZOOM = 6;
/** Address of the tiles with it. */
export const NEAR_TILES = "/geography/near/{z}/{x}/{y}.pbf";
