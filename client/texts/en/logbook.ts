/** Words of the Logbook view; fetched with it. */
export const logbookWords = {
  title: "Logbook",
  intro:
    "Your own heaters and what you did with them. It stays in this browser: nothing of it is sent anywhere unless you share a tune.",
  empty: "No heater yet. Add yours, then log its tunes and cleanings, or open a file you exported.",
  lost: (n: number) =>
    `This browser has wiped its storage: ${n === 1 ? "1 entry is" : `${n} entries are`} gone. Open your last export below.`,
  lostUnderstood: "Understood",
  mayWipe: "A browser may wipe its storage. Export now and then.",
  store: {
    forbidden:
      "This browser does not allow saving data here (a private window, or blocked site data): the logbook cannot be saved. Allow storage for this page, or use another window.",
    full: "This browser has no room left: nothing was saved and nothing was changed. Free some space or remove photos, then try again.",
  },
  heater: {
    title: "Heaters",
    choose: "Heater",
    add: "Add a heater",
    edit: "Change this heater",
    remove: "Remove this heater",
    removeSure: (n: number) =>
      n === 1 ? "Remove it with its entry" : `Remove it with its ${n} entries`,
    removed: (name: string) => `${name} is removed.`,
    name: "What you call it",
    tank: "Tank, L (optional)",
    dose: "Fuel per pulse, µL (optional)",
    lowFan: "Fan speed, lowest power, rpm (optional)",
    highFan: "Fan speed, highest power, rpm (optional)",
    supply: "Supply voltage, V (optional)",
    hours: "Running hours so far (optional)",
    line: (kW: string) => `${kW} kW`,
    save: "Save this heater",
  },
  kinds: { tune: "Tune", cleaning: "Cleaning", note: "Note" },
  entry: {
    title: "Entries",
    none: "No entry for this heater yet.",
    add: { tune: "Log a tune", cleaning: "Log a cleaning", note: "Write a note" },
    newTitle: { tune: "A tune", cleaning: "A cleaning", note: "A note" },
    at: "Date and time",
    hours: "Hours on the counter (optional)",
    hoursWhy: "They show how the heater changes over time.",
    fuel: "Fuel since the last entry, L (optional)",
    notes: "Notes (optional)",
    photo: "Photo (optional)",
    photoHint:
      "It is made smaller, and what the camera wrote into it about place and device is removed.",
    photoDrop: "Remove the photo",
    photoBad: "This file is not a picture that can be read.",
    photoAlt: (when: string) => `Photo of the entry of ${when}`,
    site: "Where",
    meter: "Meter",
    meterWhy: "CO is compared only with the same meter at the same spot.",
    meterName: "What you call it (optional)",
    reading: "The meter shows",
    readings: {
      co_ppm: "a reading",
      co_below_ppm: "nothing: too little CO",
      co_above_ppm: "off its scale: too much CO",
    },
    readingOf: {
      co_ppm: "Lowest CO reading, ppm",
      co_below_ppm: "Lowest reading it can show, ppm",
      co_above_ppm: "Highest reading it can show, ppm",
    },
    save: "Save this entry",
    cancel: "Cancel",
    edit: "Change",
    remove: "Remove",
    editThis: (what: string) => `Change: ${what}`,
    removeThis: (what: string) => `Remove: ${what}`,
    removed: (what: string) => `${what} is removed.`,
    undo: "Undo",
    undone: "It is back.",
    kept: "Saved in this browser.",
    fix: "Check the marked fields.",
    setTo: (hz: string, rpm: string) => `${hz} Hz, ${rpm} rpm`,
    power: (setting: string) => `power setting ${setting}`,
    swept: (hz: string, lower: string, upper: string) =>
      `minimum near ${hz} Hz, between ${lower} and ${upper} Hz`,
    density: (density: string) => `air ${density} kg/m³`,
    atHours: (hours: string) => `at ${hours} h`,
    fuelLine: (litres: string) => `${litres} L since the last entry`,
    meterLine: (kind: string, distance: string) => `${kind}, ${distance} m from the exhaust`,
  },
  check: {
    missing: "Please fill this in.",
    number: "must be a number",
    between: (least: string, most: string) => `must be from ${least} to ${most}`,
    classStep: "must be in steps of 0.5 kW",
    when: "must be a date and time like 2026-11-05T20:30:00Z",
    oneReading: "one of three is needed: the reading, or the lowest or highest the meter can show",
    oneReadingOnly: "only one of the three is possible",
    pair: "latitude and longitude belong together",
    onePressure: "station pressure or sea-level pressure, not both",
    bothEnds: "A tune has a place, a lowest power and a highest power.",
    unknown: "is not known here: misspelt, or from a newer version",
    text: "must be text, and not too long",
    choice: "is not one of the choices",
    photo: "must be a data URL of a JPEG, PNG or WebP picture of 2 MB at most",
  },
  share: {
    share: "Share this tune",
    shareThis: (what: string) => `Share this tune: ${what}`,
    what: (elevation: string) =>
      `Sent: heater, air, both settings with their CO reading and how you found them, meter, month, and ${elevation}; of the location only the middle of its map cell. Not sent: name of the place, date, notes, photo, hours.`,
    cannot: "The meter was off its scale, so a CO reading is missing: this tune cannot be shared.",
    looks: "This looks mistyped. Change the entry, or send it as it is: it would be held.",
    cancel: "Do not share",
    shared: "Shared",
    waits: "Waiting to be sent; it goes by itself, once, as soon as the atlas can be reached.",
    gone: "It was to be shared, but is not waiting and has no receipt in this browser: share it again.",
    discard: "Do not send it after all",
    revise: "Correct the shared tune",
    revised: (verdict: string) => `Corrected: ${verdict}.`,
    arrived: (verdict: string) => `Arrived: ${verdict}.`,
    receiptNotKept: "The receipt is saved with the entry.",
    notThere: "The atlas no longer has this tune: the entry no longer counts as shared.",
    openShare: "Receipts and more are in the Share view.",
  },
  ownSteps: {
    title: "What each own tune told",
    means:
      "How far the best setting lies from the answer, either way, 8 in 10 times: before any own tune, and after each, where the newest was found.",
    list: "Own tunes, oldest first",
    columns: ["After the tune of", "8 in 10 times", "Change"],
    before: "none yet",
    average: "average heater",
    narrower: (points: string) => `narrower by ${points} points`,
    wider: (points: string) => `wider by ${points} points: it does not fit the others well`,
    same: "no change",
    aside: "does not count: see Start",
  },
  drift: {
    picture: {
      end: "Power shown",
      none: "With hours (or fuel) on two tunes at least there is a picture here.",
      mixture: "Mixture",
      mixtureLabel: (end: string) => `Chart: mixture at the ${end} over the heater's use.`,
      mixtureAxis: "Richer (+) or leaner (−) than the first tune, %",
      co: "Carbon monoxide",
      coLabel: (end: string) => `Chart: CO at the ${end} over the heater's use.`,
      coAxis: "Lowest CO reading, ppm",
      axis: { hours: "Running hours", fuel_L: "Fuel burnt since the last cleaning, L" },
      read: "Tune by tune",
      same: "as the first tune.",
      richer: (pct: string) => `${pct} % richer than the first tune.`,
      leaner: (pct: string) => `${pct} % leaner than the first tune.`,
      apart: "Not comparable with the newest.",
      means:
        "Mixture: pump rate per fan speed, with what the air asks for taken out. CO: full dots compare with the newest reading, rings do not (another meter or spot, another mixture, or before a cleaning), triangles are beyond the meter's scale.",
      line: "The line is the trend through the full dots; the sentences above say whether it means anything.",
      cleaning: "Dashed: cleaned.",
      leftOut: (n: number) =>
        n === 1 ? "1 tune without hours is left out." : `${n} tunes without hours are left out.`,
    },
    title: "Has the heater changed?",
    howTitle: "How you can tell",
    how: "Settings are compared with those of the same heater across air densities; CO only at a similar mixture, with the same meter at the same spot, since the last cleaning. That every entry is looked at is allowed for: with no change at all, such a sentence appears in fewer than 5 in 100 winters. The ranges hold in 95 in 100 cases, however often you look.",
    none: "Nothing can be said yet: it takes several tunes since the last cleaning, with hours (or fuel) and the meter.",
    co: (from: string, to: string, amount: string) =>
      `Your best reading at this mixture rose from ${from} to ${to} ppm over ${amount}: soot or a clogged intake is likelier than air.`,
    coQuiet: (n: number, amount: string) =>
      `${n} comparable readings over ${amount}: no clear rise of CO.`,
    change: (factor: string, lower: string, upper: string) =>
      `Change: ${factor} times; between ${lower} and ${upper} times.`,
    changeOpen: (factor: string) => `Change so far: ${factor} times; too few readings for a range.`,
    richer: (pct: string, amount: string) =>
      `In similar air your best pump rate rose by ${pct} % over ${amount}: something other than air has changed.`,
    leaner: (pct: string, amount: string) =>
      `In similar air your best pump rate fell by ${pct} % over ${amount}: less air gets in, or something else has changed.`,
    mixtureQuiet: (n: number, amount: string) =>
      `${n} tunes over ${amount}: no clear change of the best mixture.`,
    mixtureInterval: (lower: string, upper: string) => `Between ${lower} and ${upper} %.`,
    amount: { hours: (n: string) => `${n} hours`, fuel_L: (n: string) => `${n} L of fuel` },
    floor: (n: number) =>
      n === 1
        ? "1 reading was below the lowest the meter can show: it does not count here, and a rise shows later."
        : `${n} readings were below the lowest the meter can show: they do not count here, and a rise shows later.`,
    ceiling: (n: number) =>
      n === 1
        ? "1 reading was above the highest the meter can show: it does not count here."
        : `${n} readings were above the highest the meter can show: they do not count here.`,
    risen: (ppm: string, floor: string) =>
      `The meter now shows ${ppm} ppm where it showed nothing (below ${floor}) before. A single reading proves nothing: read again.`,
    noMeter: (n: number) =>
      n === 1
        ? "1 tune lacks the meter or its distance: its CO is not compared."
        : `${n} tunes lack the meter or its distance: their CO is not compared.`,
    stepsTitle: "Usual next steps, by the maker's manual",
    steps: [
      "Look at the air intake: filter, hose, nests, snow, leaves.",
      "Look at the exhaust: crushed or sagging pipe, water in a low spot, soot at the outlet, tight joints.",
      "Let it run at full power for a while, outdoors, if the manual says so.",
      "Screen, glow plug and burner: have them checked, cleaned or changed as the maker's manual says or by a licensed professional.",
      "Log the cleaning, so that the comparison starts afresh.",
    ],
  },
  supply: {
    title: "Tonight's fuel and battery",
    elevation: "Elevation tonight",
    hours: "Hours",
    share: "Power, % of the range",
    fuel: (litres: string, hours: string) => `${litres} L for ${hours} h`,
    heat: (kW: string) => `about ${kW} kW to the room`,
    tank: (hours: string) => `A full tank lasts ${hours} h.`,
    noTank: "With the tank's size, you would see here how long it lasts.",
    battery: (at12: string, at24: string) => `${at12} Ah at 12 V, or ${at24} Ah at 24 V`,
    starts: "Each start draws 8–12 A at 12 V, or 4–6 A at 24 V.",
    logged: (day: string, low: string, high: string) =>
      `Fuel use from your tune of ${day}, ${low} and ${high} Hz, and the fuel per pulse of this heater.`,
    retuned: (low: string, high: string, litres: string) =>
      `Set for tonight's air, about ${low} and ${high} Hz, it would take ${litres} L.`,
    dose: "Fuel use from the starting settings for tonight's air and your fuel per pulse.",
    class:
      "Estimated from what a heater of this size usually burns in such air: with the fuel per pulse it gets more accurate.",
    assumes: (minutes: number) =>
      `Assumed: 0.6 A at lowest power to 3.5 A at highest at 12 V, 8–12 A in a start (common practice, no source) of ${minutes} minutes (our own value); 9.9 kWh in a litre, 80 % of it to the room; power steady.`,
    cannot: "These figures do not fit together. Check elevation, hours and power.",
  },
  files: {
    title: "Export and import",
    json: "Export all (JSON, with photos)",
    csv: "Export as CSV, without photos",
    note: "The files hold your places and the receipts of shared tunes: whoever has a receipt can withdraw that tune. Keep them to yourself.",
    bring: "Open a file: JSON or CSV",
    bringHint:
      "What is there already stays; if an entry is there twice, the one changed last counts.",
    brought: (added: number, changed: number, same: number) =>
      `${added} new, ${changed} changed, ${same} unchanged.`,
    refused: (reason: string) => `${reason}. Nothing was imported.`,
    line: (line: number, reason: string) => `Line ${line}: ${reason}. Nothing was imported.`,
    empty: "The file is empty",
    large: (MB: number) => `The file is larger than ${MB} MB`,
    notJson: "this is not JSON that can be read",
    notLogbook: "The file is JSON, but not a logbook of this page",
    newer: "The file was made by a newer version of this page: reload the page, then try again",
    head: "the header line must name at least the columns kind, id and changed_at",
    badCsv:
      "this cannot be read as CSV: a field too many or too few, or a quotation mark left open",
    kind: "kind must be heater, tune, cleaning or note",
    twice: (id: string) => `the id ${id} is there twice`,
    noHeater: (id: string) => `its heater (${id}) is neither in the file nor here`,
    field: (field: string, reason: string) => `${field}: ${reason}`,
  },
  cautions: {
    title: "Before working on it",
    lines: [
      "Let it finish cooling down; never cut its power while it is hot.",
      "Never refuel while the heater is hot or running.",
      "After any work, look at everything: exhaust joints, air intake, fuel lines.",
      "Fuse and cable of the size the maker asks for.",
    ],
  },
};
