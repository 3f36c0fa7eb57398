/** Words about simulated sweeps, in German. */
export const sweepStudy: typeof import("../en/sweep-study.ts").sweepStudy = {
  title: "Wie gut die geführte Suche das Minimum findet",
  intro: (runs) =>
    `${runs} erfundene Heizungen und Messgeräte, deren wahres Minimum bekannt ist: Kurven vieler Formen, Minima außerhalb dessen, was die Startwerte erwarten lassen, Flammen, die irgendwo ausgehen, Messgeräte, die träge oder ungenau sind, deren Anzeige wandert oder zu früh am Anschlag ist, dazu Böen. Die Suche weiß davon nichts, und ihre Regeln wurden nicht nach dieser Prüfung gewählt.`,
  outcomes: (found, open, floor, scale) =>
    `Von 100 Suchen fanden ${found} ein Minimum, ${open} sagten, dass keines eingegrenzt ist, ${floor}, dass es unter dem kleinsten Wert des Messgeräts liegt, ${scale}, dass es über dem größten liegt.`,
  ordinary: (found) =>
    `Wo das Minimum in der 99-%-Spanne liegt, die Flamme dort sicher steht und das Messgerät es zeigt, fanden es ${found} von 100.`,
  promises: (unbracketed, moves, relights) =>
    `Gefunden ohne Anstieg auf beiden Seiten: ${unbracketed}. Verstellungen über 0,2 Hz (kleinste Leistung) oder 0,4 Hz (größte Leistung): ${moves}. Dritte Zündversuche: ${relights}.`,
  byHand: (runs) =>
    `Von Hand (grobe Schritte, dann feine; gängige Praxis, keine Quelle) wurden ${runs} Minima gemeldet, ohne dass ein Anstieg auf beiden Seiten zu sehen war. Unten stehen die Heizungen, deren Minimum die geführte Suche fand.`,
  ends: { both: "Beide", low: "Kleinste Leistung", high: "Größte Leistung" },
  ways: { guided: "geführt", hand: "von Hand" },
  end: "Leistung",
  sweeps: "Suchen",
  within1: "Auf 0,1 Hz genau, %",
  within2: "Auf 0,2 Hz genau, %",
  above: "CO über dem niedrigsten, ppm, 95 von 100",
  settings: "Einstellungen, Median",
  readings: "Messwerte, Median",
  minutes: "Minuten, Median",
  flameOuts: "Flamme aus, in 100 Suchen",
};
