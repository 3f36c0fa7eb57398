import { CODE_VERSION } from "./version.ts";

/** How to cite a revision of the open data, as CITATION.cff says it of the project. */
export const citationOf = (revision: string, fit: string, demo: boolean): string =>
  `The Hypsotune developers. Hypsotune: a community atlas of tunes for small diesel air heaters, version ${CODE_VERSION}. ` +
  `${demo ? "Invented demo data" : "Open data"}, revision ${revision}, fit ${fit}. CC0 1.0.`;
