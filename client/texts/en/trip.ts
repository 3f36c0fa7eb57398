/** Words of the Trip view; fetched with it. */
export const trip = {
  add: {
    title: "Stops",
    intro: "Where you sleep, in order. The night's temperature counts like height does.",
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
      "CSV with a head line: name, elevation_m, temperature_C, lat, lon, nights. The file is read in this browser and goes nowhere. Its stops are added at the end.",
    reading: "Reading the file …",
    added: (n: number) => (n === 1 ? "1 stop added." : `${n} stops added.`),
    estimated: (n: number) =>
      n === 1
        ? "1 elevation is estimated from its position."
        : `${n} elevations are estimated from positions.`,
    line: (line: number, reason: string) => `Line ${line}: ${reason}. Nothing was added.`,
    refused: (reason: string) => `${reason}. Nothing was added.`,
    noTerrain:
      "Some stops have no elevation, and the files to estimate it from cannot be reached. Add elevations, or try again with a connection",
  },
  map: {
    open: "Or choose on the map",
    middle: "Add the middle of the map as a stop",
    how: "Click or tap to add a stop there. By keyboard: arrows move the map, + and − zoom, Enter adds its middle.",
    name: (lat: string, lon: string) => `${lat}, ${lon}`,
    noTerrain: "The files to work out its elevation from cannot be reached: type the elevation.",
  },
  list: {
    title: "Stops in their order",
    empty: "No stop yet: search a place, type an elevation, or bring a file.",
    stop: (n: number, name: string) => `Stop ${n}: ${name}`,
    guess: (temperature: string) =>
      `Left empty: ${temperature}, a guess by the standard atmosphere.`,
    estimated: (half: string) =>
      `Estimated from the position, within ± ${half} for 95 in 100 points.`,
    earlier: "Earlier",
    later: "Later",
    remove: "Remove",
    earlierThan: (name: string) => `Move ${name} earlier`,
    laterThan: (name: string) => `Move ${name} later`,
    removeThis: (name: string) => `Remove ${name}`,
    nowAt: (name: string, n: number, of: number) => `${name} is now stop ${n} of ${of}.`,
    clear: "Start a new trip",
    bringBack: "Bring the last trip back",
  },
  heater: {
    title: "Heater and nights",
    rich: "Window towards rich, %",
    lean: "Window towards lean, %",
    windowWhy:
      "How far the mixture may shift from a good tune before it needs a new one. 12 rich and 25 lean are our own working values, not measured limits.",
    hours: "Hours a night",
    share: "Power, % of the range",
    shareHint: "0 is the low end, 100 the high.",
    supply: "Supply voltage",
    tank: "Fuel tank, L",
    outOfRange: (least: string, most: string) => `From ${least} to ${most}.`,
  },
  result: {
    title: "Along the trip",
    kept: "Shift shown for",
    oneTune: "one tune for all stops",
    fewest: (n: number) => (n === 1 ? "fewest tunes: 1" : `fewest tunes: ${n}`),
    tuneOf: (n: number, name: string) => `tune of stop ${n}, ${name}`,
    stop: "Stop",
    night: "Night",
    guessed: "guess",
    start: (end: string) => `Start tune, ${end}`,
    shift: (end: string) => `Shift, ${end}`,
    fan: (fan: string, level: string) => `fan ${fan} rpm; below, ${level} in 100 heaters`,
    band: (lower: string, upper: string) => `${lower} to ${upper}`,
    about: (pct: string) => `± ${pct}`,
    shifts: (shown: string) => `Shifts of: ${shown}.`,
    published: (date: string) => `published ${date}`,
    tableLabel: "Table: start tune and mixture shift at each stop",
    rich: (pct: string) => `${pct} % rich`,
    lean: (pct: string) => `${pct} % lean`,
    none: "no shift",
    beyond: "outside the window",
    tight: (room: string) => `tight: ${room} % from the edge`,
    extrapolated: "outside the air anyone has tuned in",
    prior: "No tunes of this class yet: physics and common practice alone, and wide bands.",
    how: "A shift is that of the rate as it can be set, against what the fit expects at the stop, fan speed unchanged, in whole percents. Tight is nearer to the window's edge than 3 %, or than what is not known. ± is for what is not known of the night's air and the elevation (95 in 100); that the fit's slope may be off comes on top. Bands are those of the start tune: your heater's own good tune may lie anywhere in them, but its shifts from stop to stop follow the same slope.",
    cannot: "These figures cannot stand together. Check the fan speeds, the dose and the window.",
  },
  plan: {
    title: "Will one tune do?",
    yes: (rich: string, lean: string) =>
      `Yes: one tune stays within ${rich} % rich and ${lean} % lean at every stop.`,
    no: (rich: string, lean: string) =>
      `No: no one tune stays within ${rich} % rich and ${lean} % lean at every stop.`,
    tightly: (rich: string, lean: string) =>
      `Yes, but only just: one tune stays within ${rich} % rich and ${lean} % lean at every stop.`,
    oneTitle: "The one tune",
    leastTitle: "The one tune that is least far off",
    room: (place: string, shift: string, room: string) =>
      `Least room: ${place}, ${shift}, ${room} % from the window's edge.`,
    tight: (place: string, shift: string, room: string) =>
      `Tight: ${place}, ${shift}, only ${room} % from the window's edge. Check there with a meter.`,
    unsure: (place: string, shift: string, room: string, unsure: string) =>
      `Tight: ${place}, ${shift}, ${room} % from the window's edge, and that shift may be off by ${unsure} %. A better night temperature or elevation tells more.`,
    over: (place: string, shift: string, over: string) =>
      `Farthest off: ${place}, ${shift}, ${over} % outside the window.`,
    coarse: (hz: string) =>
      `Here the pump's steps of ${hz} Hz are coarser than your window: the nearest one is taken. The fan can make up for the rest.`,
    where: (stop: string, end: string) => `${stop}, ${end}`,
    fewestTitle: (n: number) => (n === 1 ? "The fewest tunes: one" : `The fewest tunes: ${n}`),
    legs: (first: string, last: string) => (first === last ? first : `${first} to ${last}`),
    changeAt: (name: string) => `Change over at ${name}, before the night.`,
    tune: (n: number) => `Tune ${n}`,
  },
  profile: {
    title: "Elevation and shift",
    label: (shown: string) => `Elevation of each stop, and the mixture shift there with ${shown}`,
    rich: "rich: diagonal lines, upwards",
    lean: "lean: dots, downwards",
    ends: "Left bar: low end; right bar: high end.",
    scrollLabel: "Drawing: elevation and shift along the trip",
    window: "edges of the window",
    change: "change over",
  },
  nights: {
    title: "Fuel and battery for the nights",
    fuel: (litres: string) => `${litres} L of diesel`,
    battery: (Ah: string, V: string) => `${Ah} Ah at ${V} V.`,
    count: (n: number) => (n === 1 ? "1 night:" : `${n} nights:`),
    oneNight: (litres: string, Ah: string) => `A night takes ${litres} L and ${Ah} Ah.`,
    tankLasts: (litres: string, left: string, pct: string) =>
      `A full tank of ${litres} L lasts all of them, with ${left} L (${pct} %) to spare.`,
    tankTight: (litres: string, left: string, pct: string) =>
      `A full tank of ${litres} L lasts all of them only just: ${left} L (${pct} %) to spare.`,
    tightWhy:
      "Tight: heaters differ by more than that, and a cold night takes more. Plan a filling on the way, heater off and cold.",
    afterLast: (left: string) => `After the last night ${left} L are left.`,
    afterLastTight: (left: string) => `After the last night only ${left} L are left: tight.`,
    leftThen: (left: string) => `: ${left} L left then`,
    fillEarlier: ". Tight: fill it a night earlier",
    tankEnds: (litres: string) =>
      `A full tank of ${litres} L does not last all of them. Fill it at the latest, heater off and cold:`,
    tankShort: (litres: string, name: string) =>
      `A tank of ${litres} L does not last one night at ${name}.`,
    refill: (name: string, night: number) => `${name}, before night ${night} there`,
    refillEvery: (n: number) => (n === 1 ? ", then before each" : `, then every ${n} nights`),
    noTank:
      "With the tank's size it would say here how many nights it lasts, and where to fill it.",
    perNight: "Stop by stop",
    nightsColumn: "Nights",
    fuelColumn: "Fuel, L",
    batteryColumn: "Battery, Ah",
    tankColumn: "A tank lasts, nights",
    total: "All nights",
    noDose:
      "Fuel by what the heat class usually burns in that air: the dose (µL per pulse) would tell better.",
    assumes: (hours: string, share: string, current: string, V: string) =>
      `Taken for granted: ${hours} h a night at ${share} % of the power range, at each stop's start tune; ${current} A running at ${V} V, one start a night; nothing else draws from the tank.`,
    practice: (run: string, start: string, minutes: number) =>
      `${run} A running from the low end to the high, ${start} A in a start: common practice, no source; ${minutes} minutes a start: our own value.`,
    tableLabel: "Table: nights, fuel and battery by stop",
  },
  keep: {
    title: "Take it along",
    link: "Copy the link",
    copied: "The link is copied.",
    copyByHand: "Copy it from here:",
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
    kept: "This trip is kept in this browser.",
    notKept: "This browser does not keep it (storage is full or forbidden): copy the link instead.",
    opened: (n: number) =>
      n === 1 ? "Opened from a link: 1 stop." : `Opened from a link: ${n} stops.`,
    linkRefused: (reason: string) => `${reason}. The trip below is the one this browser kept.`,
    back: "Back to the trip kept before",
  },
  cautions: {
    title: "On the road",
    lines: [
      "No refuelling while the heater is hot or running.",
      "After rough roads look at the exhaust joints, the air intake and the fuel lines, each before the first night.",
      "Fuse and cable must be of the size the maker asks for; the start draws most.",
      "A tune carried elsewhere is a start, not a setting: tune again outdoors with a meter where it matters.",
    ],
  },
  refused: {
    empty: "The file is empty",
    noText: "The file is no text",
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
      "the head line must name the columns elevation_m, or lat and lon (name and temperature_C if you like)",
    csvLine: "this cannot be read as CSV",
    csvLength: "it has more or fewer fields than the head line",
    csvOpen: "a quotation mark is opened and never closed",
    csvAfterQuote: "text follows a closing quotation mark",
    csvMiddleQuote: "a quotation mark stands in the middle of a field",
    json: "this is not JSON that can be read",
    notGeoJson:
      "The file is JSON, but no GeoJSON: a FeatureCollection, a Feature or a Point is needed",
    notFeature: (n: number) => `number ${n} in the collection is no feature`,
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
