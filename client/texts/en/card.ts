/** Words of the Card view and of the card itself; fetched with it. */
export const cardWords = {
  title: "A card for the heater",
  intro:
    "Both ends' pump rate by elevation and night temperature, for your fan speeds, on paper: for when the phone is flat.",
  fields: {
    elevationFrom: "Lowest elevation",
    elevationTo: "Highest elevation",
    temperatureFrom: "Coldest night",
    temperatureTo: "Warmest night",
    paper: "Paper",
    outOfRange: (least: string, most: string) => `From ${least} to ${most}.`,
    atLeast: (least: string) => `At least ${least}: the other end of this range is below it.`,
    atMost: (most: string) => `At most ${most}: the other end of this range is above it.`,
    fansSwapped:
      "The low end's fan speed is usually the slower one. Check that the two are not swapped.",
  },
  papers: {
    a6: "A6, both sides",
    index: "4 × 6 in, both sides",
    a5: "A5, both sides",
    a4: "A4, to fold",
    letter: "US letter, to fold",
  },
  print: "Print the card",
  printHint:
    "In the print dialogue choose the same paper, actual size (100 %), and no headers or footers; or save it as a PDF. Black and white is enough.",
  preview: "The card as it will print",
  cannot: "These figures cannot stand together. Check fan speeds and dose.",
  heading: (kW: string) => `Start tunes, ${kW} kW heater`,
  dose: (dose: string, perHz: string) => `Dose ${dose} µL: each Hz burns ${perHz} L/h.`,
  demo: "Invented data: no tune here is real.",
  prior: "Nobody has tuned this heat class yet: physics and common practice alone, wide bands.",
  tunes: (tunes: string, contributors: string) =>
    `From ${tunes} tunes by ${contributors} contributors.`,
  fit: (version: string, date: string) => `Fit ${version}, published ${date}.`,
  noFit: "No fit published yet.",
  printed: (date: string) => `Printed ${date}.`,
  end: (end: string, rpm: string) => `${end}: pump rate in Hz, fan at ${rpm} rpm`,
  night: (unit: string) => `Night temperature, ${unit}`,
  elevation: (unit: string) => `Elevation, ${unit}`,
  share: (level: string) => `${level} in 100`,
  bands: "Band, %",
  reach: (below: string, above: string) => `−${below} +${above}`,
  bandsMean:
    "Band: so far below and above the printed rate lies the good tune of 80, or 95, in 100 further heaters: yours too.",
  extrapolated: "( ) Air nobody has tuned in yet: trust it less.",
  notes: {
    heater: "Heater",
    place: "Place",
    date: "Date",
    found: (end: string) => `Found, ${end}, Hz`,
  },
  holds: (climb: string, warmth: string) =>
    `For this heater, this place, this date: recheck after ${climb} or ${warmth}.`,
  nomogram: {
    title: "Between the rows: a straight-edge",
    name: (low: string, high: string) =>
      `Three scales: elevation, pump rate (low end at ${low} rpm, high end at ${high} rpm), night temperature. The tables hold the same figures.`,
    how: "Lay a straight-edge from elevation (left) through night temperature (right): it crosses the middle line at both ends' pump rates.",
    example: (elevation: string, temperature: string, low: string, high: string) =>
      `Dotted: ${elevation}, ${temperature} give ${low} and ${high} Hz.`,
    error: (pct: string) =>
      `For standard pressure and 50 % humidity; drawn within ${pct} % of the atlas.`,
    dashed: "Dashed: air nobody has tuned in.",
    rate: "Hz",
  },
  use: {
    title: "Without a phone",
    steps: [
      "Row by elevation, column by the night's coldest hour; between two, a rate between.",
      "Set both ends, fans as printed. Another fan speed: change the rate in proportion.",
      "Outdoors, a CO meter near the exhaust: 0.1 Hz steps until the steady reading has risen on both sides of its lowest. Settle between: low end on the rich side, high end leaner. Flame falters, or smoke: go back.",
    ],
  },
  safety: {
    title: "Carbon monoxide kills",
    front: "More on the back.",
    lines: [
      "A starting point only. Tune outdoors: never in a garage, tent or cabin, nor with anyone asleep inside.",
      "A separate certified CO alarm wherever people sleep, never the exhaust's meter; a silent one does not mean none. Alarm, headache, dizziness: everyone out, then call for help.",
      "Hot exhaust. Let the heater cool down; do not cut its power.",
      "First come the maker's manual, local codes, vehicle and boat approval rules, licensed heating and electrical practice. Some approved installations may not be altered at all.",
    ],
  },
};
