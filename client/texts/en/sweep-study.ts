/** Words about simulated sweeps, on the bands page. */
export const sweepStudy = {
  title: "How well the guided sweep finds the minimum",
  intro: (runs: string) =>
    `${runs} invented heaters and meters whose true minimum is known: bowls of many shapes, minima outside of what the starting settings expect, flames that go out anywhere, meters that are slow or coarse, drift, or stop too low, and gusts of wind. The sweep knows none of this, and its rules were not chosen by this test.`,
  outcomes: (found: string, open: string, floor: string, scale: string) =>
    `Of 100 sweeps ${found} found a minimum, ${open} said that none was bracketed, ${floor} that it lies below the lowest the meter can show, ${scale} above the highest.`,
  ordinary: (found: string) =>
    `Where the minimum lies in the 99 % band, burns well and shows on the meter, ${found} in 100 found it.`,
  promises: (unbracketed: string, moves: string, relights: string) =>
    `Found without a rise on both sides: ${unbracketed}. Moves longer than 0.2 Hz (lowest power) or 0.4 Hz (highest power): ${moves}. Third attempts to relight: ${relights}.`,
  byHand: (runs: string) =>
    `Stepping by hand (coarse, then fine; common practice, no source) named ${runs} minima with no rise seen on both sides. Below, the heaters whose minimum the guided sweep found.`,
  ends: { both: "Both", low: "Lowest power", high: "Highest power" },
  ways: { guided: "guided", hand: "by hand" },
  end: "Power",
  sweeps: "Sweeps",
  within1: "Within 0.1 Hz, %",
  within2: "Within 0.2 Hz, %",
  above: "CO above the lowest, ppm, 95 in 100",
  settings: "Settings, median",
  readings: "Readings, median",
  minutes: "Minutes, median",
  flameOuts: "Flame-outs in 100 sweeps",
};
