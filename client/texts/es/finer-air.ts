/** Pressure and humidity, in Spanish. */
export const finerAir: typeof import("../en/finer-air.ts").finerAir = {
  temperatureWhy:
    "El aire a −20 °C es un 16 % más denso que a +20 °C: tanto como 1500 m de altitud. Sin temperatura se toma la de la atmósfera estándar y los intervalos se ensanchan.",
  pressure: "Presión",
  pressureKind: "Esta presión es",
  station: "la del lugar",
  qnh: "la del nivel del mar (QNH)",
  pressureWhy:
    "La del lugar es la que marca un barómetro donde estás. Los partes del tiempo dan la del nivel del mar (QNH): confundirlas desvía la respuesta más del 20 % a 1700 m.",
  looksQnh: (standard: string) =>
    `A esta altitud un barómetro marca unos ${standard}. ¿Es la cifra del nivel del mar? Entonces elige QNH.`,
  humidity: "Humedad relativa, %",
};
