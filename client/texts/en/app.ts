/** Words of the page itself and of its first views. */
export const t = {
  name: "Hypsotune",
  tagline: "Starting settings for diesel air heaters",
  skip: "Skip to the content",
  language: "Language",
  theme: {
    title: "Colours",
    system: "As the system",
    light: "Light",
    dark: "Dark",
    contrast: "High contrast",
  },
  demo: "Invented data: no tune here is real.",
  places: {
    start: "Start",
    trip: "Trip",
    onsite: "On site",
    logbook: "Logbook",
    atlas: "Atlas",
  },
  low: "Lowest power",
  high: "Highest power",
  endWord: { low: "lowest power", high: "highest power" },
  unit: "unit",
  rpm: "rpm",
  loading: "Asking the atlas …",
  partMissing: "This part of the page could not be loaded. Reload the page when you are online.",
  unreachable:
    "The atlas cannot be reached. These figures come from the fit saved in this browser.",
  notReached: "The atlas cannot be reached. Check the connection and try again.",
  noFit:
    "The atlas cannot be reached, and no fit is saved in this browser yet. Try again when you are online.",
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
      "Carbon monoxide kills. A starting point only, never a finished setting. Tune outdoors, watch the meter near the exhaust, and keep a separate certified carbon monoxide alarm working wherever people sleep: never the meter used at the exhaust. A silent alarm does not mean there is none. Alarm, headache or dizziness: everyone out into fresh air, then call for help.",
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
    assumed: "assumed",
    choose: "Choose a place",
    tonight: "tonight",
    placeHint: "Town, pass or high camp",
    elevation: "Elevation",
    positionLabel: "Or where you are",
    position: "Use my position",
    positionNote: "Your position stays on this device.",
    positionDenied: "Location is off or blocked. Type an elevation or a place instead.",
    positionWait: "Waiting for the position …",
    noPlace: (name: string) =>
      `No place called “${name}”. Check the spelling, or type the elevation instead.`,
    similar: (name: string) =>
      `No place called “${name}”. Choose a similar name, or type the elevation instead.`,
    results: (n: number) => (n === 1 ? "1 place" : `${n} places`),
    unknownElevation: "elevation unknown",
    estimate: (half: string) =>
      `Estimated, ±${half}. If a sign, a map or your phone's GPS says otherwise, type that.`,
    outOfRange: (lowest: string, highest: string) =>
      `The atlas answers from ${lowest} to ${highest}.`,
    notNumber: "Type a number.",
  },
  air: {
    title: "Night air",
    tunedTitle: "Air while tuning",
    tuned: "Temperature while tuning",
    temperature: "Night temperature",
    temperatureShort: "Cold air is denser: it matters as much as altitude.",
  },
  heater: {
    title: "Heater",
    heat: "Heater size",
    heatOption: (kW: number) => `${kW} kW`,
    lowFan: "Fan speed, lowest power, rpm",
    highFan: "Fan speed, highest power, rpm",
    fanWhy:
      "The size is the full output on the label. Type your own fan speeds if you can: otherwise the usual ones for the size are used.",
    dose: "Fuel per pulse, µL",
    doseWhy: "What the pump delivers per pulse. If you know it, you also see fuel use and heat.",
  },
  answer: {
    title: "Starting settings",
    at: (place: string, elevation: string) => `${place}, ${elevation}`,
    elevationOnly: (elevation: string) => `at ${elevation}`,
    or: (hz: string, rpm: string) => `or ${hz} Hz at ${rpm} rpm`,
    certainty: { quite: "Quite certain", fairly: "Fairly certain", unsure: "Uncertain" },
    within: (level: string, half: string) =>
      `${level} in 10 times the best is in these ranges (±${half} %).`,
    now: (hz: string) => `now ${hz}`,
    finer: "More about air and heater",
    fanAt: (rpm: string) => `fan at ${rpm} rpm`,
    spoken: (end: string, hz: string, level: string, lower: string, upper: string) =>
      `Start at ${hz} hertz at the ${end}; ${level} in 10 times the best is between ${lower} and ${upper}.`,
    tuneHere: "Tune here with a CO meter",
    printCard: "Print the card",
    onMap: "Choose on the map",
    cannot: "These figures do not fit together. Check fan speeds and pressure.",
  },
};
