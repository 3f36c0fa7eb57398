/** The Scaling view, in German. */
export const scalingWords: typeof import("../en/scaling.ts").scalingWords = {
  title: "Wie Einstellungen der Luft folgen",
  end: "Ende",
  over: "Über",
  density: "Luftdichte",
  elevation: "Höhe",
  overOptions: { density: "Luftdichte", elevation: "Höhe" },
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
      ? "Eine Abstimmung liegt außerhalb dieses Diagramms und ist an seinem Rand markiert."
      : `${n} Abstimmungen liegen außerhalb dieses Diagramms und sind an seinem Rand markiert.`,
  beyondHere: (n) => `${n} außerhalb dieses Diagramms`,
  reason: "Warum",
  showRows: (n: number) => (n === 1 ? "1 Zeile zeigen" : `${n} Zeilen zeigen`),
  restInCsv: (n: number) => `Die ersten ${n}; alle stehen in der CSV-Datei darunter.`,
  aside: "Ausgenommen, und warum",
  asideNone: "Nichts wurde ausgenommen.",
  points: (shown: string, all: string) =>
    shown === all
      ? `${all} Abstimmungen.`
      : `${shown} von ${all} Abstimmungen, gleichmäßig ausgewählt.`,
  seen: (when: string) => `Abstimmungen, wie dieser Browser sie zuletzt sah, ${when}.`,
  unseen:
    "Die Abstimmungen dieser Klasse wurden in diesem Browser nie gesehen: Sie kommen mit dem Atlas.",
  table: "Die Punkte als Tabelle",
  tableOf: (what: string) => `Tabelle: ${what}`,
  columns: ["Höhe", "Dichte, kg/m³", "Pumpe, Hz", "Lüfter, U/min", "Hz je 1.000 U/min", "Stand"],
  status: { kept: "zählt", rejected: "ausgenommen", held: "zurückgehalten" },
  chartLabel: (end: string, over: string) =>
    `Pumpenfrequenz je Lüfterdrehzahl, ${end}, über ${over}`,
  prior: "Noch keine Abstimmungen dieser Klasse: Die Kurve ist allein Physik.",
  read: "Im Diagramm ablesen",
  readOptions: { curve: "Kurve", tunes: "Punkte" },
  readCurve: "Entlang der Kurve",
  readTunes: "Abstimmung für Abstimmung",
  readHint: "Den Regler bewegen oder ins Diagramm zeigen: Hier steht, was es dort sagt.",
  curveReading: (density, elevation, rate, bands) =>
    `${density} kg/m³, wie auf ${elevation}: im Mittel ${rate} Hz je 1.000 U/min; zu 95 % sicher ${bands[0]}; 80 von 100 Heizungen ${bands[1]}; 95 von 100 ${bands[2]}.`,
  tuneReading: (density, elevation, pump, fan, rate, status) =>
    `${density} kg/m³, ${elevation}: ${pump} Hz bei ${fan} U/min, ${rate} Hz je 1.000 U/min; ${status}.`,
  residuals: {
    title: "Residuen: wie weit jede Abstimmung von der Anpassung abweicht",
    means:
      "Über der Luftdichte, gegen das, was die Anpassung dort erwartet. Eine gute lässt keinen Trend übrig; die Tönungen sind die Bänder für eine weitere Heizung.",
    none: "Hier liegen keine Abstimmungen vor: Nur die Bänder sind gezeichnet.",
    axis: "Abweichung, %",
    chart: (end) => `Residuen, ${end}, über der Luftdichte`,
    read: "Abstimmung für Abstimmung, von dünner zu dichter Luft",
    reading: (off, tune) => `${off} %. ${tune}`,
  },
  csv: {
    points: "Abstimmungen als CSV sichern",
    curve: "Kurve als CSV sichern",
  },
  curveTable: "Die Kurve als Tabelle",
  curveColumns: [
    "Dichte, kg/m³",
    "Höhe",
    "Hz je 1.000 U/min",
    "Mittel, zu 95 % sicher",
    "80 von 100 Heizungen",
    "95 von 100 Heizungen",
  ],
};
