/** Words of the Card view and of the card itself, in German. */
export const cardWords: typeof import("../en/card.ts").cardWords = {
  title: "Ein Merkblatt für die Heizung",
  intro:
    "Die Pumpenfrequenzen für kleinste und größte Leistung nach Höhe und Nachttemperatur, für deine Lüfterdrehzahlen, auf Papier: falls der Akku leer ist.",
  fields: {
    elevationFrom: "Niedrigste Höhe",
    elevationTo: "Größte Höhe",
    temperatureFrom: "Kälteste Nacht",
    temperatureTo: "Wärmste Nacht",
    paper: "Papier",
    outOfRange: (least, most) => `Von ${least} bis ${most}.`,
    atLeast: (least) => `Mindestens ${least}: Der niedrigere Wert liegt darunter.`,
    atMost: (most) => `Höchstens ${most}: Der höhere Wert liegt darüber.`,
    fansSwapped:
      "Bei kleinster Leistung dreht der Lüfter meist langsamer. Bitte prüfen, ob die beiden vertauscht sind.",
  },
  papers: {
    a6: "A6, Vorder- und Rückseite",
    index: "4 × 6 Zoll, Vorder- und Rückseite",
    a5: "A5, Vorder- und Rückseite",
    a4: "A4, zum Falten",
    letter: "US Letter, zum Falten",
  },
  paperHint:
    "A6 und 4 × 6 Zoll liest man in der Hand; aus einem halben Meter Abstand A5 oder größer wählen.",
  print: "Merkblatt drucken",
  printHint:
    "Im Druckdialog dasselbe Papier wählen, tatsächliche Größe (100 %), ohne Kopf- und Fußzeilen; oder als PDF speichern. Schwarzweiß genügt.",
  code: {
    title: "Der Code öffnet dieses Blatt, aktuell. Von Hand:",
    titleWithoutOwn: "Der Code öffnet dieses Blatt ohne deine eigenen Abstimmungen. Von Hand:",
    name: "Code mit der Adresse dieses Merkblatts",
    withoutOwn: "Code und Link enthalten dieses Merkblatt ohne deine eigenen Abstimmungen.",
  },
  preview: "So wird das Merkblatt gedruckt",
  cannot: "Diese Zahlen passen nicht zusammen. Lüfterdrehzahlen und Kraftstoff je Takt prüfen.",
  heading: (kW) => `Startwerte, Heizung mit ${kW} kW`,
  dose: (dose, perHz) => `Kraftstoff je Takt ${dose} µL: je Hz ${perHz} L/h.`,
  demo: "Erfundene Daten: Nichts davon ist echt.",
  prior: "Diese Größe hat noch niemand abgestimmt: aus der Physik geschätzt, breite Spannen.",
  tunes: (tunes, contributors) => `Aus ${tunes} Abstimmungen von ${contributors} Besitzern.`,
  ownTunes: (tunes, contributors, own) =>
    `Aus ${tunes} Abstimmungen von ${contributors} Besitzern und ${own} eigenen.`,
  ownAlone: (own) =>
    `Aus ${own === 1 ? "1 eigenen Abstimmung" : `${own} eigenen Abstimmungen`} und einer physikalischen Schätzung: breite Spannen.`,
  fit: (version, date) => `Auswertung ${version} vom ${date}.`,
  noFit: "Noch keine Auswertung veröffentlicht.",
  printed: (date) => `Gedruckt am ${date}.`,
  end: (end, rpm) => `${end}: Pumpenfrequenz in Hz, Lüfter mit ${rpm} U/min`,
  night: (unit) => `Nachttemperatur, ${unit}`,
  elevation: (unit) => `Höhe, ${unit}`,
  inTen: (level) => `${level} von 10`,
  inHundred: (level) => `${level} von 100`,
  bands: "Spanne, %",
  reach: (below, above) => `−${below} +${above}`,
  bandsMean:
    "Spanne: So weit neben dem Druckwert liegt die beste Frequenz bei 8 von 10 (95 von 100) Heizungen.",
  bandsMine:
    "Spanne: So weit neben dem Druckwert liegt deine beste Frequenz, 8 von 10 (95 von 100) Mal.",
  extrapolated: "( ) In solcher Luft hat noch niemand abgestimmt: weniger trauen.",
  notes: {
    heater: "Heizung",
    place: "Ort",
    date: "Datum",
    found: (end) => `${end}, Hz`,
  },
  holds: (climb, warmth) =>
    `Für diese Heizung, diesen Ort, diesen Tag: nach ${climb} oder ${warmth} neu prüfen.`,
  nomogram: {
    title: "Zwischen den Zeilen: ein Lineal",
    name: (low, high) =>
      `Drei Skalen: Höhe, Pumpenfrequenz (kleinste Leistung mit ${low} U/min, größte mit ${high} U/min), Nachttemperatur. Die Tabellen enthalten dieselben Zahlen.`,
    how: "Ein Lineal von der Höhe (links) zur Nachttemperatur (rechts) legen: Es schneidet die Mittellinie bei beiden Pumpenfrequenzen.",
    example: (elevation, temperature, low, high) =>
      `Gepunktet: ${elevation}, ${temperature} ergeben ${low} und ${high} Hz.`,
    error: (pct) => `Für Normaldruck und 50 % Feuchte; höchstens ${pct} % neben dem Atlas.`,
    dashed: "Gestrichelt: In solcher Luft hat niemand abgestimmt.",
    rate: "Hz",
  },
  use: {
    title: "Ohne Telefon",
    steps: (hz) => [
      "Zeile nach Höhe, Spalte nach der kältesten Stunde der Nacht; dazwischen einen Zwischenwert.",
      "Kleinste und größte Leistung einstellen, Lüfter wie gedruckt. Andere Drehzahl: Frequenz im selben Verhältnis.",
      `Im Freien, CO-Messgerät am Abgasrohr: in ${hz}-Hz-Schritten, bis die ruhige Anzeige auf beiden Seiten gestiegen ist. Dazwischen bleiben: kleinste Leistung eher fett, größte eher mager. Flamme flackert oder Rauch: zurück.`,
    ],
  },
  safety: {
    title: "Kohlenmonoxid tötet",
    front: "Mehr auf der Rückseite.",
    lines: [
      "Nur ein Ausgangspunkt. Im Freien abstimmen: nie in Garage, Zelt oder Hütte, nie wenn darin jemand schläft.",
      "Separater, zertifizierter CO-Melder, wo Menschen schlafen, nie das Gerät vom Abgasrohr; ein stiller heißt nicht, dass kein CO da ist. Alarm, Kopfschmerzen, Schwindel: alle raus, dann Hilfe rufen.",
      "Heißes Abgasrohr. Heizung von selbst abkühlen lassen, nie den Strom trennen.",
      "Vorrang haben die Anleitung des Herstellers, örtliche Vorschriften, Fahrzeug- und Bootszulassung und zugelassene Fachbetriebe. Manche zugelassenen Anlagen dürfen gar nicht verändert werden.",
    ],
  },
};
