/** Words of the page itself and of its first views. */
export const t = {
  name: "Hypsotune",
  tagline: "Start tunes for diesel air heaters",
  skip: "Skip to the content",
  language: "Language",
  demo: "Invented data: no tune here is real.",
  views: {
    atlas: "Atlas",
    trip: "Trip",
    onsite: "On site",
    card: "Card",
    logbook: "Logbook",
    share: "Share",
    scaling: "Scaling",
    data: "Data",
  },
  low: "Low end",
  high: "High end",
  endWord: { low: "low end", high: "high end" },
  unit: "unit",
  rpm: "rpm",
  loading: "Asking the atlas …",
  partMissing:
    "This part of the page could not be fetched. With a connection, reload the page to get it.",
  unreachable: "The atlas cannot be reached. Figures shown rest on the fit kept in this browser.",
  notReached: "The atlas cannot be reached. Check the connection and try again.",
  noFit:
    "The atlas cannot be reached, and this browser has kept no fit yet. Try again with a connection.",
  retry: "Try again",
  alarm: {
    open: "CO alarm indoors!",
    title: "Everyone out. Now.",
    call: "Then call the emergency number, from outside:",
    local: "or the local one",
    outside: "When everyone is outside",
  },
  safety: {
    title: "Carbon monoxide kills",
    more: "All cautions",
    brief:
      "A starting point only. Carbon monoxide kills: tune outdoors, and keep an alarm working where people sleep.",
    notice:
      "A starting point only, never a finished setting. Carbon monoxide kills. Tune outdoors, watch the meter near the exhaust, and keep a separate certified carbon monoxide alarm working wherever people sleep: never the meter used at the exhaust. A silent alarm does not mean there is none. Alarm, headache or dizziness: everyone out into fresh air, then call for help.",
    notFor: "Not for",
    not_for: [
      "tuning in a garage, tent, cabin or any closed space, or with anyone asleep inside",
      "replacing the maker's settings where changing them is not allowed: some approved installations may not be altered at all",
      "judging whether air is safe to breathe",
    ],
    deferTo: "These come first",
    defer_to: [
      "the maker's manual",
      "local codes and vehicle or boat approval rules",
      "licensed heating and electrical practice",
    ],
  },
  site: {
    title: "Where",
    place: "Place",
    placeHint: "Town, pass or high camp",
    elevation: "Elevation",
    positionLabel: "Or where you are",
    position: "Use my position",
    positionNote: "Your position stays on this device.",
    positionDenied: "This device does not tell its position. Type an elevation or a place instead.",
    positionWait: "Waiting for the position …",
    noPlace: (name: string) =>
      `No place called “${name}”. Check the spelling, or type the elevation instead.`,
    similar: (name: string) =>
      `No place called “${name}”. Choose a similar name, or type the elevation instead.`,
    results: (n: number) => (n === 1 ? "1 place" : `${n} places`),
    unknownElevation: "elevation unknown",
    estimate: (half: string) =>
      `Estimated, within ± ${half} for 95 in 100 such points. A sign, a map or a phone's GPS knows better: type it in.`,
    outOfRange: (lowest: string, highest: string) =>
      `The atlas answers from ${lowest} to ${highest}.`,
    notNumber: "Type a number.",
  },
  air: {
    title: "Night air",
    tunedTitle: "Air while tuning",
    tuned: "Temperature while tuning",
    temperature: "Night temperature",
    temperatureShort: "Counts like height does.",
    temperatureWhy:
      "It counts as much as height: −20 against +20 °C is 16 % of density, like 1,500 m. Left empty, the standard atmosphere's is taken and the bands widen.",
    pressure: "Pressure",
    pressureKind: "This pressure is",
    station: "station pressure",
    qnh: "sea-level (QNH)",
    pressureWhy:
      "Station pressure is what a barometer shows where you stand. Weather reports give sea-level pressure (QNH): taking one for the other costs over 20 % at 1,700 m.",
    looksQnh: (standard: string) =>
      `At this elevation a barometer shows about ${standard}. Is this the sea-level figure? Then choose sea-level (QNH).`,
    humidity: "Relative humidity, %",
  },
  heater: {
    title: "Heater",
    heat: "Heat class",
    heatOption: (kW: number) => `${kW} kW`,
    lowFan: "Fan speed, low end, rpm",
    highFan: "Fan speed, high end, rpm",
    fanWhy:
      "The heat class is the full output on the label. Left empty, its usual fan speeds are taken: your own are better.",
    dose: "Dose, µL per pulse",
    doseWhy: "Fuel per pump pulse, if you know it: adds fuel use and heat.",
  },
  answer: {
    title: "Start tune",
    at: (place: string, elevation: string) => `${place}, ${elevation}`,
    elevationOnly: (elevation: string) => `at ${elevation}`,
    air: (density: string, ratio: string, altitude: string) =>
      `Air ${density} kg/m³, ${ratio} of the standard at sea level: like ${altitude} in standard air.`,
    assumed: { temperature: "temperature", pressure: "pressure", humidity: "humidity" },
    assumes: (what: string) => `Assumed from the standard atmosphere or usual values: ${what}.`,
    fanAt: (rpm: string) => `fan at ${rpm} rpm`,
    exact: (hz: string) => `exactly ${hz} Hz`,
    mean: "Average tune",
    meanBand: (level: string) => `average, ${level} % sure`,
    heaters: (level: string) => `${level} in 100 heaters`,
    range: (lower: string, upper: string) => `${lower} to ${upper} Hz`,
    spoken: (end: string, hz: string, level: string, lower: string, upper: string) =>
      `Start at ${hz} hertz at the ${end}; ${level} in 100 heaters between ${lower} and ${upper}.`,
    burn: (litres: string, kW: string) =>
      `${litres} L/h, about ${kW} kW to the room (80 % efficiency assumed)`,
    waysTitle: "Two ways to get there",
    way: "Way",
    heatLeft: "Heat, of sea level's",
    keepFan: "Keep the fan, cut the pump",
    keepHeat: "Keep the heat, raise the fan",
    fanShort: (limit: string) =>
      `The fan ends at about ${limit} rpm: full heat is out of reach here.`,
    cannot: "These figures cannot stand together. Check fan speeds and pressure.",
  },
  basis: {
    title: "What it rests on",
    tunes: (tunes: string, contributors: string, kW: string) =>
      `${tunes} tunes by ${contributors} contributors of the ${kW} kW class.`,
    prior: (kW: string) =>
      `No tunes of the ${kW} kW class yet: this is physics and common practice alone, and the bands are wide.`,
    range: (from: string, to: string) => `Their air: ${from} to ${to} kg/m³.`,
    extrapolated: "Outside the air anyone has tuned in: extrapolated. Trust the bands less here.",
    inside: "This air lies within it.",
    fit: (version: string, age: string) => `Fit ${version}, ${age}.`,
    priorFit: "No fit published yet.",
    ages: {
      now: "published just now",
      minutes: (n: number) => `${n} min old`,
      hours: (n: number) => `${n} h old`,
      days: (n: number) => `${n} days old`,
    },
  },
};
