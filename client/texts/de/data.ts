/** The Atlas and its pages on the data, in German. */
export const dataWords: typeof import("../en/data.ts").dataWords = {
  pagesLabel: "Seiten des Atlas",
  pages: {
    map: "Karte",
    scaling: "Kurve",
    bands: "Spannen",
    method: "Verfahren",
    download: "Alle Abstimmungen",
    share: "Teilen",
    style: "Zeichen",
  },
  title: "Die Daten",
  intro:
    "Alles, was der Atlas weiß, ist offen. Leer heißt unbekannt, nie 0; jede Spalte hat ihre Einheit im Namen.",
  files: {
    csv: "Alle angenommenen Abstimmungen, CSV",
    geojson: "Alle angenommenen Abstimmungen, GeoJSON",
    parquet: "Alle angenommenen Abstimmungen, Parquet",
    data: "Dateien dieses Datenstands, die sich nie ändern, mit Prüfsummen und wie man sie zitiert",
    dictionary: "Was die Spalten bedeuten, und die Warnungen",
    metadata: "Warnungen und Spalten dieser CSV, für Programme",
    fit: "Die veröffentlichte Auswertung",
    openapi: "Beschreibung der Schnittstelle (OpenAPI 3.1)",
  },
  method: "Wie es gemacht wird",
  methodText: [
    "Je Heizungsgröße und Leistung: ln(Pumpenfrequenz ÷ Lüfterdrehzahl) = a + b · ln(Luftdichte ÷ 1,225). Der Lüfter fördert Volumen, also folgt die Luftmasse der Drehzahl mal der Dichte; die Pumpe fördert Volumen je Takt. Würden alle perfekt nachstimmen, wäre b = 1; bei echten Leuten ist es weniger.",
    "Alles Weitere ist ein einziges statistisches Modell: Heizungen unterscheiden sich, manche Besitzer stimmen nie nach, manche geben Fuß statt Meter an, manche machen andere Fehler, und einige haben sich vielleicht abgesprochen. Das Modell errechnet, wie wahrscheinlich jedes davon ist, und zählt jeden Besitzer einmal; sind es viele an einem Ort in einem Monat, zählt jeder davon weniger. Eine Abstimmung, die wahrscheinlich ein Fehler ist, zählt nicht, mit Begründung, und zählt wieder, wenn spätere sie stützen. Die Seite Verfahren erklärt es, erst in einfachen Worten, dann für Statistiker.",
  ],
  methodLanguage: "Diese Seite gibt es nur auf Englisch.",
  privacy: "Datenschutz",
  privacyText:
    "Kein Konto, kein Name, keine Adresse. Ein Standort wird in deinem Browser zu einer Kartenzelle von etwa 250 km². Dein Schlüssel ist zufällig und wird nur als verschlüsselter Hashwert gespeichert. Gespeichert werden Monate statt Tage, Höhen auf 10 m, Luft auf 1 °C und 1 hPa und kein freier Text. Gezeigt werden Höhen auf 100 m und Zellen ab fünf Besitzern; weniger stehen in einer größeren Zelle. Wer an mehreren Orten eingestellt hat, wird nur in Zellen von etwa 87.000 km² gezeigt, mit dem Jahr: genauer sieht niemand seine Wege. Das Pseudonym ist zufällig und geht mit deiner letzten Einstellung. Zweierlei in der Datei verrät einen Tag und wird niemandem gezeigt: seit wann ein neuer Besitzer wartet und mit welchem Modellstand eine Einstellung verglichen wurde. Zurückgezogen heißt gelöscht.",
  licence: "Lizenzen und Quellen",
  licences: [
    "Beigetragene Abstimmungen: CC0 1.0.",
    "Programmcode: MIT.",
    "Orte und Höhen: GeoNames, CC BY 4.0.",
    "Höhen zwischen den Orten: eine Liste von Flugplätzen und ein Höhenmodell der Erde, beide gemeinfrei.",
    "Küsten, Grenzen, Seen, Flüsse: Natural Earth, gemeinfrei.",
    "Schrift: Noto Sans, SIL Open Font License.",
  ],
};
