/** Words of the map; fetched with it. */
export const mapWords = {
  title: "Suggested pump rate on the map",
  shown: "Colours show",
  aspects: { rate: "pump rate", sure: "how sure it is", wanted: "tunes wanted" },
  end: "Power shown",
  night: "Night on the map",
  nightUnit: "Night on the map: unit",
  standardAir: "standard atmosphere",
  legends: {
    rate: (end: string) => `Pump rate, ${end}, and the elevation it suits at this temperature`,
    sure: (end: string) => `How far off it may be, ${end}: 95 in 100 heaters lie within`,
    wanted: (end: string) =>
      `How much one more tune there would narrow the band of the average heater, ${end}, in percentage points`,
  },
  ofAverage: "Colours and lines are those of the average heater. A tap counts your own tunes, too.",
  atElevation: (elevation: string) => `at ${elevation}`,
  nowhere: "doesn't occur at this temperature",
  hatched: "no tunes in such air yet",
  contour: "same pump rate all along the line",
  cellMark: "how many tunes come from here",
  none: "This browser draws no map (WebGL is off or missing), so here is a still picture. Everything else works.",
  lost: "The browser has stopped drawing the map; it comes back by itself if it can. Until then, a still picture.",
  again: "Draw the map again",
  picture: "Still picture of suggested pump rates around the world",
  pictureFailed: "The elevations for the picture could not be loaded.",
  builtInGround:
    "The elevation source set up for this atlas did not deliver everything: the coarser built-in terrain is shown instead.",
  builtInBasemap:
    "The basemap set up for this atlas cannot be drawn: the built-in one is shown instead.",
  loading: "Loading the map …",
  click:
    "Click or tap for the starting settings there. By keyboard: arrows move the map, + and − zoom, Enter takes its middle.",
  beyond:
    "Zoomed in beyond the data: between the places named, elevations and colours are estimates.",
  wanted: {
    title: "Where a tune is wanted most",
    means: (heater: string, end: string) =>
      `One more tune in such air, by somebody who has not shared one yet, would narrow the band of the average heater (${heater}, ${end}):`,
    row: (elevation: string, temperature: string, now: string, then: string) =>
      `At ${elevation} and ${temperature}: from ±${now} % to ±${then} %`,
    none: "One more tune would change little anywhere: the average heater is well known.",
  },
  estimated: "Up close, the land's colour between the places named is an estimate.",
  takeMiddle: "Starting settings for the middle of the map",
  cells: "Where the tunes come from",
  cellsNone: "No tunes yet.",
  cellsWithin: (n: number) => `${n} cells: press to see them`,
  cellColumns: ["Cell near", "Mean elevation", "Tunes", "Owners", "Lowest power", "Highest power"],
  shift: (pct: number) =>
    Math.abs(pct) < 0.5
      ? "as expected"
      : `${Math.abs(pct).toFixed(0)} % ${pct > 0 ? "richer" : "leaner"}`,
  foot: {
    close: "Close",
    asking: "Looking up the elevation …",
    position: (lat: string, lon: string) => `${lat}, ${lon}`,
    from: (distance: string, name: string) => `${distance} from ${name}`,
    goToAnswer: "Go to the answer",
  },
  cell: {
    gone: "The tunes you came for are not shown on the map any more.",
    title: (lat: string, lon: string) => `Tunes near ${lat}, ${lon}`,
    count: (tunes: number, contributors: number) =>
      `${tunes === 1 ? "1 tune" : `${tunes} tunes`} by ${contributors === 1 ? "1 owner" : `${contributors} owners`}`,
    between: (lowest: string, highest: string) => `${lowest} to ${highest}`,
    since: (oldest: string, newest: string) => `${oldest} to ${newest}`,
    loading: "Fetching them …",
    show: "Show these tunes",
    list: "Settings of these tunes",
    columns: [
      "Month",
      "Elevation",
      "Air temperature",
      "Heater size",
      "Lowest power",
      "Highest power",
    ],
    set: (hz: string, rpm: string) => `${hz} Hz at ${rpm} rpm`,
    coUnknown: "no CO reading",
    unknown: "not given",
    newest: (shown: number, of: string) => `The newest ${shown} of ${of}.`,
    wide: "Their owners have tuned in several places. So that nobody can follow them, they are shown together in an area of about 330 km across, with the year.",
    meters:
      "Lowest CO reading as each owner's meter showed it: it compares only with the same meter at the same spot.",
  },
  credit: "GeoNames (CC BY 4.0), Natural Earth",
  label: "Map of suggested pump rates",
};
