/** Words of the Logbook view; fetched with it. */
export const logbookWords = {
  title: "Logbook",
  intro:
    "Your own heaters and what you did with them. It stays in this browser: nothing of it is sent anywhere unless you share a tune.",
  empty:
    "No heater yet. Add yours, then log its tunes and cleanings, or bring a file you exported.",
  lost: (n: number) =>
    `This browser has wiped its storage: ${n === 1 ? "1 entry is" : `${n} entries are`} gone. Bring your last export back below.`,
  lostUnderstood: "Understood",
  mayWipe: "A browser may wipe its storage. Export now and then.",
  store: {
    forbidden:
      "This browser forbids keeping data here (a private window, or blocked site data): the logbook cannot be kept. Allow storage for this page, or use another window.",
    full: "This browser has no room left: it was not kept, and nothing was changed. Free some space or remove photos, then try again.",
  },
  heater: {
    title: "Heaters",
    choose: "Heater",
    add: "Add a heater",
    edit: "Change this heater",
    remove: "Remove this heater",
    removeSure: (n: number) =>
      n === 1 ? "Remove it with its 1 entry" : `Remove it with its ${n} entries`,
    removed: (name: string) => `${name} is removed.`,
    name: "What you call it",
    tank: "Tank, L (optional)",
    dose: "Dose, µL per pulse (optional)",
    lowFan: "Fan speed, low end, rpm (optional)",
    highFan: "Fan speed, high end, rpm (optional)",
    supply: "Supply voltage, V (optional)",
    hours: "Running hours so far (optional)",
    line: (kW: string) => `${kW} kW`,
    save: "Keep this heater",
  },
  kinds: { tune: "Tune", cleaning: "Cleaning", note: "Note" },
  entry: {
    title: "Entries",
    none: "No entry for this heater yet.",
    add: { tune: "Log a tune", cleaning: "Log a cleaning", note: "Write a note" },
    newTitle: { tune: "A tune", cleaning: "A cleaning", note: "A note" },
    at: "Date and time",
    hours: "Hours on the counter (optional)",
    hoursWhy: "Drift is followed over these.",
    fuel: "Fuel since the entry before, L (optional)",
    notes: "Notes (optional)",
    photo: "Photo (optional)",
    photoHint: "Scaled down, and freed of what the camera wrote into it.",
    photoDrop: "Take the photo out",
    photoBad: "This file is no picture that can be read.",
    photoAlt: (when: string) => `Photo of the entry of ${when}`,
    site: "Where",
    meter: "Meter",
    meterWhy: "CO is compared only with the same meter at the same spot.",
    meterName: "What you call it (optional)",
    reading: "The meter shows",
    readings: {
      co_ppm: "a number",
      co_below_ppm: "nothing: below",
      co_above_ppm: "its end: above",
    },
    readingOf: {
      co_ppm: "Final CO, ppm",
      co_below_ppm: "Its floor, ppm",
      co_above_ppm: "Its end, ppm",
    },
    save: "Keep this entry",
    cancel: "Leave it",
    edit: "Change",
    remove: "Remove",
    editThis: (what: string) => `Change: ${what}`,
    removeThis: (what: string) => `Remove: ${what}`,
    removed: (what: string) => `${what} is removed.`,
    undo: "Undo",
    undone: "It is back.",
    kept: "Kept in this browser.",
    fix: "Some fields still need mending.",
    setTo: (hz: string, rpm: string) => `${hz} Hz, ${rpm} rpm`,
    co: (ppm: string) => `${ppm} ppm`,
    below: (ppm: string) => `below ${ppm} ppm`,
    above: (ppm: string) => `above ${ppm} ppm`,
    power: (setting: string) => `power setting ${setting}`,
    swept: (hz: string, lower: string, upper: string) =>
      `lowest near ${hz} Hz, between ${lower} and ${upper} Hz`,
    density: (density: string) => `air ${density} kg/m³`,
    atHours: (hours: string) => `at ${hours} h`,
    fuelLine: (litres: string) => `${litres} L since the entry before`,
    meterLine: (kind: string, distance: string) => `${kind}, ${distance} m from the exhaust`,
  },
  check: {
    missing: "This is needed.",
    number: "must be a number",
    between: (least: string, most: string) => `must be from ${least} to ${most}`,
    classStep: "must be in steps of 0.5 kW",
    when: "must be a date and time like 2026-11-05T20:30:00Z",
    oneReading: "one of the three readings is needed: a number, the floor, or the end",
    oneReadingOnly: "only one of the three readings can be",
    pair: "latitude and longitude belong together",
    onePressure: "station pressure or sea-level pressure, not both",
    bothEnds: "A tune has a place, a low end and a high end.",
    unknown: "is not known here: misspelt, or made by a newer version",
    text: "must be text, and not too long",
    choice: "is none of the choices",
    photo: "must be a data URL of a JPEG, PNG or WebP picture of 2 MB at most",
  },
  share: {
    share: "Share this tune",
    shareThis: (what: string) => `Share this tune: ${what}`,
    what: (elevation: string) =>
      `Sent: heater, air, both ends with their CO, how they were found, meter, month, and ${elevation}; of the position only the middle of its map cell. Not sent: name of the place, date, notes, photo, hours.`,
    cannot: "A reading at the meter's end is no final CO: this tune cannot be shared.",
    looks: "This looks like a slip. Change the entry, or send it as it is: it would be held.",
    cancel: "Do not share",
    shared: "Shared",
    waits: "Waits to be sent; it goes once, by itself, as soon as the atlas can be reached.",
    gone: "It was to be shared, but neither waits nor has a receipt in this browser: share it again.",
    discard: "Do not send it after all",
    revise: "Send it as the entry is now",
    revised: (verdict: string) => `Revised: ${verdict}.`,
    arrived: (verdict: string) => `Arrived: ${verdict}.`,
    receiptNotKept: "The receipt is kept with the entry.",
    notThere: "The atlas has no such tune any more: the entry is free of it.",
    openShare: "Receipts and more are in the Share view.",
  },
  drift: {
    title: "What drift says",
    howTitle: "How this is told",
    how: "Settings are compared on your heater's own line over air density; CO only at like mixture, with the same meter at the same spot, since the last cleaning. Looking after every entry is counted in: with nothing there, such a sentence appears in fewer than 5 in 100 seasons. Intervals hold at 95 in 100, however often you look.",
    none: "Nothing to say yet: it takes several tunes with hours (or fuel) and a described meter since the last cleaning.",
    co: (from: string, to: string, amount: string) =>
      `Your best reading at this mixture rose from ${from} to ${to} ppm over ${amount}: soot or a clogged intake is likelier than air.`,
    coQuiet: (n: number, amount: string) =>
      `${n} comparable readings over ${amount}: no rise of CO that the evidence would bear.`,
    change: (factor: string, lower: string, upper: string) =>
      `Change: ${factor} times; between ${lower} and ${upper} times.`,
    changeOpen: (factor: string) =>
      `Change so far: ${factor} times; too few readings for an interval.`,
    richer: (pct: string, amount: string) =>
      `At like air your best pump rate rose by ${pct} % over ${amount}: something other than air has changed.`,
    leaner: (pct: string, amount: string) =>
      `At like air your best pump rate fell by ${pct} % over ${amount}: less air gets in, or something else has changed.`,
    mixtureQuiet: (n: number, amount: string) =>
      `${n} tunes over ${amount}: the best mixture has not changed that the evidence would bear.`,
    mixtureInterval: (lower: string, upper: string) => `Between ${lower} and ${upper} %.`,
    amount: { hours: (n: string) => `${n} hours`, fuel_L: (n: string) => `${n} L of fuel` },
    floor: (n: number) =>
      n === 1
        ? "1 reading was below the meter's floor: no number, so it is left out, and a rise shows later."
        : `${n} readings were below the meter's floor: no numbers, so they are left out, and a rise shows later.`,
    ceiling: (n: number) =>
      n === 1
        ? "1 reading was at the meter's end: no number, so it is left out."
        : `${n} readings were at the meter's end: no numbers, so they are left out.`,
    risen: (ppm: string, floor: string) =>
      `The meter now shows ${ppm} ppm where it showed nothing (below ${floor}) before. One reading is no verdict: read again.`,
    noMeter: (n: number) =>
      n === 1
        ? "1 tune names no meter with its distance: its CO is not compared."
        : `${n} tunes name no meter with its distance: their CO is not compared.`,
    stepsTitle: "Usual next steps, by the maker's manual",
    steps: [
      "Look at the air intake: filter, hose, nests, snow, leaves.",
      "Look at the exhaust: crushed or sagging pipe, water in a low spot, soot at the mouth, tight joints.",
      "Let it run at full power for a while, outdoors, if the manual says so.",
      "Screen, glow part and burner: have them looked at, cleaned or changed by the maker's manual or by licensed practice.",
      "Log the cleaning, so that a new stretch begins.",
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
    noTank: "With the tank's size there would be its hours here.",
    battery: (at12: string, at24: string) => `${at12} Ah at 12 V, or ${at24} Ah at 24 V`,
    starts: "Each start takes 8–12 A at 12 V, or 4–6 A at 24 V.",
    logged: (day: string, low: string, high: string) =>
      `Fuel from your tune of ${day}, ${low} and ${high} Hz, and the dose of this heater.`,
    retuned: (low: string, high: string, litres: string) =>
      `Set for tonight's air, about ${low} and ${high} Hz, it would take ${litres} L.`,
    dose: "Fuel from the start tune's pump rate in tonight's air and your dose.",
    class:
      "Fuel by what the heat class usually burns, in tonight's air: your dose would tell better.",
    assumes: (minutes: number) =>
      `Taken for granted: 0.6 A at the low end to 3.5 A at the high at 12 V, 8–12 A in a start (common practice, no source) of ${minutes} minutes (our own value); 9.9 kWh in a litre, 80 % of it to the room; power steady.`,
    cannot: "These figures cannot stand together. Check elevation, hours and power.",
  },
  files: {
    title: "Export and import",
    json: "Export all (JSON, with photos)",
    csv: "Export as CSV, without photos",
    note: "The files hold your places and the receipts of shared tunes: whoever has a receipt can withdraw that tune. Keep them to yourself.",
    bring: "Bring a file: JSON or CSV",
    bringHint: "What is there already stays; of two copies of an entry the one edited last.",
    brought: (added: number, changed: number, same: number) =>
      `${added} new, ${changed} changed, ${same} as they were.`,
    refused: (reason: string) => `${reason}. Nothing was taken in.`,
    line: (line: number, reason: string) => `Line ${line}: ${reason}. Nothing was taken in.`,
    empty: "The file is empty",
    large: (MB: number) => `The file is larger than ${MB} MB`,
    notJson: "this is not JSON that can be read",
    notLogbook: "The file is JSON, but no logbook of this page",
    newer: "The file was made by a newer version of this page: reload the page, then try again",
    head: "the head line must name at least the columns kind, id and changed_at",
    badCsv:
      "this cannot be read as CSV: a field too many or too few, or a quotation mark left open",
    kind: "kind must be heater, tune, cleaning or note",
    twice: (id: string) => `the id ${id} stands there twice`,
    noHeater: (id: string) => `its heater (${id}) is neither in the file nor here`,
    field: (field: string, reason: string) => `${field}: ${reason}`,
  },
  cautions: {
    title: "Before hands are laid on it",
    lines: [
      "Let it run its cooling down to the end; never cut its power while hot.",
      "No refuelling while the heater is hot or running.",
      "Exhaust joints, air intake and fuel lines: look at each after any work on it.",
      "Fuse and cable of the size the maker asks for.",
    ],
  },
};
