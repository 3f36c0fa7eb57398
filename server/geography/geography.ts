/** The files that places and elevations are read from are not there. */
export class GeographyMissing extends Error {}
