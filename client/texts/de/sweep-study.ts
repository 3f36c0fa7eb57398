/** Words about simulated sweeps, in German. */
export const sweepStudy: typeof import("../en/sweep-study.ts").sweepStudy = {
  title: "Wie gut die geführte Suche das Minimum findet",
  intro: (runs) =>
    `${runs} erfundene Heizungen und Messgeräte, mit Böen, Trägheit, Rundung und Drift, ihr wahres Minimum bekannt; jede gesucht, wie Vor Ort führt, und von Hand: grobe Schritte, dann feine (gängige Praxis, keine Quelle). Ein Schritt ist 0,1 Hz.`,
  ends: { both: "Beide Enden", low: "Unteres Ende", high: "Oberes Ende" },
  ways: { guided: "geführt", hand: "von Hand" },
  end: "Ende",
  within1: "Auf 0,1 Hz genau, %",
  within2: "Auf 0,2 Hz genau, %",
  within3ppm: "Auf 3 ppm am besten, %",
  readings: "Ablesungen, Median",
  confirmed: "Mit der bestätigenden",
  minutes: "Minuten, Median",
  held: "95-%-Bereich hielt, %",
  share: "Von denen von Hand, gleiche Heizung, %",
  none: "–",
};
