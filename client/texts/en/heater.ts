/** Words of one's own heater: the line at the head of every view, and what it adds to the answer. */
export const heaterWords = {
  line: {
    mine: "My heater",
    none: "No heater chosen",
    fans: (low: string, high: string) => `fans ${low} and ${high} rpm`,
    usual: (low: string, high: string) => `usual fans, ${low} and ${high} rpm`,
    own: (n: number) => (n === 0 ? "no own tunes" : n === 1 ? "1 own tune" : `${n} own tunes`),
    choose: "Heater",
    average: "Average heater, usual fans",
    intro:
      "Every view takes size, fans, fuel per pulse and meter from the heater chosen here. It stays in this browser.",
  },
  step: "Smallest step of the pump rate, Hz (optional)",
  fanStep: "Smallest step of the fan speed, rpm (optional)",
  settings: {
    add: "Add my current settings",
    title: "My current settings",
    how: "How were they found?",
    meter: "With a CO meter: I tuned until CO was lowest",
    guess: "Factory settings, or a guess",
    meterWhy: "These become a tune of your own: answers for your heater get narrower.",
    guessWhy: "You see how they would run elsewhere. They do not change the answer.",
    keep: "Save these settings",
    kept: "Saved. The answer shows how they would run.",
  },
  meterKinds: {
    "room alarm": "room alarm",
    "portable meter": "portable meter",
    "flue analyser": "flue analyser",
    other: "other",
  },
  fromMine: (name: string) => `Size, fans and fuel per pulse as saved for “${name}”.`,
  lead: {
    right: "Left as it is, your heater would run about right here.",
    one: (shift: string) => `Left as it is, your heater would run ${shift} here`,
    both: (low: string, high: string) =>
      `Left as it is, your heater would run ${low} at lowest power and ${high} at highest here`,
    rich: (pct: string) => `${pct} % rich`,
    lean: (pct: string) => `${pct} % lean`,
    even: "about right",
    richMeans: "soot, more carbon monoxide, more fuel",
    leanMeans: "less heat, hard to light, and the flame may go out",
    bothMean: "soot, more carbon monoxide, and the flame may go out",
    since: (date: string) => `Settings of ${date}.`,
  },
  best: (low: string, high: string) =>
    `Best setting, 8 in 10 times: ${low} Hz at lowest power, ${high} Hz at highest.`,
  basis: {
    own: (tunes: string, owners: string, own: number, mine: string, others: string) =>
      `From ${tunes} tunes by ${owners} owners and ${own} of your own: ±${mine} % instead of ±${others} %.`,
    ownAlone: (own: number, mine: string, others: string) =>
      `From ${own === 1 ? "1 tune" : `${own} tunes`} of your own and an estimate from physics: ±${mine} % instead of ±${others} %.`,
  },
  aside: {
    of: (date: string) => `Your tune of ${date} does not count.`,
    ofEnd: (date: string, end: string) => `Your tune of ${date} does not count at ${end}.`,
    richer:
      "It is far richer than expected. Check its pump rate, fan speed and elevation, and the heater size.",
    leaner:
      "It is far leaner than expected. Check its pump rate, fan speed and elevation, and the heater size.",
    apart:
      "One power is far richer than expected, the other far leaner. Check its pump rates, fan speeds and elevation, and the heater size.",
    slip: (figures: string) => `It looks mistyped: ${figures}. Correct it in the logbook.`,
    figures: {
      pump_Hz: "pump rate",
      fan_rpm: "fan speed",
      elevation_m: "elevation",
      temperature_C: "temperature",
      pressure_hPa: "pressure",
      dose_uL: "fuel per pulse",
    },
    contradict: (dates: string, end: string) =>
      `Your tunes of ${dates} contradict each other at ${end}: one heater's tunes are rarely so far apart. Check their figures; until another tune tells which is right, the range is wide.`,
    and: "and",
  },
  near: {
    title: "Tunes in similar air",
    columns: [
      "Hz",
      "Elevation",
      "Temperature",
      "Beside the average",
      "rpm",
      "CO, ppm",
      "Month",
      "Show",
    ],
    none: (kW: string) => `Nobody has shared a tune of a ${kW} kW heater yet.`,
    offline: "The atlas cannot be reached: tunes in similar air are not shown.",
    loading: "Looking for tunes in similar air …",
    pair: (low: string, high: string) => `${low} / ${high}`,
    unknown: "–",
    rich: (pct: string) => `${pct} % richer`,
    lean: (pct: string) => `${pct} % leaner`,
    even: "the same",
    map: "map",
    chart: "chart",
    onMap: (set: string, place: string) => `${set} Hz at ${place}: show on the map`,
    inChart: (set: string, place: string) => `${set} Hz at ${place}: show in the chart`,
    note: "Lowest / highest power, the most similar air first. CO of different meters does not compare.",
  },
};
