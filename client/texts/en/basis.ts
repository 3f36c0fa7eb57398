/** What an answer rests on; fetched after it. */
export const basisWords = {
  title: "Based on",
  tunes: (tunes: string, contributors: string, kW: string) =>
    `${tunes} tunes by ${contributors} owners of ${kW} kW heaters.`,
  prior: (kW: string) =>
    `No tunes of ${kW} kW heaters yet: this is an estimate from physics and common practice, so the bands are wide.`,
  range: (from: string, to: string) => `They were found in air of ${from} to ${to} kg/m³.`,
  extrapolated: "Nobody has tuned in such air yet. This is extrapolated: trust the bands less.",
  inside: "The air here is within that range.",
  fit: (version: string, age: string) => `Fit ${version}, ${age}.`,
  priorFit: "No fit published yet.",
  ages: {
    now: "published just now",
    minutes: (n: number) => `${n} min old`,
    hours: (n: number) => `${n} h old`,
    days: (n: number) => `${n} days old`,
  },
  air: (density: string, ratio: string, altitude: string) =>
    `Air ${density} kg/m³, ${ratio} of standard air at sea level: as at ${altitude} on a standard day.`,
  assumed: { temperature: "temperature", pressure: "pressure", humidity: "humidity" },
  assumes: (what: string) => `Assumed from the standard atmosphere or usual values: ${what}.`,
  waysTitle: "Two ways to get there",
  way: "Way",
  heatLeft: "Heat, compared with sea level",
  keepFan: "Same fan speed",
  keepHeat: "Same heat",
  fanMakesUp:
    "The table rounds the pump rate and leaves the fan as it is. The answer above also adjusts the fan, to make up for the pump's step.",
  fanShort: (limit: string) =>
    `The fan's limit is about ${limit} rpm: full heat isn't possible here.`,
  figures: "All figures",
  exact: (hz: string) => `exactly ${hz} Hz`,
  mean: "Average tune",
  meanBand: (level: string) => `average heater, ${level} % sure`,
  heaters: (level: string) => `${level} in 100 heaters`,
  span: (lower: string, upper: string) => `${lower} to ${upper} Hz`,
  burn: (litres: string, kW: string) =>
    `${litres} L/h, about ${kW} kW to the room (80 % efficiency assumed)`,
  meanBandMine: (level: string) => `best setting of your heater, ${level} % sure`,
  heatersMine: (level: string) => `your heater, ${level} in 100 times`,
  times: (level: string, lower: string, upper: string) =>
    `${level} in 10 times: ${lower}–${upper} Hz`,
};
