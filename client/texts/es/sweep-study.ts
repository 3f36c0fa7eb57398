/** Words about simulated sweeps, in Spanish. */
export const sweepStudy: typeof import("../en/sweep-study.ts").sweepStudy = {
  title: "Lo bien que la búsqueda guiada encuentra el mínimo",
  intro: (runs) =>
    `${runs} calefactores y medidores inventados cuyo mínimo verdadero se conoce: curvas de muchas formas, mínimos fuera de lo que hacen esperar los ajustes iniciales, llamas que se apagan en cualquier punto, medidores lentos, toscos, que derivan o que se quedan cortos, y ráfagas. La búsqueda no sabe nada de ello, y sus reglas no se eligieron con esta prueba.`,
  outcomes: (found, open, floor, scale) =>
    `De cada 100 búsquedas, ${found} encontraron un mínimo, ${open} dijeron que no quedaba acotado, ${floor} que está por debajo de lo que muestra el medidor y ${scale} que queda por encima.`,
  ordinary: (found) =>
    `Donde el mínimo está en el intervalo del 99 %, la llama es segura y el medidor lo muestra, lo encontraron ${found} de cada 100.`,
  promises: (unbracketed, moves, relights) =>
    `Encontrados sin subida a ambos lados: ${unbracketed}. Cambios de más de 0,2 Hz (potencia mínima) o 0,4 Hz (potencia máxima): ${moves}. Terceros intentos de encendido: ${relights}.`,
  byHand: (runs) =>
    `A mano (pasos gruesos, después finos; práctica común, sin fuente) se nombraron ${runs} mínimos sin subida vista a ambos lados. Abajo, los calefactores cuyo mínimo encontró la búsqueda guiada.`,
  ends: { both: "Ambas", low: "Potencia mínima", high: "Potencia máxima" },
  ways: { guided: "guiada", hand: "a mano" },
  end: "Potencia",
  sweeps: "Búsquedas",
  within1: "A menos de 0,1 Hz, %",
  within2: "A menos de 0,2 Hz, %",
  above: "CO sobre el más bajo, ppm, 95 de 100",
  settings: "Ajustes, mediana",
  readings: "Lecturas, mediana",
  minutes: "Minutos, mediana",
  flameOuts: "Llama apagada, en 100 búsquedas",
};
