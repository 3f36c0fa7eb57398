/** Words for a CO reading that is no figure, in German. */
export const coWords: typeof import("../en/co.ts").coWords = {
  below: (ppm) => `unter ${ppm}`,
  above: (ppm) => `über ${ppm}`,
};
