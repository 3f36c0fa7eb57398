/** On a chart narrower than this there is room for little but its marks. */
export const NARROW_px = 520;
