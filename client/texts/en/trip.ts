/** Words of the Trip view; fetched with it. */
export const trip = {
  add: {
    title: "Add a stop",
    intro: "Where you sleep, in order. Cold night air is denser: it matters as much as altitude.",
    name: "Name",
    elevation: "Elevation",
    temperature: "Night temperature",
    nights: "Nights",
    button: "Add this stop",
    needElevation: "Type the elevation first.",
    full: (most: number) => `A trip has ${most} stops at most.`,
    byName: (n: number) => `Stop ${n}`,
    file: "Or a file: GPX, GeoJSON or CSV",
    fileHint:
      "CSV with a header line: name, elevation_m, temperature_C, lat, lon, nights. The file is read in this browser only and is not uploaded. Its stops are added at the end.",
    reading: "Reading the file …",
    added: (n: number) => (n === 1 ? "1 stop added." : `${n} stops added.`),
    estimated: (n: number) =>
      n === 1
        ? "1 elevation is estimated from its position."
        : `${n} elevations are estimated from positions.`,
    line: (line: number, reason: string) => `Line ${line}: ${reason}. Nothing was added.`,
    refused: (reason: string) => `${reason}. Nothing was added.`,
    noTerrain:
      "Some stops have no elevation, and the files to estimate it from cannot be reached. Add elevations, or try again when you are online",
  },
  map: {
    open: "Or choose on the map",
    middle: "Add the middle of the map as a stop",
    how: "Click or tap to add a stop there. By keyboard: arrows move the map, + and − zoom, Enter adds its middle.",
    name: (lat: string, lon: string) => `${lat}, ${lon}`,
    noTerrain: "The files for working out the elevation cannot be reached: type the elevation.",
  },
  list: {
    empty: "No stop yet: search for a place, type an elevation, or open a file.",
    stop: (n: number, name: string) => `Stop ${n}: ${name}`,
    guess: (temperature: string) => `Empty: ${temperature} is used, from the standard atmosphere.`,
    estimated: (half: string) => `Estimated from the position, ±${half}.`,
    close: "Close",
    earlier: "Earlier",
    later: "Later",
    remove: "Remove",
    earlierThan: (name: string) => `Move ${name} earlier`,
    laterThan: (name: string) => `Move ${name} later`,
    tune: "Tune there",
    tuneAt: (name: string) => `Tune there: ${name}`,
    removeThis: (name: string) => `Remove ${name}`,
    nowAt: (name: string, n: number, of: number) => `${name} is now stop ${n} of ${of}.`,
    clear: "Start a new trip",
    bringBack: "Bring the last trip back",
  },
  heater: {
    title: "Heater and nights",
    rich: "Too rich beyond, %",
    lean: "Too lean beyond, %",
    windowWhy:
      "How far the mixture may shift from a good tune before it needs a new one. 12 % richer and 25 % leaner are our own working values, not measured limits.",
    hours: "Hours a night",
    share: "Power, % of the range",
    shareHint: "0 is lowest power, 100 is highest.",
    supply: "Supply voltage",
    tank: "Fuel tank, L",
    battery: "Usable battery, Ah",
    outOfRange: (least: string, most: string) => `From ${least} to ${most}.`,
  },
  result: {
    title: "The trip",
    all: "All figures",
    kept: "Shown along the trip",
    oneTune: "one tune for all stops",
    each: "a new tune at each stop",
    now: "your heater as it is set now",
    fewest: (n: number) => (n === 1 ? "fewest tunes: 1" : `fewest tunes: ${n}`),
    tuneOf: (n: number, name: string) => `tune of stop ${n}, ${name}`,
    stop: "Stop",
    set: "Set, lowest / highest",
    guessed: "estimate",
    start: (end: string) => `Start, ${end}`,
    startHere: (hz: string) => `Starting settings here: ${hz} Hz.`,
    bandOthers: (level: string, band: string) => `${level} in 10 heaters: ${band} Hz.`,
    bandMine: (level: string, band: string) => `Your heater, ${level} in 10 times: ${band} Hz.`,
    shift: (end: string) => `Shift, ${end}`,
    band: (lower: string, upper: string) => `${lower} to ${upper}`,
    about: (pct: string) => `±${pct}`,
    shifts: (shown: string) => `Set and shifts of: ${shown}.`,
    bands: (low: string, high: string, level: string) =>
      `Below each start, at fan speeds of ${low} and ${high} rpm: where ${level} in 100 heaters are.`,
    bandsMine: (low: string, high: string, level: string) =>
      `Below each start, at fan speeds of ${low} and ${high} rpm: where your heater is ${level} in 100 times.`,
    published: (date: string) => `published ${date}`,
    tableLabel: "Table: settings, mixture shift, fuel and battery at each stop",
    rich: (pct: string) => `${pct} % richer`,
    lean: (pct: string) => `${pct} % leaner`,
    none: "no shift",
    beyond: "outside the limits",
    tight: (room: string) => `tight: ${room} % from the limit`,
    extrapolated: "no tunes in such air yet",
    prior:
      "No tunes of this heater size yet: an estimate from physics and common practice, so the bands are wide.",
    how: "The shift compares the pump rate you can set with the one expected at the stop, at the same fan speed, in whole percents. Tight means nearer to the limit than 3 %, or than the uncertainty. ± is the uncertainty from the night's air and the elevation (95 in 100 cases); that the fit itself may be off comes on top. The bands are those of the starting settings: your heater's own minimum may lie anywhere in them, but its shifts from stop to stop follow the same curve.",
    cannot:
      "These figures do not fit together. Check the fan speeds, the fuel per pulse and the limits.",
  },
  plan: {
    yes: (rates: string) => `One tune will do: ${rates} Hz.`,
    tightly: (rates: string) => `One tune will do, but only just: ${rates} Hz.`,
    no: (n: number) => `One tune will not do: it takes ${n}.`,
    notQuite: "One tune will not quite do.",
    room: (place: string, room: string) => `Least room: ${place}, ${room} % from the limit.`,
    tight: (place: string, room: string) =>
      `Tight: ${place}, only ${room} % from the limit. Check there with the meter.`,
    unsure: (place: string, room: string, unsure: string) =>
      `Tight: ${place}, ${room} % from the limit, which may be off by ${unsure} %. A better night temperature or elevation helps.`,
    over: (place: string, shift: string, over: string) =>
      `Farthest off: ${place}, ${shift}, ${over} % beyond the limit.`,
    coarse: (hz: string) =>
      `The pump can only be set in steps of ${hz} Hz, which is coarser than your limits: the nearest step is used. The fan can make up for the rest.`,
    changeAt: (names: string) => `Change over at ${names}, before the night.`,
    tune: (n: number) => `Tune ${n}`,
  },
  profile: {
    set: (low: string, high: string) => `Hz, lowest / highest power; fan ${low} / ${high} rpm`,
    richer: "richer",
    leaner: "leaner",
    tap: "Tap a stop to change it.",
    ends: "Left bar: lowest power; right: highest.",
    window: (rich: string, lean: string) =>
      `Dashed: your limits, ${rich} % richer and ${lean} % leaner.`,
    change: "Upright line: change over.",
    guessed: "≈: night not known, temperature estimated.",
    nights: (n: number) => `${n} nights`,
    spokenSite: (elevation: string, night: string) => `${elevation}, night ${night}.`,
    spokenEnd: (end: string, hz: string, shift: string) => `Set ${hz} Hz at ${end}: ${shift}.`,
    press: "Press to change the stop.",
  },
  nights: {
    fuelWord: "Fuel",
    batteryWord: "Battery",
    spare: (full: string, pct: string) => `of ${full}: ${pct} % to spare`,
    spareTight: (full: string, pct: string) => `of ${full}: tight, only ${pct} % to spare`,
    notEnough: (full: string) => `is more than ${full}`,
    tank: {
      tightWhy:
        "Tight, because heaters differ by more than that, and a cold night takes more. Plan to refuel on the way, with the heater off and cold.",
      ends: "One full tank does not last. Refuel here at the latest, with the heater off and cold:",
      short: (name: string) => `A full tank does not last one night at ${name}.`,
      sooner: ". Tight: refuel a night earlier",
    },
    battery: {
      tightWhy:
        "Tight, because heaters differ by more than that, and a battery gives less in the cold. Plan to charge it on the way.",
      ends: "One full battery does not last. Charge it here at the latest:",
      short: (name: string) => `A full battery does not last one night at ${name}.`,
      sooner: ". Tight: charge a night earlier",
    },
    count: (n: number) => (n === 1 ? "1 night:" : `${n} nights:`),
    oneNight: (litres: string, Ah: string) => `A night takes ${litres} L and ${Ah} Ah.`,
    afterLast: (left: string) => `After the last night ${left} are left.`,
    afterLastTight: (left: string) => `After the last night only ${left} are left: tight.`,
    leftThen: (left: string) => `: ${left} left then`,
    refill: (name: string, night: number) => `${name}, before night ${night} there`,
    refillEvery: (n: number) => (n === 1 ? ", then before each" : `, then every ${n} nights`),
    nightsColumn: "Nights",
    fuelColumn: "Fuel, L",
    batteryColumn: "Battery, Ah",
    tankColumn: "Tank lasts, nights",
    chargeColumn: "Battery lasts, nights",
    total: "All nights",
    noDose:
      "Estimated from what a heater of this size usually burns in such air: with the fuel per pulse (µL) it gets more accurate.",
    assumes: (hours: string, share: string, current: string, V: string) =>
      `Assumed: ${hours} h a night at ${share} % of the power range, at each stop's starting settings; ${current} A running at ${V} V, one start a night; nothing else draws from tank or battery, and nothing charges it on the way.`,
    practice: (run: string, start: string, minutes: number) =>
      `${run} A running, from lowest to highest power, ${start} A in a start: common practice, no source; ${minutes} minutes a start: our own value.`,
  },
  keep: {
    title: "Take it along",
    send: "Send the trip",
    link: "Copy the link",
    linkLabel: "Link that holds this trip",
    linkNote:
      "The link holds the whole trip, names and positions too. It is not sent to the atlas; whoever gets it can read it.",
    print: "Print",
    csv: "Download as CSV",
    json: "Download as JSON",
    gpx: "Download as GPX",
    geojson: "Download as GeoJSON",
    unplaced: (n: number) =>
      n === 1
        ? "1 stop has no position: GPX and GeoJSON leave it out."
        : `${n} stops have no position: GPX and GeoJSON leave them out.`,
    kept: "This trip is saved in this browser.",
    notKept: "This browser does not save it (storage is full or blocked): copy the link instead.",
    opened: (n: number) =>
      n === 1 ? "Opened from a link: 1 stop." : `Opened from a link: ${n} stops.`,
    openedOwn: (n: number) =>
      n === 1
        ? "It is worked out with 1 tune of the sender's own heater."
        : `It is worked out with ${n} tunes of the sender's own heater.`,
    openedAverage: "It shows the average answer for such a heater, without tunes of its own.",
    linkRefused: (reason: string) => `${reason}. The trip below is the one saved in this browser.`,
    back: "Back to the trip saved before",
  },
  cautions: {
    title: "On the road",
    lines: [
      "Never refuel while the heater is hot or running.",
      "After rough roads, and before the first night, look at the exhaust joints, the air intake and the fuel lines.",
      "Fuse and cable must be of the size the maker asks for; the start draws the most current.",
      "A tune carried elsewhere is a start, not a finished setting: where it matters, tune again outdoors with the meter.",
    ],
  },
  refused: {
    empty: "The file is empty",
    noText: "The file is not text",
    noStop: "There is no stop in the file",
    tooMany: (n: number, most: number) => `The file has ${n} stops; a trip has ${most} at most`,
    tooLarge: (MB: number) => `The file is larger than ${MB} MB`,
    unreadable: "The stop cannot be read",
    pair: "lat and lon belong together: one of them is missing",
    nowhere: "neither an elevation nor a position",
    mustBe: (name: string, least: number, most: number, unit: string) =>
      `${name} must be a number from ${least} to ${most}${unit}`,
    notNumber: (name: string, text: string) => `${name} is not a number: “${text}”`,
    csvHead:
      "the header line must name the columns elevation_m, or lat and lon (name and temperature_C if you like)",
    csvLine: "this cannot be read as CSV",
    csvLength: "it has more or fewer fields than the header line",
    csvOpen: "a quotation mark is opened and never closed",
    csvAfterQuote: "text follows a closing quotation mark",
    csvMiddleQuote: "a quotation mark stands in the middle of a field",
    json: "this is not JSON that can be read",
    notGeoJson:
      "The file is JSON, but not GeoJSON: a FeatureCollection, a Feature or a Point is needed",
    notFeature: (n: number) => `number ${n} in the collection is not a feature`,
    position: "a point needs two numbers, lon and lat",
    documentType: "The file declares a document type, which GPX does not need",
    xml: "this is not XML that can be read",
    notGpx: "The file is XML, but not GPX",
    trackOnly: "The file holds a recorded track only: no waypoint or route point to stop at",
    linkLong: "The link is longer than any trip",
    linkNone: "The link holds no trip",
    linkNewer:
      "The link was made by a newer version of this page: reload the page, then open it again",
    linkDamaged: "The link is damaged, part of it may be missing: copy it again, whole",
    linkFigures: "The link holds figures that cannot be: it may have been changed on its way",
  },
};
