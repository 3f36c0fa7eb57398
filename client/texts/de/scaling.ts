/** The Scaling view, in German. */
export const scalingWords: typeof import("../en/scaling.ts").scalingWords = {
  title: "Wie Einstellungen der Luft folgen",
  end: "Ende",
  over: "Über",
  density: "Luftdichte",
  elevation: "Höhe",
  densityAxis: "Luftdichte, kg/m³",
  elevationAxis: (unit: string) => `Höhe, ${unit} (Kurve: Normatmosphäre)`,
  rateAxis: "Pumpenfrequenz je Lüfterdrehzahl, Hz je 1.000 U/min",
  unit: "Höhe in",
  key: {
    curve: "mittlere Abstimmung",
    mean: "wo das Mittel liegt, zu 95 % sicher",
    inner: "80 von 100 Heizungen",
    outer: "95 von 100 Heizungen",
    kept: "eine Abstimmung, die zählt",
    rejected: "von der Anpassung ausgenommen",
    held: "am Eingang zurückgehalten",
    line: "verbindet Abstimmungen einer Person",
  },
  beyond: (n: number) =>
    n === 1
      ? "Eine liegt außerhalb des Rahmens und ist an seinem Rand gezeichnet."
      : `${n} liegen außerhalb des Rahmens und sind an seinem Rand gezeichnet.`,
  reason: "Warum",
  showRows: (n: number) => (n === 1 ? "1 Zeile zeigen" : `${n} Zeilen zeigen`),
  restInCsv: (n: number) => `Die ersten ${n}; alle stehen in der CSV-Datei unter Daten.`,
  aside: "Ausgenommen, und warum",
  asideNone: "Nichts wurde ausgenommen.",
  points: (shown: string, all: string) =>
    shown === all
      ? `${all} Abstimmungen.`
      : `${shown} von ${all} Abstimmungen, gleichmäßig ausgewählt.`,
  table: "Die Punkte als Tabelle",
  tableOf: (what: string) => `Tabelle: ${what}`,
  columns: ["Höhe", "Dichte, kg/m³", "Pumpe, Hz", "Lüfter, U/min", "Hz je 1.000 U/min", "Stand"],
  status: { kept: "zählt", rejected: "ausgenommen", held: "zurückgehalten" },
  chartLabel: (end: string, over: string) =>
    `Pumpenfrequenz je Lüfterdrehzahl, ${end}, über ${over}`,
  prior: "Noch keine Abstimmungen dieser Klasse: Die Kurve ist allein Physik.",
};
