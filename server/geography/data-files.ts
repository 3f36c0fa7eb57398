/** Kept here and not installed: each is one file of a large package. `data/SOURCES.md` says where they come from. */

/** Elevations of the whole earth, 2048 × 1024, 8 bits, 25 m a step. */
export const GRID_FILE = new URL("./data/elevation-grid.png", import.meta.url);
/** Positions and elevations of open airfields. */
export const AIRFIELDS_FILE = new URL("./data/airfields.csv.gz", import.meta.url);
