/** Words of the On site view; fetched with it. */
export const onsite = {
  title: "On site: find the minimum",
  intro:
    "A guided sweep at each end of the power range, the fan as it is: set, wait, read, until CO is lowest. It is all worked out here; no network is needed, and every press is kept.",
  notKept: "This browser does not keep what you press: a reload would lose the sweep.",
  prepare: {
    basis: "Place, air, heater",
    nightWhy: "Of the coming night: at the end you see how the tune sits in it.",
    air: "Air now",
    temperatureNow: "Temperature now",
    airNow:
      "Where the heater draws its air in. It counts like height does; left empty, the standard atmosphere's is taken.",
    start: (low: string, high: string) =>
      `The sweep begins at these pump rates, where the heater burns, and looks near ${low} Hz and ${high} Hz.`,
    before: "As it is set now",
    beforeWhy:
      "The sweep begins here and moves in small steps. If you leave it, this is what you put back.",
    lowBefore: "Pump rate now, low end, Hz",
    highBefore: "Pump rate now, high end, Hz",
    fanWhy:
      "Fan speeds as they are set now: the sweep changes the pump alone. Left empty, the heat class's usual ones are taken.",
    step: "Smallest step of the pump rate, Hz",
    heater: "Heater in the logbook",
    supply: "Supply voltage, V (optional)",
    meter: "Meter at the exhaust",
    meterWhy:
      "Its kind fills in what such meters usually show (common practice, no source): the meter's own leaflet is better.",
    kind: "Kind of meter",
    resolution: "Smallest difference it shows, ppm",
    floor: "It shows nothing below, ppm",
    floorHint: "0 if it shows every figure. Many room alarms show nothing below 30: that is not 0.",
    ceiling: "It shows nothing above, ppm",
    lag: "How slow it is: seconds to most of a change",
    lagHint: "A guess is enough: it only sets how long to wait.",
    distance: "Distance from the exhaust's mouth, m",
    distanceHint: "About 0.3 m is common practice (no source). The same spot for every reading.",
    missing: "This is needed.",
    range: (least: string, most: string) => `From ${least} to ${most}, please.`,
    ends: "The high end must be above the low end.",
    cannot:
      "The start tune cannot be worked out from these figures. Check fan speeds and pressure.",
    fix: "Some fields above still need mending.",
    begin: "Go to the checklist",
  },
  guards: (lean: string, rich: string) => `Limits: ${lean}–${rich} Hz.`,
  progress: {
    step: (step: string, most: string) => `Step ${step} of at most ${most}.`,
    lean: {
      rose: "Leaner: CO rose ✓.",
      open: "Leaner: no rise seen yet.",
      "flame-out": "Leaner: the flame went out.",
      limit: "Leaner: limit reached.",
    },
    rich: {
      rose: "Richer: CO rose ✓.",
      open: "Richer: no rise seen yet.",
      "flame-out": "Richer: the flame went out.",
      limit: "Richer: limit reached.",
    },
  },
  checklist: {
    title: "Before lighting",
    intro: "Each one looked at, then ticked.",
    checks: {
      air: "The vehicle stands outdoors, its doors open, and nobody is asleep in it.",
      alarm:
        "A separate certified carbon monoxide alarm is inside, and its test button has just been pressed. It is not the meter at the exhaust.",
      exhaust:
        "Exhaust and air intake are tight, clear, and well apart: the heater does not draw in its own exhaust.",
      meter:
        "The meter shows nothing in fresh air, and is fixed near the exhaust, not in it: out of the hot stream, always at the same spot.",
      fuel: "Fuel for an hour at full power; no refuelling while anything is hot.",
      supply: "The supply holds its voltage under load: a weak battery shifts fan and pump.",
    },
    hot: "The exhaust gets hot enough to burn skin and light dry grass. To stop, let the heater cool down by itself: do not cut its power.",
    maker: "The maker's manual comes first. Some approved installations may not be altered at all.",
    light: "The heater is lit",
    tickAll: "Tick every line first.",
  },
  warmUp: {
    title: "Warming up",
    why: "Run it at the low end. Readings of a cold burner mean nothing.",
    left: "Time left",
    over: "Warm. Begin at the low end.",
    begin: "Begin the low end",
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
      leaner: "A little leaner.",
      richer: "A little richer.",
      between: "Between two readings, where CO may be lower still.",
      "on the way": "On the way there, since the pump moves in small steps.",
      confirm: "Confirm: one more reading where the pump is to stay.",
      spike: "CO shot up: go back at once.",
      "flame-out":
        "Back to where it burned. The rate at which the flame went out is too lean: it is not tried again.",
      wait: "The figure has not stood still yet: read again at the same rate.",
    },
    isSet: "It is set",
    thenWait: (span: string) => `Then wait ${span}.`,
    readIn: "Read the meter in",
    readNow: "Read the meter now",
    reading: "The meter shows, ppm",
    take: "Take the reading",
    below: (floor: string) => `Shows nothing: below ${floor}`,
    above: (ceiling: string) => `Above its scale: over ${ceiling}`,
    still: "The figure has stood still for half a minute",
    noReading: "Type what the meter shows, or press what it cannot show.",
    outOfScale: (ceiling: string) => `From 0 to ${ceiling} ppm, please.`,
    early:
      "It counts when the figure stands still: two readings that agree, or one you have watched.",
    out: "The flame went out",
    undo: "Undo the last press",
    leave: "Leave the sweep",
    leaveSure: "Leave it: show me what to put back",
    stay: "Go on sweeping",
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
    keyBetween: "outside of this CO is clearly higher",
    keyNext: "next setting",
    readings: "Readings",
    rate: "Pump rate, Hz",
    co: "CO, ppm",
    time: "After setting",
    flameOut: "flame out",
    belowIs: (floor: string) => `below ${floor}`,
    aboveIs: (ceiling: string) => `over ${ceiling}`,
    settled: "seen to stand still",
    none: "None yet.",
  },
  ended: {
    found: {
      title: (end: string) => `${end}: found`,
      minimum: (rate: string, lower: string, upper: string) =>
        `CO is lowest near ${rate} Hz: at ${lower} and at ${upper} Hz it was clearly higher.`,
    },
    "not bracketed": {
      title: (end: string) => `${end}: best rate read, no minimum seen`,
      means:
        "CO was not seen to rise on both sides of this rate. It is the best of those read, not a measured minimum: CO may be lower farther on.",
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
      further: "To look further, begin this end again: it starts from here.",
    },
    "below floor": {
      title: (end: string) => `${end}: below what this meter shows`,
      means: (floor: string, lower: string, upper: string) =>
        lower === upper
          ? `At ${lower} Hz CO is below your meter's floor of ${floor} ppm.`
          : `From ${lower} to ${upper} Hz CO is below your meter's floor of ${floor} ppm.`,
      middle: "The middle of that range is a sensible choice, not a measured minimum.",
      suggested:
        "How far that range goes was not seen. The starting settings, or the rate in it nearest to them, are a sensible choice, not a measured minimum.",
      now: (floor: string) =>
        `Below ${floor} is not 0. For a minimum, begin this end again with the meter nearer to the exhaust, or with one that shows less.`,
    },
    "above scale": {
      title: (end: string) => `${end}: above the meter's scale`,
      means: (ceiling: string) =>
        `Everything read is above what this meter shows (${ceiling} ppm), so it cannot tell a minimum. Keep the pump at this rate, move the meter farther from the exhaust and begin again. If it stays so, have the heater looked at.`,
    },
    goOn: "Go on without a minimum here",
  },
  found: {
    leave: "Leave the pump at",
    shown: (co: string) => `The meter settled at ${co} there.`,
    flat: (lower: string, upper: string) =>
      `From ${lower} to ${upper} Hz CO is the same within the meter's noise.`,
    seat: {
      low: "The rate chosen lies towards the rich edge of it, where a low flame is steadier.",
      high: "The rate chosen lies lean of its middle, away from soot.",
    },
    besideFlameOut: (rate: string) =>
      `The flame went out at ${rate} Hz, only a little leaner than this. In wind or on a colder night it may go out here too: then set the pump one step richer.`,
    practice:
      "Final CO below 30 ppm near the exhaust is usual, 7–15 ppm good (common practice, no source). Another meter or spot shows another figure.",
    nextHigh: "Go on to the high end",
    nextCheck: "Go on to the checks",
    again: "Begin this end again",
  },
  check: {
    title: { middle: "Check in the middle", full: "Check at full power" },
    why: {
      middle:
        "A controller runs in a straight line between the ends, so half way pump and fan are half way too, and CO lies between the two ends'.",
      full: "Run up to full power once more: CO must come back to what the high end settled at.",
    },
    setTo: {
      middle: "Set the power half way between the ends",
      full: "Set full power",
    },
    is: (pump: string, fan: string) =>
      `there the pump runs at about ${pump} Hz, the fan at ${fan} rpm`,
    expect: (co: string, upper: string) => `About ${co} ppm is expected; over ${upper} is poor.`,
    expectBelow: (upper: string) => `Over ${upper} ppm is poor.`,
    good: (co: string) => `${co}: as expected from the ends.`,
    unseen: "The meter shows nothing here: nothing speaks against it, and nothing for it.",
    poor: (co: string) => `${co}: clearly more than at the ends.`,
    poorMeans: {
      middle:
        "Either the controller does not run straight between the ends, or an end is not where it was matched. Do not move an end to make up for it: read both ends again first. If the middle stays poor, use the powers near the ends, and have the heater looked at.",
      full: "The high end does not hold: it had not settled, or something has changed. Read it again, or begin the high end again another time. If it stays poor, have the heater looked at.",
    },
    readAgain: "Read again",
    skip: "Leave this check out",
    next: "Go on to full power",
    finish: "Finish",
    skipped: "left out",
  },
  relight: {
    title: "The flame is out",
    cool: "Let the heater cool down by itself. Do not cut its power. The exhaust is hot; unburnt fuel may smoke.",
    richer: (rate: string) => `Then set the pump richer, to ${rate} Hz, and light it again.`,
    same: "Then light it again.",
    rule: (left: number) =>
      left === 1
        ? "One attempt is left; after it, only the maker's manual."
        : `${left} attempts to relight at most; after them, only the maker's manual.`,
    attempt: "It has cooled down: I light it now",
    burns: "It burns",
    noLight: "It does not light",
  },
  stopped: {
    alarm: {
      title: "Stay outside",
      lines: [
        "Nobody goes back in: not for the cause, not for the heater, not for things.",
        "Headache, dizziness, sickness, or anyone missing: say so when you call. See a doctor even if it passes.",
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
      mistakenSure: "Yes: no alarm, and nothing read indoors",
    },
    flame: {
      title: "No further attempt",
      lines: [
        "The flame has gone out, or not come back, too often. Let the heater cool down by itself; do not cut its power.",
        "From here on go by the maker's manual, or have the heater looked at.",
      ],
    },
    abort: {
      title: "The sweep is left",
      lines: [
        "Nothing is kept as a tune. Let the heater settle, or cool down by itself; do not cut its power.",
      ],
    },
    putBack: "Put the settings back",
    fanKept: "As you gave them before the sweep. It changed the pump alone: the fan is as it was.",
    fan: "Fan speed, rpm",
    pump: "Pump rate, Hz",
    resume: "Go back to the sweep",
    anew: "Begin another sweep",
    anewSure: "Yes: forget this one",
  },
  done: {
    title: "Both ends found",
    titleSet: "Both ends set",
    end: "End",
    pump: "Pump, Hz",
    fan: "Fan, rpm",
    co: "Final CO, ppm",
    minimum: "Lowest CO between, Hz",
    none: "no minimum seen",
    settled: "Readings",
    before: "before, Hz",
    checks: "Checks",
    logged: "Kept in the logbook.",
    notLogged: "The logbook could not keep it: storage may be full or forbidden.",
    retry: "Try again",
    openLogbook: "Open the logbook",
    recheck:
      "It holds for this heater, this place, this air. Check it again after 500 m or 15 °C (our own working values).",
    night: {
      title: "In the coming night's air",
      temperature: "Night temperature",
      type: "Type how cold the night will be: cold air is denser, and the same settings run leaner in it.",
      air: (night: string, size: string, now: string) =>
        `At ${night} the air is ${size} than at the ${now} you tuned in.`,
      same: (night: string, now: string) =>
        `At ${night} the air is as dense as at the ${now} you tuned in, within half a percent.`,
      denser: (pct: string) => `${pct} % denser`,
      thinner: (pct: string) => `${pct} % thinner`,
      assumed: (now: string) =>
        `You gave no temperature while tuning: the standard atmosphere's ${now} is taken, so this is a guess.`,
      asIs: "Left as it is",
      pump: "Set the pump to, Hz",
      fan: "Or the fan to, rpm",
      fanUsual: "Or the fan",
      richer: (pct: string) => `${pct} % richer`,
      leaner: (pct: string) => `${pct} % leaner`,
      none: "no shift",
      faster: (pct: string) => `${pct} % faster`,
      slower: (pct: string) => `${pct} % slower`,
      fanEnds: "beyond the fan",
      unchanged: "stays",
      stay: (rich: string, lean: string) =>
        `It can stay as it is: up to ${rich} % richer or ${lean} % leaner than the best is our own working window. To be at the lowest CO in the night too, set one of these:`,
      tight: (room: string, rich: string, lean: string) =>
        `It can stay, but it is tight: ${room} % is left to the edge of our own working window (${rich} % richer to ${lean} % leaner than the best). Better set one of these at each end:`,
      set: (rich: string, lean: string) =>
        `Too far: more than ${rich} % richer or ${lean} % leaner than the best (our own working window). Before the night, set one of these at each end:`,
      well: "Leave it as it is.",
      worked:
        "Worked out from the air's density, not measured. Read the meter again outdoors in the cold air if you can, and set it back when it gets warmer.",
    },
    shareTitle: "Share this tune",
    shareIntro: "As it stands above, with meter, air and month. Nothing is typed again.",
    sharePlace:
      "Send the place too, as the middle of a map cell of about 250 km²; nothing finer leaves this browser.",
    wrong: "It cannot be shared as it is:",
    inShare: "Look at it under Share",
    receiptKept: "The receipt is kept with the logbook's entry and under Share.",
    receiptNotKept: "This browser could not keep the receipt. Copy it now:",
    anew: "Begin another sweep",
    keepShown: "Keep this one in view",
    heaterName: (kW: number) => `${kW} kW heater`,
    span: (lower: string, upper: string) => `${lower} to ${upper}`,
    over: "over the meter's scale",
    verdicts: {
      good: "as expected",
      high: "as expected, but high",
      poor: "poor",
      unseen: "not seen",
    },
  },
};
