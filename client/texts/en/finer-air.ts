/** Pressure and humidity; fetched with their fields. */
export const finerAir = {
  temperatureWhy:
    "Air at −20 °C is 16 % denser than at +20 °C: as much as 1,500 m of altitude make. Without a temperature the standard atmosphere's is used, and the bands are wider.",
  pressure: "Pressure",
  pressureKind: "This pressure is",
  station: "station pressure",
  qnh: "sea-level (QNH)",
  pressureWhy:
    "Station pressure is what a barometer shows where you stand. Weather reports give sea-level pressure (QNH): mixing them up puts the answer off by over 20 % at 1,700 m.",
  looksQnh: (standard: string) =>
    `At this elevation a barometer shows about ${standard}. Is this the sea-level figure? Then choose sea-level (QNH).`,
  humidity: "Relative humidity, %",
};
