/** The page on how settings scale, in German. */
export const scalingWords: typeof import("../en/scaling.ts").scalingWords = {
  title: "Wie die Einstellungen von der Luft abhängen",
  end: "Leistung",
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
    mean: "mittlere Heizung, zu 95 % sicher",
    inner: "8 von 10 Heizungen",
    outer: "95 von 100 Heizungen",
    kept: "eine Abstimmung, die zählt",
    rejected: "zählt nicht: zu weit weg",
    held: "beim Eingang zurückgehalten",
    line: "verbindet die Abstimmungen eines Besitzers",
  },
  beyond: (n: number) =>
    n === 1
      ? "Eine Abstimmung liegt außerhalb dieses Diagramms und ist an seinem Rand markiert."
      : `${n} Abstimmungen liegen außerhalb dieses Diagramms und sind an seinem Rand markiert.`,
  beyondHere: (n) => `${n} außerhalb dieses Diagramms`,
  reason: "Warum",
  showRows: (n: number) => (n === 1 ? "1 Zeile zeigen" : `${n} Zeilen zeigen`),
  restInCsv: (n: number) => `Die ersten ${n}; die CSV-Datei unten enthält alle.`,
  aside: "Was nicht zählt, und warum",
  asideNone: "Jede Abstimmung zählt.",
  notAmong: "Die Abstimmung, nach der du fragst, ist hier nicht eingezeichnet.",
  points: (shown: string, all: string) =>
    shown === all
      ? `${all} Abstimmungen.`
      : `${shown} von ${all} Abstimmungen, gleichmäßig ausgewählt.`,
  seen: (when: string) => `Abstimmungen, wie dieser Browser sie zuletzt gesehen hat, ${when}.`,
  unseen:
    "Dieser Browser hat die Abstimmungen dieser Heizungsgröße noch nie gesehen: Sie kommen, sobald der Atlas erreichbar ist.",
  table: "Die Punkte als Tabelle",
  tableOf: (what: string) => `Tabelle: ${what}`,
  columns: ["Höhe", "Dichte, kg/m³", "Pumpe, Hz", "Lüfter, U/min", "Hz je 1.000 U/min", "Stand"],
  status: { kept: "zählt", rejected: "zählt nicht", held: "zurückgehalten" },
  chartLabel: (end: string, over: string) =>
    `Pumpenfrequenz je Lüfterdrehzahl, ${end}, über ${over}`,
  prior: "Noch keine Abstimmungen dieser Heizungsgröße: Die Kurve ist aus der Physik geschätzt.",
  read: "Diagramm ablesen",
  readOptions: { curve: "Kurve", tunes: "Punkte" },
  readCurve: "Entlang der Kurve",
  readTunes: "Abstimmung für Abstimmung",
  readHint: "Den Regler bewegen oder ins Diagramm zeigen: Hier erscheinen die Zahlen dazu.",
  curveReading: (density, elevation, rate, bands) =>
    `${density} kg/m³, wie auf ${elevation}: im Mittel ${rate} Hz je 1.000 U/min; zu 95 % sicher ${bands[0]}; 8 von 10 Heizungen ${bands[1]}; 95 von 100 ${bands[2]}.`,
  tuneReading: (density, elevation, pump, fan, rate, status) =>
    `${density} kg/m³, ${elevation}: ${pump} Hz bei ${fan} U/min, ${rate} Hz je 1.000 U/min; ${status}.`,
  residuals: {
    title: "Residuen: wie weit jede Abstimmung von der Auswertung abweicht",
    means:
      "Verglichen mit dem, was die Auswertung bei dieser Luftdichte erwartet. Eine gute Auswertung lässt keinen Trend übrig; die Farbtöne sind die Spannen für eine weitere Heizung.",
    none: "Hier gibt es keine Abstimmungen: Nur die Spannen sind gezeichnet.",
    axis: "Abweichung, %",
    chart: (end) => `Residuen, ${end}, über der Luftdichte`,
    read: "Abstimmung für Abstimmung, von dünner zu dichter Luft",
    reading: (off, tune) => `${off} %. ${tune}`,
  },
  csv: {
    points: "Abstimmungen als CSV speichern",
    curve: "Kurve als CSV speichern",
  },
  curveTable: "Die Kurve als Tabelle",
  curveColumns: [
    "Dichte, kg/m³",
    "Höhe",
    "Hz je 1.000 U/min",
    "Mittel, zu 95 % sicher",
    "8 von 10 Heizungen",
    "95 von 100 Heizungen",
  ],
};
