/** The page itself and its first views, in German. */
export const t: typeof import("../en/app.ts").t = {
  name: "Hypsotune",
  tagline: "Startwerte für Diesel-Luftheizungen",
  skip: "Zum Inhalt springen",
  language: "Sprache",
  theme: {
    title: "Farben",
    system: "Wie das System",
    light: "Hell",
    dark: "Dunkel",
    contrast: "Hoher Kontrast",
  },
  demo: "Erfundene Daten: Nichts davon ist echt.",
  places: {
    start: "Start",
    trip: "Reise",
    onsite: "Vor Ort",
    logbook: "Logbuch",
    atlas: "Atlas",
  },
  low: "Kleinste Leistung",
  high: "Größte Leistung",
  endWord: { low: "kleinste Leistung", high: "größte Leistung" },
  unit: "Einheit",
  rpm: "U/min",
  loading: "Der Atlas wird gefragt …",
  partMissing:
    "Dieser Teil der Seite konnte nicht geladen werden. Die Seite neu laden, sobald wieder Netz da ist.",
  unreachable: "Atlas nicht erreichbar: Zahlen aus der hier gespeicherten Auswertung.",
  notReached: "Der Atlas ist nicht erreichbar. Verbindung prüfen und noch einmal versuchen.",
  noFit:
    "Der Atlas ist nicht erreichbar, und in diesem Browser ist noch keine Auswertung gespeichert. Noch einmal versuchen, sobald wieder Netz da ist.",
  retry: "Noch einmal versuchen",
  alarm: {
    open: "CO-Alarm drinnen!",
    title: "Alle raus. Sofort.",
    call: "Dann von draußen den Notruf wählen:",
    local: "oder die örtliche Nummer",
    outside: "Wenn alle draußen sind",
  },
  safety: {
    title: "Kohlenmonoxid tötet",
    more: "Alle Warnungen",
    brief:
      "Nur ein Ausgangspunkt. Kohlenmonoxid tötet: nur im Freien abstimmen, nie ohne CO-Melder schlafen.",
    notice:
      "Kohlenmonoxid tötet. Nur ein Ausgangspunkt, nie eine fertige Einstellung. Im Freien abstimmen, das Messgerät am Abgasrohr im Blick behalten und überall, wo Menschen schlafen, einen separaten, zertifizierten CO-Melder in Betrieb haben: nie das Messgerät vom Abgasrohr. Ein stiller Melder heißt nicht, dass kein Kohlenmonoxid da ist. Alarm, Kopfschmerzen oder Schwindel: alle raus an die frische Luft, dann Hilfe rufen.",
    notFor: "Nicht geeignet",
    not_for: [
      "zum Abstimmen in Garage, Zelt, Hütte oder einem anderen geschlossenen Raum, oder während darin jemand schläft",
      "als Ersatz für die Einstellungen des Herstellers, wo sie nicht verändert werden dürfen: Manche zugelassenen Anlagen dürfen gar nicht verändert werden",
      "um zu beurteilen, ob man die Luft gefahrlos atmen kann",
    ],
    deferTo: "Das geht vor",
    defer_to: [
      "die Anleitung des Herstellers",
      "örtliche Vorschriften und die Zulassungsregeln für Fahrzeuge und Boote",
      "zugelassene Fachbetriebe für Heizung und Elektrik",
    ],
  },
  site: {
    title: "Wo",
    place: "Ort",
    assumed: "angenommen",
    choose: "Ort wählen",
    tonight: "heute Nacht",
    placeHint: "Ort, Pass oder Hochlager",
    elevation: "Höhe",
    positionLabel: "Oder wo du bist",
    position: "Meinen Standort verwenden",
    positionNote: "Dein Standort bleibt auf diesem Gerät.",
    positionDenied:
      "Der Standort ist ausgeschaltet oder gesperrt. Stattdessen Höhe oder Ort eintippen.",
    positionWait: "Der Standort wird bestimmt …",
    noPlace: (name: string) =>
      `Kein Ort heißt „${name}“. Schreibweise prüfen oder die Höhe eintippen.`,
    similar: (name: string) =>
      `Kein Ort heißt „${name}“. Einen ähnlichen Namen wählen oder die Höhe eintippen.`,
    results: (n: number) => (n === 1 ? "1 Ort" : `${n} Orte`),
    unknownElevation: "Höhe unbekannt",
    estimate: (half: string) =>
      `Geschätzt, ±${half}. Sagt ein Schild, eine Landkarte oder das GPS etwas anderes: das eintippen.`,
    outOfRange: (lowest: string, highest: string) =>
      `Der Atlas antwortet von ${lowest} bis ${highest}.`,
    notNumber: "Bitte eine Zahl.",
  },
  air: {
    title: "Nachtluft",
    tunedTitle: "Luft beim Abstimmen",
    tuned: "Temperatur beim Abstimmen",
    temperature: "Nachttemperatur",
    temperatureShort: "Kalte Luft ist dichter: das macht so viel aus wie die Höhe.",
  },
  heater: {
    title: "Heizung",
    heat: "Heizungsgröße",
    heatOption: (kW: number) => `${kW} kW`,
    lowFan: "Lüfterdrehzahl, kleinste Leistung, U/min",
    highFan: "Lüfterdrehzahl, größte Leistung, U/min",
    fanWhy:
      "Die Größe ist die volle Leistung auf dem Typenschild. Am besten die eigenen Drehzahlen eintippen: Sonst gelten die für die Größe üblichen.",
    dose: "Kraftstoff je Takt, µL",
    doseWhy:
      "Was die Pumpe mit jedem Takt fördert. Wer es weiß, sieht auch Verbrauch und Heizleistung.",
  },
  answer: {
    title: "Startwerte",
    at: (place: string, elevation: string) => `${place}, ${elevation}`,
    elevationOnly: (elevation: string) => `auf ${elevation}`,
    or: (hz: string, rpm: string) => `oder ${hz} Hz, ${rpm} U/min`,
    certainty: { quite: "Recht sicher", fairly: "Einigermaßen sicher", unsure: "Unsicher" },
    within: (level: string, half: string) =>
      `${level} von 10 Mal liegt das Beste in diesen Spannen (±${half} %).`,
    now: (hz: string) => `jetzt ${hz}`,
    finer: "Mehr zu Luft und Heizung",
    fanAt: (rpm: string) => `Lüfter ${rpm} U/min`,
    spoken: (end: string, hz: string, level: string, lower: string, upper: string) =>
      `${end}: mit ${hz} Hertz beginnen; ${level} von 10 Mal liegt das Beste zwischen ${lower} und ${upper}.`,
    tuneHere: "Hier mit einem CO-Messgerät abstimmen",
    printCard: "Merkblatt drucken",
    onMap: "Auf der Karte wählen",
    cannot: "Diese Zahlen passen nicht zusammen. Drehzahlen und Druck prüfen.",
  },
};
