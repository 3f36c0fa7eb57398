/** Words of the map; fetched with it. */
export const mapWords = {
  title: "Suggested pump rate on the map",
  shown: "Colours show",
  aspects: { rate: "pump rate", sure: "how sure it is" },
  end: "End shown",
  night: "Night on the map",
  nightUnit: "Night on the map: unit",
  standardAir: "standard atmosphere",
  legends: {
    rate: (end: string) => `Pump rate, ${end}, and where this night asks for it`,
    sure: (end: string) => `How far off it may be for one more heater, ${end}: 95 % lie within`,
  },
  atElevation: (elevation: string) => `at ${elevation}`,
  nowhere: "not on this night",
  hatched: "outside the air anyone has tuned in",
  cellMark: "tunes from here, with their number",
  none: "This browser draws no map (WebGL is off or missing), so here is a still picture. Everything else works.",
  lost: "The map lost its drawing context; it comes back when the browser gives one. Until then, a still picture.",
  again: "Draw the map again",
  picture: "Still picture of suggested pump rates around the world",
  pictureFailed: "The picture's elevations could not be fetched.",
  builtInGround:
    "The configured elevation source has not given every tile: the built-in, coarser land stands in.",
  builtInBasemap: "The configured basemap cannot be drawn: the built-in one stands in.",
  loading: "Loading the map …",
  click:
    "Click or tap for a start tune there. By keyboard: arrows move the map, + and − zoom, Enter takes its middle.",
  takeMiddle: "Start tune for the middle of the map",
  cells: "Where the tunes come from",
  cellsNone: "No tunes yet.",
  cellColumns: ["Cell near", "Mean elevation", "Tunes", "Contributors", "Low end", "High end"],
  shift: (pct: number) =>
    Math.abs(pct) < 0.5
      ? "as fitted"
      : `${Math.abs(pct).toFixed(0)} % ${pct > 0 ? "rich" : "lean"}`,
  foot: {
    close: "Close",
    asking: "Looking up the elevation …",
    position: (lat: string, lon: string) => `${lat}, ${lon}`,
    from: (distance: string, name: string) => `${distance} from ${name}`,
    goToAnswer: "Go to the answer",
  },
  cell: {
    title: (lat: string, lon: string) => `Tunes near ${lat}, ${lon}`,
    count: (tunes: number, contributors: number) =>
      `${tunes === 1 ? "1 tune" : `${tunes} tunes`} by ${contributors === 1 ? "1 contributor" : `${contributors} contributors`}`,
    between: (lowest: string, highest: string) => `${lowest} to ${highest}`,
    since: (oldest: string, newest: string) => `${oldest} to ${newest}`,
    loading: "Fetching them …",
    show: "Show these tunes",
    list: "Settings of these tunes",
    columns: ["Month", "Elevation", "Air temperature", "Heat class", "Low end", "High end"],
    set: (hz: string, rpm: string) => `${hz} Hz at ${rpm} rpm`,
    co: (ppm: string) => `${ppm} ppm`,
    coBelow: (ppm: string) => `below ${ppm} ppm`,
    coUnknown: "no CO reading",
    unknown: "not given",
    newest: (shown: number, of: string) => `The newest ${shown} of ${of}.`,
    meters:
      "Lowest CO as each owner's meter showed it: it compares only with the same meter at the same spot.",
  },
  credit: "GeoNames (CC BY 4.0), Natural Earth",
  label: "Map of suggested pump rates",
};
