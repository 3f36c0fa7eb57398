/** Words about simulated sweeps, in Spanish. */
export const sweepStudy: typeof import("../en/sweep-study.ts").sweepStudy = {
  title: "Lo bien que la búsqueda guiada encuentra el mínimo",
  intro: (runs) =>
    `${runs} calefactores y medidores inventados, con ráfagas, retardo, redondeo y deriva, y su mínimo verdadero conocido; cada uno buscado como guía En el sitio, y a mano: pasos gruesos, después finos (práctica común, sin fuente). Un paso son 0,1 Hz.`,
  ends: { both: "Ambos extremos", low: "Extremo bajo", high: "Extremo alto" },
  ways: { guided: "guiada", hand: "a mano" },
  end: "Extremo",
  within1: "A menos de 0,1 Hz, %",
  within2: "A menos de 0,2 Hz, %",
  within3ppm: "A menos de 3 ppm del mejor, %",
  readings: "Lecturas, mediana",
  confirmed: "Con la de confirmación",
  minutes: "Minutos, mediana",
  held: "Intervalo del 95 % cumplido, %",
  share: "De las hechas a mano, mismo calefactor, %",
  none: "–",
};
