/** Words for a CO reading that is no figure, in Spanish. */
export const coWords: typeof import("../en/co.ts").coWords = {
  below: (ppm) => `menos de ${ppm}`,
  above: (ppm) => `más de ${ppm}`,
};
