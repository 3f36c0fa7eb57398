/** A line of equal pump rate: the elevation at which the night asks for it. */
export interface Contour {
  pump_Hz: number;
  elevation_m: number;
}

/** The lines that are drawn from afar, and from near. */
export interface Contours {
  far: Contour[];
  near: Contour[];
}

/** Name of the lines in their tiles. */
export const CONTOUR_LAYER = "contours";
