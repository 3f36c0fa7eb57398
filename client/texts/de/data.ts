/** The Data view, in German. */
export const dataWords: typeof import("../en/data.ts").dataWords = {
  pagesLabel: "Seiten zu den Daten",
  pages: {
    download: "Herunterladen",
    bands: "Wie gut die Bänder halten",
    method: "Verfahren",
    style: "Zeichen und Farben",
  },
  title: "Die Daten",
  intro:
    "Alles, was der Atlas weiß, ist offen. Was fehlt, ist leer, nie null; jede Zahl trägt ihre Einheit im Namen.",
  files: [
    ["/api/tunes.csv", "Alle angenommenen Abstimmungen, CSV"],
    ["/api/tunes.geojson", "Alle angenommenen Abstimmungen, GeoJSON"],
    ["/api/dictionary.json", "Was die Spalten bedeuten, und die Warnungen"],
    ["/api/tunes.csv-metadata.json", "Warnungen und Spalten dieser CSV, für Programme"],
    ["/api/fit", "Die veröffentlichte Anpassung"],
    ["/api/openapi.json", "Beschreibung der Schnittstelle (OpenAPI 3.1)"],
  ],
  method: "Wie es gemacht wird",
  methodText: [
    "Je Heizungsgröße und Leistung: ln(Pumpenfrequenz ÷ Lüfterdrehzahl) = a + b · ln(Luftdichte ÷ 1,225). Der Lüfter fördert Volumen, also folgt die Luftmasse der Drehzahl mal der Dichte; die Pumpe fördert Volumen je Takt. Vollkommenes Nachstimmen ergäbe b = 1; eine Menge von Leuten zeigt weniger.",
    "Alles Weitere ist ein einziges statistisches Modell: Heizungen unterscheiden sich, manche Besitzer stimmen nie nach, manche geben Fuß statt Meter an, manche machen andere Fehler, und einige haben sich vielleicht abgesprochen. Das Modell errechnet, wie wahrscheinlich jedes davon ist, und zählt jeden Besitzer einmal; viele an einem Ort in einem Monat zählen je weniger. Eine Abstimmung, die wahrscheinlich ein Fehler ist, wird mit Begründung ausgenommen und kommt zurück, wenn spätere sie stützen. Die Seite Verfahren erklärt es, erst in einfachen Worten, dann für Statistiker.",
  ],
  methodLanguage: "Diese Seite gibt es nur auf Englisch.",
  privacy: "Was verborgen bleibt",
  privacyText:
    "Kein Konto, kein Name, keine Adresse. Ein Standort wird im Browser zu einer Kartenzelle von etwa 250 km². Der Schlüssel der Beitragenden ist zufällig und nur als Prüfsumme mit Geheimnis gespeichert. Monate statt Tage; Höhen auf 10 m; kein freier Text. Zellen mit weniger als drei Beitragenden werden in einer größeren gezeigt. Zurückgezogen heißt fort.",
  licence: "Lizenzen und Quellen",
  licences: [
    "Beigetragene Abstimmungen: CC0 1.0.",
    "Programm: MIT.",
    "Orte und Höhen: GeoNames, CC BY 4.0.",
    "Küsten, Grenzen, Seen, Flüsse: Natural Earth, gemeinfrei.",
    "Schrift: Noto Sans, SIL Open Font License.",
  ],
};
