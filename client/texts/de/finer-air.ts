/** Pressure and humidity, in German. */
export const finerAir: typeof import("../en/finer-air.ts").finerAir = {
  temperatureWhy:
    "Luft von −20 °C ist 16 % dichter als Luft von +20 °C: so viel, wie 1.500 Höhenmeter ausmachen. Ohne Temperatur gilt die der Normatmosphäre, und die Spannen werden breiter.",
  pressure: "Luftdruck",
  pressureKind: "Dieser Druck ist",
  station: "am Ort gemessen",
  qnh: "auf Meereshöhe bezogen (QNH)",
  pressureWhy:
    "Den Druck am Ort zeigt ein Barometer dort, wo du stehst. Wetterberichte nennen den auf Meereshöhe bezogenen (QNH): Wer die beiden verwechselt, liegt auf 1.700 m um über 20 % daneben.",
  looksQnh: (standard: string) =>
    `In dieser Höhe zeigt ein Barometer etwa ${standard}. Ist das der auf Meereshöhe bezogene Druck? Dann QNH wählen.`,
  humidity: "Relative Luftfeuchte, %",
};
