/** Words of the On site view; fetched with it. */
export const onsite = {
  title: "On site: tune with a CO meter",
  intro:
    "A guided sweep at lowest power, then at highest: set, wait, read, until CO is lowest. It works offline; everything you press is saved.",
  notKept: "This browser does not save what you press: a reload would lose the sweep.",
  prepare: {
    basis: "Place, air, heater",
    nightWhy: "For the coming night: at the end you see how the tune suits it.",
    air: "Air now",
    temperatureNow: "Temperature now",
    airNow: "Where the heater draws its air in. Left empty: standard atmosphere.",
    start: (low: string, high: string) => `The sweep looks near ${low} Hz and ${high} Hz.`,
    fansAt: (low: string, high: string) => `The fan stays at ${low} and ${high} rpm.`,
    finerAir: "Pressure and humidity",
    fansAndSteps: "Fans and steps",
    figures: "What it can show",
    before: "Current settings",
    beforeWhy: "The sweep begins here. If you leave it, this is what you put back.",
    lowBefore: "Pump rate now, lowest power, Hz",
    highBefore: "Pump rate now, highest power, Hz",
    fanWhy:
      "Fan speeds as they are set now: the sweep changes only the pump. Left empty, the usual ones for the heater's size are used.",
    step: "Smallest step of the pump rate, Hz",
    supply: "Supply voltage, V (optional)",
    meter: "Meter at the exhaust",
    meterWhy:
      "The kind fills in what is usual for such meters (common practice, no source). Your meter's own manual knows better.",
    kind: "Kind of meter",
    resolution: "Smallest difference it shows, ppm",
    floor: "Lowest reading it can show, ppm",
    floorHint:
      "0 if it shows everything. Many room alarms show nothing below 30: that does not mean 0.",
    ceiling: "Highest reading it can show, ppm",
    lag: "Response time, seconds",
    lagHint:
      "How long it takes to show most of a change. A guess is enough: it only sets how long you wait.",
    distance: "Distance from the exhaust outlet, m",
    distanceHint: "About 0.3 m is common practice (no source). The same spot for every reading.",
    missing: "Please fill this in.",
    range: (least: string, most: string) => `From ${least} to ${most}, please.`,
    ends: "The rate at highest power must be above the one at lowest.",
    cannot:
      "No starting settings can be worked out from these figures. Check fan speeds and pressure.",
    fix: "Check the marked fields.",
    begin: "Go to the checklist",
  },
  guards: (lean: string, rich: string) => `Limits: ${lean}–${rich} Hz.`,
  progress: {
    step: (step: string, most: string) => `Step ${step} of at most ${most}.`,
    lean: "Leaner",
    rich: "Richer",
    seen: {
      rose: "CO rose\u00a0✓",
      open: "no rise seen yet",
      "flame-out": "the flame went out",
      limit: "limit reached",
    },
    at: (co: string, rate: string) => `${co} ppm at ${rate} Hz`,
    next: (rate: string) => `next: ${rate} Hz`,
  },
  keys: {
    label: "Digits",
    minus: "Above or below 0",
    decimal: "Decimal point",
    remove: "Delete",
  },
  checklist: {
    title: "Before lighting",
    intro: "Look at each one, then tick it.",
    checks: {
      air: "The vehicle stands outdoors, its doors open, and nobody is asleep in it.",
      alarm:
        "A separate certified carbon monoxide alarm is inside, and I have just pressed its test button. It is not the meter at the exhaust.",
      exhaust:
        "Exhaust and air intake are tight, clear and well apart: the heater does not draw in its own exhaust.",
      meter:
        "The meter shows nothing in fresh air and is fixed near the exhaust, not in it: out of the hot stream, always at the same spot.",
      fuel: "There is fuel for an hour at full power, and nobody refuels while anything is hot.",
      supply: "The supply holds its voltage under load: a weak battery shifts fan and pump.",
    },
    hot: "The exhaust gets hot enough to burn skin and set dry grass on fire. After switching off, let the heater cool down by itself: never cut its power.",
    maker: "The maker's manual comes first. Some approved installations may not be altered at all.",
    light: "The heater is running",
    tickAll: "Tick them all first.",
  },
  warmUp: {
    title: "Warming up",
    why: "Run it at lowest power. Readings of a cold burner mean nothing.",
    left: "Time left",
    over: "Warm. Begin at lowest power.",
    begin: "Begin at lowest power",
    already: "It is warm already",
  },
  step: {
    title: (end: string) => `${end}: next step`,
    titleWait: (end: string) => `${end}: wait, then read`,
    settling: "Let the flame and the meter settle.",
    set: "Set the pump to",
    keep: "The pump stays at",
    why: {
      start: "Begin where the pump is set now.",
      turnUp:
        "Turn the heater up to highest power and leave it there. Begin where its pump is set now.",
      leaner: "A little leaner.",
      richer: "A little richer.",
      between: "Between two readings, where CO may be lower still.",
      "on the way": "On the way there, since the pump moves in small steps.",
      confirm: "To confirm: one more reading here.",
      spike: "CO has shot up: go back at once.",
      "flame-out":
        "Back to where it ran. The rate at which the flame went out is too lean and is not tried again.",
      wait: "The reading is not steady yet: read again at the same rate.",
    },
    isSet: "It is set",
    thenWait: (span: string) => `Then wait ${span}.`,
    readIn: "Read the meter in",
    readNow: "Read the meter now",
    reading: "The meter shows, ppm",
    take: "Take the reading",
    below: (floor: string) => `Below ${floor}`,
    above: (ceiling: string) => `Over ${ceiling}`,
    still: "Steady for 30 s",
    noReading: "Type the reading, or say that it is below or over what your meter can show.",
    aboveCeiling: (ceiling: string) =>
      `“The meter shows” is over ${ceiling} ppm, the highest reading you gave for your meter. Check the figure, or press “Over ${ceiling}”.`,
    belowZero: "A meter shows 0 or more. Check the figure.",
    early:
      "A reading counts once it is steady: when two agree, or when you have watched one for half a minute.",
    out: "The flame went out",
    signal: "Sound and vibration when a wait ends",
    undo: "Undo the last press",
    leave: "Leave the sweep",
    leaveSure: "Leave it and show what to put back",
    stay: "Carry on with the sweep",
    seconds: (n: string) => `${n} s`,
    minutes: (n: string) => `${n} min`,
  },
  chart: {
    title: "CO over pump rate",
    x: "Pump rate, Hz",
    y: "CO at the meter, ppm",
    label: "Chart of the readings: CO over pump rate.",
    first: "No reading yet.",
    lowest: (co: string, rate: string) => `Lowest so far: ${co} ppm at ${rate} Hz.`,
    lowestBelow: (floor: string, rate: string) =>
      `Lowest so far: below ${floor} ppm at ${rate} Hz.`,
    next: (rate: string) => `next: ${rate}`,
    keyLine: "readings, joined",
    keyBetween: "outside this, CO is clearly higher",
    keyNext: "next setting",
    readings: "Readings",
    rate: "Pump rate, Hz",
    co: "CO, ppm",
    time: "After setting",
    flameOut: "flame out",
    settled: "was steady",
    none: "None yet.",
  },
  ended: {
    found: {
      title: (end: string) => `${end}: found`,
      minimum: (rate: string, lower: string, upper: string) =>
        `CO is lowest near ${rate} Hz: at ${lower} and at ${upper} Hz it was clearly higher.`,
    },
    "not bracketed": {
      title: (end: string) => `${end}: best so far, no minimum seen`,
      means:
        "CO did not rise on both sides of this rate. It is the best of those you read, not a measured minimum.",
      farther: "CO may be lower farther out.",
      lean: {
        rose: () => "Leaner: CO rose.",
        "flame-out": () => "Leaner: the flame goes out before CO rises.",
        limit: (rate: string) =>
          `Leaner: at ${rate} Hz, the last rate within the limits, CO had not clearly risen. If fan speeds, place and air are typed right, this heater differs from most.`,
        open: (rate: string) => `Leaner: the steps ran out at ${rate} Hz before CO clearly rose.`,
      },
      rich: {
        rose: () => "Richer: CO rose.",
        "flame-out": () => "Richer: the flame goes out before CO rises.",
        limit: (rate: string) =>
          `Richer: at ${rate} Hz, the last rate within the limits, CO had not clearly risen. If fan speeds, place and air are typed right, this heater differs from most.`,
        open: (rate: string) => `Richer: the steps ran out at ${rate} Hz before CO clearly rose.`,
      },
      changed:
        "The readings at this rate changed on the way: wind, warm-up, or a meter that drifts. So none of them counts as the minimum.",
      now: "You can use it for now if the flame is steady.",
      further: "To look further, begin again here: the sweep goes on from this rate.",
    },
    "below floor": {
      title: (end: string) => `${end}: below what this meter shows`,
      means: (floor: string, lower: string, upper: string) =>
        lower === upper
          ? `At ${lower} Hz CO is below ${floor} ppm, the lowest your meter can show.`
          : `From ${lower} to ${upper} Hz CO is below ${floor} ppm, the lowest your meter can show.`,
      middle: "The middle of that range is a sensible choice, not a measured minimum.",
      suggested:
        "How far that range goes was not seen. The starting setting, or the rate in the range nearest to it, is a sensible choice, not a measured minimum.",
      now: (floor: string) =>
        `Below ${floor} does not mean 0. To find a minimum, begin again here with the meter nearer to the exhaust, or with one that shows lower readings.`,
    },
    "above scale": {
      title: (end: string) => `${end}: above the meter's scale`,
      means: (ceiling: string) =>
        `Every reading is above ${ceiling} ppm, the highest your meter can show, so it cannot find a minimum. Keep the pump at this rate, move the meter farther from the exhaust and begin again. If it stays so, have the heater looked at.`,
    },
    goOn: "Go on without a minimum",
  },
  found: {
    leave: "Leave the pump at",
    shown: (co: string) => `The meter settled at ${co} there.`,
    flat: (lower: string, upper: string) =>
      `From ${lower} to ${upper} Hz CO is the same within the meter's noise.`,
    seat: {
      low: "The rate chosen lies towards the rich edge of this range, where a low flame is steadier.",
      high: "The rate chosen lies on the lean side of this range, where there is less soot.",
    },
    besideFlameOut: (rate: string) =>
      `The flame went out at ${rate} Hz, only a little leaner than this. In wind or on a colder night it may go out here too: then set the pump one step richer.`,
    practice:
      "CO below 30 ppm near the exhaust is usual, 7–15 ppm is good (common practice, no source). Another meter or another spot shows another figure.",
    nextHigh: "Go on to highest power",
    nextCheck: "Go on to the checks",
    again: "Begin again here",
  },
  check: {
    title: { middle: "Check at medium power", full: "Check at full power" },
    why: {
      middle:
        "Between lowest and highest power a controller runs in a straight line: half way, pump and fan are half way too, and CO lies between the two readings.",
      full: "Run up to full power once more: CO must come back to where it settled at highest power.",
    },
    setTo: {
      middle: "Set the power half way between lowest and highest",
      full: "Set full power",
    },
    is: (pump: string, fan: string) =>
      `there the pump runs at about ${pump} Hz, the fan at ${fan} rpm`,
    expect: (co: string, upper: string) => `Expect about ${co} ppm; over ${upper} is poor.`,
    expectBelow: (upper: string) => `Over ${upper} ppm is poor.`,
    good: (co: string) => `${co}: as expected.`,
    unseen: "The meter shows nothing here: that says nothing either way.",
    poor: (co: string) => `${co}: clearly more than at lowest and highest power.`,
    poorMeans: {
      middle:
        "Either the controller does not run in a straight line, or one of the two settings is not right any more. Do not change one to make up for it: read again at lowest and at highest power first. If it stays poor, heat only near lowest and highest power, and have the heater looked at.",
      full: "Highest power does not hold what it showed: the reading was not steady yet, or something has changed. Read it again, or repeat the sweep at highest power another time. If it stays poor, have the heater looked at.",
    },
    readAgain: "Read again",
    skip: "Skip this check",
    next: "Go on to full power",
    finish: "Finish",
    skipped: "skipped",
  },
  relight: {
    title: "The flame is out",
    cool: "Let the heater cool down by itself. Never cut its power. The exhaust is hot; unburnt fuel may smoke.",
    richer: (rate: string) => `Then set the pump richer, to ${rate} Hz, and light it again.`,
    same: "Then light it again.",
    rule: (left: number) =>
      left === 1
        ? "One attempt is left; after that, only the maker's manual."
        : `At most ${left} attempts to relight; after that, only the maker's manual.`,
    attempt: "It has cooled down: I am lighting it now",
    burns: "The flame is burning",
    noLight: "It does not light",
  },
  stopped: {
    alarm: {
      title: "Stay outside",
      lines: [
        "Nobody goes back in: not to look for the cause, not for the heater, not to fetch anything.",
        "Headache, dizziness or sickness, or is anyone missing? Say so when you call. See a doctor even if it passes.",
        "Switch the heater off only if you can from outside. Let it cool down by itself.",
        "Nobody lights it or sleeps there before the air is clear, the alarm is silent, and someone who knows such heaters has found the cause.",
      ],
      number: "Show the emergency number",
      sweepEnded: "The alarm ended the sweep.",
      later: "Later: put the settings back",
      onlyThen: "Only when the air is clear and the cause is found.",
      areBack: "They are back",
      endSweep: "End this sweep",
      notYet: "Not yet",
      mistaken: "It was pressed by mistake",
      mistakenSure: "Yes: no alarm, and no CO read indoors",
    },
    flame: {
      title: "No further attempt",
      lines: [
        "The flame has gone out, or not come back, too often. Let the heater cool down by itself; never cut its power.",
        "From here on follow the maker's manual, or have the heater looked at.",
      ],
    },
    abort: {
      title: "You left the sweep",
      lines: [
        "No tune is saved. Let the heater settle, or cool down by itself; never cut its power.",
      ],
    },
    putBack: "Put the settings back",
    fanKept: "As you gave them before the sweep. It changed only the pump: the fan is as it was.",
    fan: "Fan speed, rpm",
    pump: "Pump rate, Hz",
    resume: "Go back to the sweep",
    anew: "Begin another sweep",
    anewSure: "Yes: discard this one",
  },
  done: {
    title: "Both minima found",
    titleSet: "Both powers set",
    end: "Power",
    pump: "Pump, Hz",
    fan: "Fan, rpm",
    co: "Lowest CO reading",
    minimum: "Minimum between, Hz",
    none: "no minimum seen",
    settled: "Readings",
    before: "Before the sweep, Hz",
    logged: "Saved in the logbook.",
    whose: "Which heater did you tune?",
    whoseWhy: "The tune goes into its logbook, and the answers for it get narrower.",
    whoseNew: "One that is not listed",
    notLogged: "It could not be saved in the logbook: storage may be full or blocked.",
    retry: "Try again",
    openLogbook: "Open the logbook",
    recheck:
      "This holds for this heater, this place, this air. Check again after 500 m of altitude or 15 °C (our own working values).",
    night: {
      title: "In the coming night's air",
      temperature: "Night temperature",
      type: "Type how cold the night will be: cold air is denser, and the same settings run leaner in it.",
      air: (night: string, size: string, now: string) =>
        `At ${night} the air is ${size} than at the ${now} you tuned in.`,
      same: (night: string, now: string) =>
        `At ${night} the air is as dense, within half a percent, as at the ${now} you tuned in.`,
      denser: (pct: string) => `${pct} % denser`,
      thinner: (pct: string) => `${pct} % thinner`,
      assumed: (now: string) =>
        `You gave no temperature while tuning: the standard atmosphere's ${now} is used, so this is an estimate.`,
      asIs: "Left as it is",
      pump: "Set the pump to, Hz",
      fan: "Or the fan to, rpm",
      fanUsual: "Or the fan",
      richer: (pct: string) => `${pct} % richer`,
      leaner: (pct: string) => `${pct} % leaner`,
      none: "no shift",
      faster: (pct: string) => `${pct} % faster`,
      slower: (pct: string) => `${pct} % slower`,
      fanEnds: "more than the fan can do",
      unchanged: "stays",
      stay: (rich: string, lean: string) =>
        `It can stay as it is: up to ${rich} % richer or ${lean} % leaner than the minimum is good enough (our own working values). For the lowest CO in the night too, set one of these:`,
      tight: (room: string, rich: string, lean: string) =>
        `It can stay, but it is tight: ${room} % is left to the limit (${rich} % richer to ${lean} % leaner than the minimum, our own working values). Better set one of these at each power:`,
      set: (rich: string, lean: string) =>
        `Too far off: more than ${rich} % richer or ${lean} % leaner than the minimum (our own working values). Before the night, set one of these at each power:`,
      nearOut: (end: string, night: string) =>
        `${end}: the flame went out only a little leaner than this, and at ${night} it runs leaner still. Rather set one of these than leave it as it is:`,
      well: "Leave it as it is.",
      worked:
        "Worked out from the density of the air, not measured. If you can, read the meter again outdoors in the cold air, and set it back when it gets warmer.",
    },
    shareTitle: "Share this tune",
    shareIntro:
      "As it stands above, with meter, air, month and how it was found. You need not type anything again.",
    sharePlace:
      "Send the place too, as the middle of a map cell of about 250 km²; nothing finer leaves this browser.",
    wrong: "It cannot be shared as it is:",
    inShare: "Look at it under Share",
    receiptKept: "The receipt is saved with the logbook entry and under Share.",
    receiptNotKept: "This browser could not save the receipt. Copy it now:",
    anew: "Begin another sweep",
    keepShown: "Keep showing this one",
    heaterName: "Unnamed",
    span: (lower: string, upper: string) => `${lower} to ${upper}`,
    verdicts: {
      good: "as expected",
      high: "as expected, but high",
      poor: "poor",
      unseen: "not seen",
    },
  },
};
