/** Wörter der Karte. */
export const mapWords: typeof import("../en/map.ts").mapWords = {
  title: "Vorgeschlagene Pumpenfrequenz auf der Karte",
  shown: "Farben zeigen",
  aspects: { rate: "Pumpenfrequenz", sure: "wie sicher sie ist" },
  end: "Gezeigtes Ende",
  night: "Nacht auf der Karte",
  nightUnit: "Nacht auf der Karte: Einheit",
  standardAir: "Normatmosphäre",
  legends: {
    rate: (end: string) => `Pumpenfrequenz, ${end}, und wo diese Nacht sie verlangt`,
    sure: (end: string) =>
      `Wie weit sie bei einer weiteren Heizung danebenliegen kann, ${end}: 95 % liegen innerhalb`,
  },
  atElevation: (elevation: string) => `auf ${elevation}`,
  nowhere: "nicht in dieser Nacht",
  hatched: "außerhalb der Luft, in der jemand abgestimmt hat",
  cellMark: "Abstimmungen von hier, mit ihrer Zahl",
  none: "Dieser Browser zeichnet keine Karte (WebGL ist aus oder fehlt), darum hier ein stehendes Bild. Alles andere geht.",
  lost: "Die Karte hat ihre Zeichenfläche verloren; sie kommt wieder, sobald der Browser eine gibt. Bis dahin ein stehendes Bild.",
  again: "Karte neu zeichnen",
  picture: "Stehendes Bild der vorgeschlagenen Pumpenfrequenzen rund um die Welt",
  pictureFailed: "Die Höhen für das Bild waren nicht zu holen.",
  builtInGround:
    "Die eingestellte Höhenquelle hat nicht jede Kachel geliefert: Das eingebaute, gröbere Gelände springt ein.",
  builtInBasemap:
    "Die eingestellte Grundkarte lässt sich nicht zeichnen: Die eingebaute springt ein.",
  loading: "Die Karte wird geladen …",
  click:
    "Klicken oder tippen ergibt eine Startabstimmung für den Ort. Mit der Tastatur: Pfeile bewegen die Karte, + und − zoomen, Enter nimmt ihre Mitte.",
  takeMiddle: "Startabstimmung für die Mitte der Karte",
  cells: "Woher die Abstimmungen kommen",
  cellsNone: "Noch keine Abstimmungen.",
  cellColumns: [
    "Zelle bei",
    "Mittlere Höhe",
    "Abstimmungen",
    "Beitragende",
    "Unteres Ende",
    "Oberes Ende",
  ],
  shift: (pct: number) =>
    Math.abs(pct) < 0.5
      ? "wie angepasst"
      : `${Math.abs(pct).toFixed(0)} % ${pct > 0 ? "fett" : "mager"}`,
  foot: {
    close: "Schließen",
    asking: "Die Höhe wird nachgeschlagen …",
    position: (lat: string, lon: string) => `${lat}, ${lon}`,
    from: (distance: string, name: string) => `${distance} von ${name}`,
    goToAnswer: "Zur Antwort",
  },
  cell: {
    title: (lat: string, lon: string) => `Abstimmungen bei ${lat}, ${lon}`,
    count: (tunes: number, contributors: number) =>
      `${tunes === 1 ? "1 Abstimmung" : `${tunes} Abstimmungen`} von ${contributors === 1 ? "1 Person" : `${contributors} Personen`}`,
    between: (lowest: string, highest: string) => `${lowest} bis ${highest}`,
    since: (oldest: string, newest: string) => `${oldest} bis ${newest}`,
    loading: "Sie werden geholt …",
    show: "Diese Abstimmungen zeigen",
    list: "Einstellungen dieser Abstimmungen",
    columns: ["Monat", "Höhe", "Lufttemperatur", "Leistungsklasse", "Unteres Ende", "Oberes Ende"],
    set: (hz: string, rpm: string) => `${hz} Hz bei ${rpm} U/min`,
    co: (ppm: string) => `${ppm} ppm`,
    coBelow: (ppm: string) => `unter ${ppm} ppm`,
    coUnknown: "kein CO-Wert",
    unknown: "nicht angegeben",
    newest: (shown: number, of: string) => `Die neuesten ${shown} von ${of}.`,
    meters:
      "Niedrigstes CO, wie es das eigene Messgerät gezeigt hat: vergleichbar nur mit demselben Gerät an derselben Stelle.",
  },
  credit: "GeoNames (CC BY 4.0), Natural Earth",
  label: "Karte der vorgeschlagenen Pumpenfrequenzen",
};
