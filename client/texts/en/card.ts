/** Words of the Card view and of the card itself; fetched with it. */
export const cardWords = {
  title: "A card for the heater",
  intro:
    "Pump rates at lowest and highest power by elevation and night temperature, for your fan speeds, on paper: for when the phone is flat.",
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
      "At lowest power the fan usually turns slower. Check that the two are not swapped.",
  },
  papers: {
    a6: "A6, both sides",
    index: "4 × 6 in, both sides",
    a5: "A5, both sides",
    a4: "A4, to fold",
    letter: "US letter, to fold",
  },
  paperHint: "A6 and 4 × 6 in are read in the hand; from half a metre away choose A5 or larger.",
  print: "Print the card",
  printHint:
    "In the print dialogue choose the same paper, actual size (100 %), and no headers or footers; or save it as a PDF. Black and white is enough.",
  code: {
    title: "The code opens this card, up to date. By hand:",
    titleWithoutOwn: "The code opens this card without your own tunes. By hand:",
    name: "Code that holds the address of this card",
    withoutOwn: "The code and the link hold this card without your own tunes.",
  },
  preview: "The card as it will print",
  cannot: "These figures do not fit together. Check fan speeds and fuel per pulse.",
  heading: (kW: string) => `Starting settings, ${kW} kW heater`,
  dose: (dose: string, perHz: string) => `Fuel per pulse ${dose} µL: each Hz burns ${perHz} L/h.`,
  demo: "Invented data: no tune here is real.",
  prior: "Nobody has tuned this heater size yet: an estimate from physics, wide bands.",
  tunes: (tunes: string, contributors: string) => `From ${tunes} tunes by ${contributors} owners.`,
  ownTunes: (tunes: string, contributors: string, own: number) =>
    `From ${tunes} tunes by ${contributors} owners and ${own} of your own.`,
  ownAlone: (own: number) =>
    `From ${own === 1 ? "1 tune" : `${own} tunes`} of your own and an estimate from physics: wide bands.`,
  fit: (version: string, date: string) => `Fit ${version}, published ${date}.`,
  noFit: "No fit published yet.",
  printed: (date: string) => `Printed ${date}.`,
  end: (end: string, rpm: string) => `${end}: pump rate in Hz, fan at ${rpm} rpm`,
  night: (unit: string) => `Night temperature, ${unit}`,
  elevation: (unit: string) => `Elevation, ${unit}`,
  inTen: (level: string) => `${level} in 10`,
  inHundred: (level: string) => `${level} in 100`,
  bands: "Band, %",
  reach: (below: string, above: string) => `−${below} +${above}`,
  bandsMean:
    "Band: how far below and above the printed rate the best one lies for 8 in 10 heaters, or for 95 in 100.",
  bandsMine:
    "Band: how far below and above the printed rate your heater's best one lies, 8 in 10 times, or 95 in 100.",
  extrapolated: "( ) Air nobody has tuned in yet: trust it less.",
  notes: {
    heater: "Heater",
    place: "Place",
    date: "Date",
    found: (end: string) => `Found, ${end}, Hz`,
  },
  holds: (climb: string, warmth: string) =>
    `For this heater, this place, this date: check again after ${climb} or ${warmth}.`,
  nomogram: {
    title: "Between the rows: a straight-edge",
    name: (low: string, high: string) =>
      `Three scales: elevation, pump rate (lowest power at ${low} rpm, highest at ${high} rpm), night temperature. The tables hold the same figures.`,
    how: "Lay a straight-edge from elevation (left) through night temperature (right): it crosses the middle line at both pump rates.",
    example: (elevation: string, temperature: string, low: string, high: string) =>
      `Dotted: ${elevation}, ${temperature} give ${low} and ${high} Hz.`,
    error: (pct: string) =>
      `For standard pressure and 50 % humidity; drawn within ${pct} % of the atlas.`,
    dashed: "Dashed: air nobody has tuned in.",
    rate: "Hz",
  },
  use: {
    title: "Without a phone",
    steps: (hz: string) => [
      "Find the row of your elevation and the column of the night's coldest hour; between two, take a rate between.",
      "Set lowest and highest power, fans as printed. Another fan speed: change the rate in proportion.",
      `Outdoors, with a CO meter near the exhaust: go in ${hz} Hz steps until the steady reading has risen on both sides. Settle between: lowest power on the rich side, highest leaner. If the flame falters or it smokes, go back.`,
    ],
  },
  safety: {
    title: "Carbon monoxide kills",
    front: "More on the back.",
    lines: [
      "A starting point only. Tune outdoors: never in a garage, tent or cabin, nor with anyone asleep inside.",
      "A separate certified CO alarm wherever people sleep, never the meter at the exhaust; a silent one does not mean there is none. Alarm, headache, dizziness: everyone out, then call for help.",
      "The exhaust gets hot. Let the heater cool down by itself; never cut its power.",
      "First come the maker's manual, local codes, vehicle and boat approval rules, licensed heating and electrical practice. Some approved installations may not be altered at all.",
    ],
  },
};
