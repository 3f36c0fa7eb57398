/** Words of the page on how settings scale; fetched with it. */
export const scalingWords = {
  title: "How settings scale with the air",
  end: "Power",
  over: "Over",
  density: "air density",
  elevation: "elevation",
  overOptions: { density: "air density", elevation: "elevation" },
  densityAxis: "Air density, kg/m³",
  elevationAxis: (unit: string) => `Elevation, ${unit} (curve: standard atmosphere)`,
  rateAxis: "Pump rate per fan speed, Hz per 1,000 rpm",
  unit: "Elevation in",
  key: {
    curve: "average tune",
    mean: "average heater, 95 % sure",
    inner: "8 in 10 heaters",
    outer: "95 in 100 heaters",
    kept: "a tune that counts",
    rejected: "does not count: too far off",
    held: "held when it came in",
    line: "joins one owner's tunes",
  },
  beyond: (n: number) =>
    n === 1
      ? "One tune lies beyond this chart and is marked at its edge."
      : `${n} tunes lie beyond this chart and are marked at its edge.`,
  beyondHere: (n: string) => `${n} beyond this chart`,
  reason: "Why",
  showRows: (n: number) => (n === 1 ? "Show 1 row" : `Show ${n} rows`),
  restInCsv: (n: number) => `The first ${n}; the CSV file below has all of them.`,
  aside: "What does not count, and why",
  asideNone: "Every tune counts.",
  notAmong: "The tune you came for is not among those drawn here.",
  points: (shown: string, all: string) =>
    shown === all ? `${all} tunes.` : `${shown} of ${all} tunes, an even sample.`,
  seen: (when: string) => `Tunes as this browser last saw them, ${when}.`,
  unseen:
    "This browser has never seen the tunes of this heater size: connect to the atlas to get them.",
  table: "The points as a table",
  tableOf: (what: string) => `Table: ${what}`,
  columns: ["Elevation", "Density, kg/m³", "Pump, Hz", "Fan, rpm", "Hz per 1,000 rpm", "Status"],
  status: { kept: "counts", rejected: "does not count", held: "held" },
  chartLabel: (end: string, over: string) => `Pump rate per fan speed at ${end} over ${over}`,
  prior: "No tunes of this heater size yet: the curve is an estimate from physics.",
  read: "Read the chart",
  readOptions: { curve: "curve", tunes: "tunes" },
  readCurve: "Along the curve",
  readTunes: "Tune by tune",
  readHint: "Move the slider or point at the chart: the figures there appear here.",
  curveReading: (density: string, elevation: string, rate: string, bands: readonly string[]) =>
    `${density} kg/m³, as at ${elevation}: average ${rate} Hz per 1,000 rpm; 95 % sure ${bands[0]}; 8 in 10 heaters ${bands[1]}; 95 in 100 ${bands[2]}.`,
  tuneReading: (
    density: string,
    elevation: string,
    pump: string,
    fan: string,
    rate: string,
    status: string,
  ) =>
    `${density} kg/m³, ${elevation}: ${pump} Hz at ${fan} rpm, ${rate} Hz per 1,000 rpm; ${status}.`,
  residuals: {
    title: "Residuals: how far each tune lies off the fit",
    means:
      "Compared with what the fit expects at that air density. A good fit leaves no trend; the shades are the bands for one more heater.",
    none: "No tunes here: only the bands are drawn.",
    axis: "Off the fit, %",
    chart: (end: string) => `Residuals at ${end} over air density`,
    read: "Tune by tune, from thin air to dense",
    reading: (off: string, tune: string) => `${off} %. ${tune}`,
  },
  csv: {
    points: "Save the tunes as CSV",
    curve: "Save the curve as CSV",
  },
  curveTable: "The curve as a table",
  curveColumns: [
    "Density, kg/m³",
    "Elevation",
    "Hz per 1,000 rpm",
    "Average heater, 95 % sure",
    "8 in 10 heaters",
    "95 in 100 heaters",
  ],
};
