/** Words of the Scaling view; fetched with it. */
export const scalingWords = {
  title: "How settings scale with the air",
  end: "End",
  over: "Over",
  density: "air density",
  elevation: "elevation",
  densityAxis: "Air density, kg/m³",
  elevationAxis: (unit: string) => `Elevation, ${unit} (curve: standard atmosphere)`,
  rateAxis: "Pump rate per fan speed, Hz per 1,000 rpm",
  unit: "Elevation in",
  key: {
    curve: "average tune",
    mean: "where the average is, 95 % sure",
    inner: "80 in 100 heaters",
    outer: "95 in 100 heaters",
    kept: "a tune that counts",
    rejected: "set aside by the fit",
    held: "held at the door",
    line: "joins one contributor's tunes",
  },
  beyond: (n: number) =>
    n === 1
      ? "One lies beyond the frame and is drawn at its edge."
      : `${n} lie beyond the frame and are drawn at its edge.`,
  reason: "Why",
  showRows: (n: number) => (n === 1 ? "Show 1 row" : `Show ${n} rows`),
  restInCsv: (n: number) => `The first ${n}; all of them are in the CSV below.`,
  aside: "Set aside, and why",
  asideNone: "Nothing was set aside.",
  points: (shown: string, all: string) =>
    shown === all ? `${all} tunes.` : `${shown} of ${all} tunes, an even sample.`,
  table: "The points as a table",
  tableOf: (what: string) => `Table: ${what}`,
  columns: ["Elevation", "Density, kg/m³", "Pump, Hz", "Fan, rpm", "Hz per 1,000 rpm", "Status"],
  status: { kept: "counts", rejected: "set aside", held: "held" },
  chartLabel: (end: string, over: string) => `Pump rate per fan speed at the ${end} over ${over}`,
  prior: "No tunes of this class yet: the curve is physics alone.",
  read: "Read off the chart",
  readCurve: "Along the curve",
  readTunes: "Tune by tune",
  curveReading: (density: string, elevation: string, rate: string, bands: readonly string[]) =>
    `${density} kg/m³, as at ${elevation}: average ${rate} Hz per 1,000 rpm; 95 % sure ${bands[0]}; 80 in 100 heaters ${bands[1]}; 95 in 100 ${bands[2]}.`,
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
      "Over air density, against what the fit expects there. A good fit leaves no trend; the shades are the bands for one more heater.",
    none: "No tunes are at hand here: only the bands are drawn.",
    axis: "Off the fit, %",
    chart: (end: string) => `Residuals at the ${end} over air density`,
    read: "Tune by tune, from thin air to dense",
    reading: (off: string, tune: string) => `${off} %. ${tune}`,
  },
  coverage: {
    title: "Coverage: what the bands claim, and what they held",
    means:
      "Each part of the contributors is judged by the line of all others: so many of 100 tunes that count lay in the band for one more heater. Shaded: within 1.5 points of the claim; a small crowd scatters further by chance.",
    none: "No tunes yet, so nothing to check the bands against.",
    chart: (kW: string) => `Observed less claimed coverage, ${kW} kW class`,
    claimedAxis: "Claimed, in 100 heaters",
    offAxis: "Observed less claimed, points",
    group: "Class and end",
    claimed: (level: string) => `Claimed ${level}, observed`,
  },
  csv: {
    points: "Save the tunes as CSV",
    curve: "Save the curve as CSV",
    coverage: "Save the coverage as CSV",
  },
  curveTable: "The curve as a table",
  curveColumns: [
    "Density, kg/m³",
    "Elevation",
    "Hz per 1,000 rpm",
    "Average, 95 % sure",
    "80 in 100 heaters",
    "95 in 100 heaters",
  ],
};
