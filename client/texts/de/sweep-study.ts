/** Words about simulated sweeps, in German. */
export const sweepStudy: typeof import("../en/sweep-study.ts").sweepStudy = {
  title: "Wie gut die geführte Suche das Minimum findet",
  intro: (runs) =>
    `${runs} erfundene Heizungen und Messgeräte, deren wahres Minimum bekannt ist: Kurven vieler Formen, Minima außerhalb dessen, was die Starteinstellung erwartet, Flammen, die irgendwo ausgehen, Messgeräte, die träge oder grob sind, wandern oder zu früh am Ende sind, dazu Böen. Nichts davon weiß die Suche, und ihre Regeln wurden nicht nach dieser Prüfung gewählt.`,
  outcomes: (found, open, floor, scale) =>
    `Von 100 Suchen fanden ${found} ein Minimum, ${open} sagten, dass keines eingegrenzt ist, ${floor}, dass es unter der Anzeigeschwelle liegt, ${scale}, dass es über dem Messbereich liegt.`,
  ordinary: (found) =>
    `Wo das Minimum im 99-%-Bereich liegt, die Flamme dort sicher steht und das Messgerät es zeigt, fanden es ${found} von 100.`,
  promises: (unbracketed, moves, relights) =>
    `Gefunden ohne Anstieg auf beiden Seiten: ${unbracketed}. Verstellungen über 0,2 Hz (unteres Ende) oder 0,4 Hz (oberes Ende): ${moves}. Dritte Zündversuche: ${relights}.`,
  byHand: (runs) =>
    `Von Hand (grobe Schritte, dann feine; gängige Praxis, keine Quelle) wurden ${runs} Minima genannt, ohne dass ein Anstieg auf beiden Seiten zu sehen war. Unten die Heizungen, deren Minimum die geführte Suche fand.`,
  ends: { both: "Beide Enden", low: "Unteres Ende", high: "Oberes Ende" },
  ways: { guided: "geführt", hand: "von Hand" },
  end: "Ende",
  sweeps: "Suchen",
  within1: "Auf 0,1 Hz genau, %",
  within2: "Auf 0,2 Hz genau, %",
  above: "CO über dem niedrigsten, ppm, 95 von 100",
  settings: "Einstellungen, Median",
  readings: "Ablesungen, Median",
  minutes: "Minuten, Median",
  flameOuts: "Flamme aus, in 100 Suchen",
};
