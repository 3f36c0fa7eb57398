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
  restInCsv: (n: number) => `The first ${n}; all of them are in the CSV under Data.`,
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
};
