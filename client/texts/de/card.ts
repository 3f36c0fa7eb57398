/** Words of the Card view and of the card itself, in German. */
export const cardWords: typeof import("../en/card.ts").cardWords = {
  title: "Eine Karte für die Heizung",
  intro:
    "Die Pumpenfrequenz beider Enden nach Höhe und Nachttemperatur, für die eigenen Lüfterdrehzahlen, auf Papier: falls das Telefon leer ist.",
  fields: {
    elevationFrom: "Niedrigste Höhe",
    elevationTo: "Größte Höhe",
    temperatureFrom: "Kälteste Nacht",
    temperatureTo: "Wärmste Nacht",
    paper: "Papier",
    outOfRange: (least, most) => `Von ${least} bis ${most}.`,
    atLeast: (least) => `Mindestens ${least}: Das andere Ende der Spanne liegt darunter.`,
    atMost: (most) => `Höchstens ${most}: Das andere Ende der Spanne liegt darüber.`,
    fansSwapped:
      "Am unteren Ende dreht der Lüfter meist langsamer. Bitte prüfen, ob die beiden vertauscht sind.",
  },
  papers: {
    a6: "A6, Vorder- und Rückseite",
    index: "4 × 6 Zoll, Vorder- und Rückseite",
    a5: "A5, Vorder- und Rückseite",
    a4: "A4, zum Falten",
    letter: "US Letter, zum Falten",
  },
  print: "Karte drucken",
  printHint:
    "Im Druckdialog dasselbe Papier wählen, tatsächliche Größe (100 %), ohne Kopf- und Fußzeilen; oder als PDF sichern. Schwarzweiß genügt.",
  preview: "Die Karte, wie sie gedruckt wird",
  cannot: "Diese Zahlen passen nicht zusammen. Lüfterdrehzahlen und Dosis prüfen.",
  heading: (kW) => `Startabstimmungen, Heizung mit ${kW} kW`,
  dose: (dose, perHz) => `Dosis ${dose} µL: je Hz ${perHz} L/h.`,
  demo: "Erfundene Daten: Keine Abstimmung hier ist echt.",
  prior: "Diese Klasse hat noch niemand abgestimmt: nur Physik und Brauch, breite Bänder.",
  tunes: (tunes, contributors) => `Aus ${tunes} Abstimmungen von ${contributors} Beitragenden.`,
  fit: (version, date) => `Anpassung ${version} vom ${date}.`,
  noFit: "Noch keine Anpassung veröffentlicht.",
  printed: (date) => `Gedruckt ${date}.`,
  end: (end, rpm) => `${end}: Pumpenfrequenz in Hz, Lüfter mit ${rpm} U/min`,
  night: (unit) => `Nachttemperatur, ${unit}`,
  elevation: (unit) => `Höhe, ${unit}`,
  share: (level) => `${level} von 100`,
  bands: "Band, %",
  reach: (below, above) => `−${below} +${above}`,
  bandsMean:
    "Band: So weit unter und über dem Druckwert liegt die gute Abstimmung von 80 (95) von 100 weiteren Heizungen, auch der eigenen.",
  extrapolated: "( ) Luft, in der noch niemand abgestimmt hat: weniger trauen.",
  notes: {
    heater: "Heizung",
    place: "Ort",
    date: "Datum",
    found: (end) => `Gefunden, ${end}, Hz`,
  },
  holds: (climb, warmth) =>
    `Für diese Heizung, diesen Ort, diesen Tag: nach ${climb} oder ${warmth} neu prüfen.`,
  nomogram: {
    title: "Zwischen den Zeilen: ein Lineal",
    name: (low, high) =>
      `Drei Skalen: Höhe, Pumpenfrequenz (unteres Ende mit ${low} U/min, oberes mit ${high} U/min), Nachttemperatur. Die Tabellen enthalten dieselben Zahlen.`,
    how: "Ein Lineal von der Höhe (links) zur Nachttemperatur (rechts) legen: Es schneidet die Mittellinie bei den Pumpenfrequenzen beider Enden.",
    example: (elevation, temperature, low, high) =>
      `Gepunktet: ${elevation}, ${temperature} ergeben ${low} und ${high} Hz.`,
    error: (pct) => `Für Normaldruck und 50 % Feuchte; auf ${pct} % gleich dem Atlas gezeichnet.`,
    dashed: "Gestrichelt: Luft, in der niemand abgestimmt hat.",
    rate: "Hz",
  },
  use: {
    title: "Ohne Telefon",
    steps: [
      "Zeile nach Höhe, Spalte nach der kältesten Stunde; dazwischen ein Wert dazwischen.",
      "Beide Enden einstellen, Lüfter wie gedruckt. Andere Drehzahl: Frequenz im selben Verhältnis.",
      "Im Freien, CO-Messgerät am Auspuff: in 0,1 Hz, bis die stete Anzeige beiderseits des Tiefsten gestiegen ist. Dazwischen bleiben: unten auf der fetten Seite, oben magerer. Flamme stockt oder Rauch: zurück.",
    ],
  },
  safety: {
    title: "Kohlenmonoxid tötet",
    front: "Mehr auf der Rückseite.",
    lines: [
      "Nur ein Ausgangspunkt. Im Freien abstimmen: nie in Garage, Zelt oder Kabine, nie wenn darin jemand schläft.",
      "Eigener zugelassener CO-Melder, wo Menschen schlafen, nie das Gerät vom Auspuff; ein stummer heißt nicht, dass keines da ist. Alarm, Kopfschmerz, Schwindel: alle hinaus, dann Hilfe rufen.",
      "Heißer Auspuff. Heizung auskühlen lassen, nie den Strom kappen.",
      "Vor allem gelten Handbuch des Herstellers, örtliche Vorschriften, Fahrzeug- und Bootszulassung und das Fachhandwerk. Manche zugelassenen Anlagen dürfen gar nicht verändert werden.",
    ],
  },
};
