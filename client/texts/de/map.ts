/** Wörter der Karte. */
export const mapWords: typeof import("../en/map.ts").mapWords = {
  title: "Vorgeschlagene Pumpenfrequenz auf der Karte",
  shown: "Farben zeigen",
  aspects: { rate: "Frequenz", sure: "Genauigkeit", wanted: "was noch fehlt" },
  end: "Leistung",
  night: "Nacht auf der Karte",
  nightUnit: "Nacht auf der Karte: Einheit",
  standardAir: "Normatmosphäre",
  legends: {
    rate: (end: string) =>
      `Pumpenfrequenz, ${end}, und auf welcher Höhe sie bei dieser Temperatur passt`,
    sure: (end: string) =>
      `Wie weit sie danebenliegen kann, ${end}: 95 von 100 Heizungen liegen innerhalb`,
    wanted: (end: string) =>
      `Um wie viele Prozentpunkte eine weitere Abstimmung dort die Spanne der mittleren Heizung verengen würde, ${end}`,
  },
  ofAverage:
    "Farben und Linien gelten für die mittlere Heizung. Beim Antippen zählen auch deine eigenen Abstimmungen.",
  atElevation: (elevation: string) => `auf ${elevation}`,
  nowhere: "kommt bei dieser Temperatur nicht vor",
  hatched: "in solcher Luft noch keine Abstimmungen",
  contour: "entlang der Linie gleiche Frequenz",
  cellMark: "wie viele Abstimmungen von hier sind",
  none: "Dieser Browser zeichnet keine Karte (WebGL ist aus oder fehlt), darum hier ein Standbild. Alles andere geht.",
  lost: "Der Browser zeichnet die Karte nicht mehr; wenn er kann, kommt sie von selbst wieder. Bis dahin ein Standbild.",
  again: "Karte neu zeichnen",
  picture: "Standbild der vorgeschlagenen Pumpenfrequenzen rund um die Welt",
  pictureFailed: "Die Höhen für das Bild konnten nicht geladen werden.",
  builtInGround:
    "Die Höhenquelle dieses Atlas hat nicht alles geliefert: Stattdessen ist das eingebaute, gröbere Gelände zu sehen.",
  builtInBasemap:
    "Die Grundkarte dieses Atlas lässt sich nicht zeichnen: Stattdessen ist die eingebaute zu sehen.",
  loading: "Die Karte wird geladen …",
  click:
    "Klicken oder tippen zeigt die Startwerte für diese Stelle. Mit der Tastatur: Pfeile bewegen die Karte, + und − zoomen, Enter nimmt ihre Mitte.",
  beyond:
    "Näher, als die Daten reichen: Zwischen den genannten Orten sind Höhen und Farben geschätzt.",
  wanted: {
    title: "Wo eine Abstimmung am meisten fehlt",
    means: (heater: string, end: string) =>
      `Eine weitere Abstimmung in solcher Luft, von jemandem, der noch keine geteilt hat, würde die Spanne der mittleren Heizung (${heater}, ${end}) verengen:`,
    row: (elevation: string, temperature: string, now: string, then: string) =>
      `Auf ${elevation} bei ${temperature}: von ±${now} % auf ±${then} %`,
    none: "Eine weitere Abstimmung würde nirgends viel ändern: Die mittlere Heizung ist gut bekannt.",
  },
  estimated: "Aus der Nähe ist die Farbe des Geländes zwischen den genannten Orten geschätzt.",
  takeMiddle: "Startwerte für die Kartenmitte",
  cells: "Woher die Abstimmungen kommen",
  cellsNone: "Noch keine Abstimmungen.",
  cellsWithin: (n: number) => `${n} Zellen: drücken zeigt sie`,
  cellColumns: [
    "Zelle bei",
    "Mittlere Höhe",
    "Abstimmungen",
    "Besitzer",
    "Kleinste Leistung",
    "Größte Leistung",
  ],
  shift: (pct: number) =>
    Math.abs(pct) < 0.5
      ? "wie erwartet"
      : `${Math.abs(pct).toFixed(0)} % ${pct > 0 ? "fetter" : "magerer"}`,
  foot: {
    close: "Schließen",
    asking: "Die Höhe wird nachgeschlagen …",
    position: (lat: string, lon: string) => `${lat}, ${lon}`,
    from: (distance: string, name: string) => `${distance} von ${name}`,
    goToAnswer: "Zur Antwort",
  },
  cell: {
    gone: "Die Abstimmungen, nach denen du fragst, zeigt die Karte nicht mehr.",
    title: (lat: string, lon: string) => `Abstimmungen bei ${lat}, ${lon}`,
    count: (tunes: number, contributors: number) =>
      `${tunes === 1 ? "1 Abstimmung" : `${tunes} Abstimmungen`} von ${contributors === 1 ? "1 Besitzer" : `${contributors} Besitzern`}`,
    between: (lowest: string, highest: string) => `${lowest} bis ${highest}`,
    since: (oldest: string, newest: string) => `${oldest} bis ${newest}`,
    loading: "Sie werden geladen …",
    show: "Diese Abstimmungen zeigen",
    list: "Einstellungen dieser Abstimmungen",
    columns: [
      "Monat",
      "Höhe",
      "Lufttemperatur",
      "Heizungsgröße",
      "Kleinste Leistung",
      "Größte Leistung",
    ],
    set: (hz: string, rpm: string) => `${hz} Hz bei ${rpm} U/min`,
    coUnknown: "kein CO-Wert",
    unknown: "nicht angegeben",
    newest: (shown: number, of: string) => `Die neuesten ${shown} von ${of}.`,
    wide: "Ihre Besitzer haben an mehreren Orten eingestellt. Damit ihnen niemand folgen kann, stehen sie gemeinsam in einem Gebiet von etwa 330 km Breite, mit dem Jahr.",
    meters:
      "Niedrigster CO-Wert, wie es das eigene Messgerät gezeigt hat: vergleichbar nur mit demselben Gerät an derselben Stelle.",
  },
  credit: "GeoNames (CC BY 4.0), Natural Earth",
  label: "Karte der vorgeschlagenen Pumpenfrequenzen",
};
