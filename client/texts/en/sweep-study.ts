/** Words about simulated sweeps, on the bands page. */
export const sweepStudy = {
  title: "How well the guided sweep finds the minimum",
  intro: (runs: string) =>
    `${runs} invented heaters and meters, with gusts, lag, rounding and drift, their true minimum known; each swept as On site guides, and by hand: coarse steps, then fine ones (common practice, no source). A step is 0.1 Hz.`,
  ends: { both: "Both ends", low: "Low end", high: "High end" },
  ways: { guided: "guided", hand: "by hand" },
  end: "End",
  within1: "Within 0.1 Hz, %",
  within2: "Within 0.2 Hz, %",
  within3ppm: "Within 3 ppm of the best, %",
  readings: "Readings, median",
  confirmed: "With the confirming one",
  minutes: "Minutes, median",
  held: "95 % interval held, %",
  share: "Of those by hand, same heater, %",
  none: "–",
};
