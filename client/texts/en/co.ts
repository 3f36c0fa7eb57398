/** Words for a CO reading that is no figure. */
export const coWords = {
  below: (ppm: string) => `below ${ppm}`,
  above: (ppm: string) => `over ${ppm}`,
};
