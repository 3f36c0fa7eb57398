/** The page itself and its first views, in German. */
export const t: typeof import("../en/app.ts").t = {
  name: "Hypsotune",
  tagline: "Startabstimmungen für Diesel-Luftheizungen",
  skip: "Zum Inhalt springen",
  language: "Sprache",
  demo: "Erfundene Daten: Keine Abstimmung hier ist echt.",
  views: {
    atlas: "Atlas",
    trip: "Reise",
    onsite: "Vor Ort",
    card: "Karte",
    logbook: "Logbuch",
    share: "Teilen",
    scaling: "Verlauf",
    data: "Daten",
  },
  low: "Unteres Ende",
  high: "Oberes Ende",
  endWord: { low: "unteres Ende", high: "oberes Ende" },
  unit: "Einheit",
  rpm: "U/min",
  loading: "Der Atlas wird gefragt …",
  partMissing:
    "Dieser Teil der Seite konnte nicht geladen werden. Bei bestehender Verbindung die Seite neu laden.",
  unreachable:
    "Der Atlas ist nicht erreichbar. Die Zahlen beruhen auf der Anpassung, die dieser Browser aufbewahrt hat.",
  notReached: "Der Atlas ist nicht erreichbar. Verbindung prüfen und noch einmal versuchen.",
  noFit:
    "Der Atlas ist nicht erreichbar, und dieser Browser hat noch keine Anpassung aufbewahrt. Mit Verbindung noch einmal versuchen.",
  retry: "Noch einmal",
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
      "Nur ein Ausgangspunkt. Kohlenmonoxid tötet: im Freien abstimmen, und wo Menschen schlafen, muss ein Melder arbeiten.",
    notice:
      "Nur ein Ausgangspunkt, nie eine fertige Einstellung. Kohlenmonoxid tötet. Im Freien abstimmen, das Messgerät am Auspuff beobachten, und überall, wo Menschen schlafen, einen eigenen zugelassenen Kohlenmonoxidmelder in Betrieb haben: nie das Messgerät vom Auspuff. Ein stummer Melder heißt nicht, dass keines da ist. Alarm, Kopfschmerz oder Schwindel: alle hinaus an die frische Luft, dann Hilfe rufen.",
    notFor: "Nicht geeignet",
    not_for: [
      "zum Abstimmen in Garage, Zelt, Kabine oder einem anderen geschlossenen Raum, oder während darin jemand schläft",
      "als Ersatz für die Einstellungen des Herstellers, wo sie nicht verändert werden dürfen: Manche zugelassenen Anlagen dürfen gar nicht verändert werden",
      "um zu beurteilen, ob Luft gefahrlos zu atmen ist",
    ],
    deferTo: "Das geht vor",
    defer_to: [
      "die Anleitung des Herstellers",
      "örtliche Vorschriften und die Zulassungsregeln für Fahrzeuge und Boote",
      "Fachbetriebe für Heizung und Elektrik",
    ],
  },
  site: {
    title: "Wo",
    place: "Ort",
    placeHint: "Ort, Pass oder Hochlager",
    elevation: "Höhe",
    positionLabel: "Oder der Standort",
    position: "Meinen Standort nehmen",
    positionNote: "Der Standort bleibt auf diesem Gerät.",
    positionDenied: "Dieses Gerät verrät seinen Standort nicht. Höhe oder Ort eintippen.",
    positionWait: "Der Standort wird bestimmt …",
    noPlace: (name: string) =>
      `Kein Ort namens „${name}“. Schreibweise prüfen oder die Höhe eintippen.`,
    similar: (name: string) =>
      `Kein Ort namens „${name}“. Einen ähnlichen Namen wählen oder die Höhe eintippen.`,
    results: (n: number) => (n === 1 ? "1 Ort" : `${n} Orte`),
    unknownElevation: "Höhe unbekannt",
    estimate: (half: string) =>
      `Geschätzt, bei 95 von 100 solchen Punkten auf ± ${half} genau. Ein Schild, eine Karte oder das GPS eines Telefons weiß es besser: eintippen.`,
    outOfRange: (lowest: string, highest: string) =>
      `Der Atlas antwortet von ${lowest} bis ${highest}.`,
    notNumber: "Bitte eine Zahl.",
  },
  air: {
    title: "Nachtluft",
    tunedTitle: "Luft beim Abstimmen",
    tuned: "Temperatur beim Abstimmen",
    temperature: "Nachttemperatur",
    temperatureShort: "Zählt so viel wie die Höhe.",
    temperatureWhy:
      "Sie zählt so viel wie die Höhe: −20 gegen +20 °C sind 16 % Dichte, so viel wie 1.500 m. Bleibt sie leer, gilt die Normatmosphäre, und die Bänder werden breiter.",
    pressure: "Luftdruck",
    pressureKind: "Dieser Druck ist",
    station: "am Ort gemessen",
    qnh: "auf Meereshöhe bezogen (QNH)",
    pressureWhy:
      "Den Druck am Ort zeigt ein Barometer, wo man steht. Wetterberichte nennen den auf Meereshöhe bezogenen (QNH): Beide zu verwechseln kostet auf 1.700 m über 20 %.",
    looksQnh: (standard: string) =>
      `In dieser Höhe zeigt ein Barometer etwa ${standard}. Ist das der auf Meereshöhe bezogene Druck? Dann QNH wählen.`,
    humidity: "Relative Feuchte, %",
  },
  heater: {
    title: "Heizung",
    heat: "Leistungsklasse",
    heatOption: (kW: number) => `${kW} kW`,
    lowFan: "Lüfterdrehzahl, unteres Ende, U/min",
    highFan: "Lüfterdrehzahl, oberes Ende, U/min",
    fanWhy:
      "Die Leistungsklasse ist die volle Leistung auf dem Typenschild. Bleiben die Drehzahlen leer, gelten die üblichen der Klasse: eigene sind besser.",
    dose: "Dosis, µL je Takt",
    doseWhy: "Kraftstoff je Pumpentakt, falls bekannt: ergibt Verbrauch und Leistung.",
  },
  answer: {
    title: "Startabstimmung",
    at: (place: string, elevation: string) => `${place}, ${elevation}`,
    elevationOnly: (elevation: string) => `auf ${elevation}`,
    air: (density: string, ratio: string, altitude: string) =>
      `Luft ${density} kg/m³, ${ratio} der Norm auf Meereshöhe: wie ${altitude} in der Normatmosphäre.`,
    assumed: { temperature: "Temperatur", pressure: "Druck", humidity: "Feuchte" },
    assumes: (what: string) => `Aus der Normatmosphäre oder üblichen Werten angenommen: ${what}.`,
    fanAt: (rpm: string) => `Lüfter mit ${rpm} U/min`,
    exact: (hz: string) => `genau ${hz} Hz`,
    mean: "Mittlere Abstimmung",
    meanBand: (level: string) => `Mittel, zu ${level} % sicher`,
    heaters: (level: string) => `${level} von 100 Heizungen`,
    range: (lower: string, upper: string) => `${lower} bis ${upper} Hz`,
    spoken: (end: string, hz: string, level: string, lower: string, upper: string) =>
      `${end}: mit ${hz} Hertz beginnen; ${level} von 100 Heizungen liegen zwischen ${lower} und ${upper}.`,
    burn: (litres: string, kW: string) =>
      `${litres} L/h, etwa ${kW} kW in den Raum (80 % Wirkungsgrad angenommen)`,
    waysTitle: "Zwei Wege dorthin",
    way: "Weg",
    heatLeft: "Wärme, gegen Meereshöhe",
    keepFan: "Lüfter lassen, Pumpe senken",
    keepHeat: "Wärme halten, Lüfter anheben",
    fanShort: (limit: string) =>
      `Der Lüfter endet bei etwa ${limit} U/min: Die volle Wärme ist hier nicht zu erreichen.`,
    cannot: "Diese Zahlen passen nicht zusammen. Drehzahlen und Druck prüfen.",
  },
  basis: {
    title: "Worauf das beruht",
    tunes: (tunes: string, contributors: string, kW: string) =>
      `${tunes} Abstimmungen von ${contributors} Beitragenden der Klasse ${kW} kW.`,
    prior: (kW: string) =>
      `Noch keine Abstimmungen der Klasse ${kW} kW: Das sind allein Physik und gängige Praxis, und die Bänder sind breit.`,
    range: (from: string, to: string) => `Ihre Luft: ${from} bis ${to} kg/m³.`,
    extrapolated:
      "Außerhalb der Luft, in der je abgestimmt wurde: hochgerechnet. Den Bändern hier weniger trauen.",
    inside: "Diese Luft liegt darin.",
    fit: (version: string, age: string) => `Anpassung ${version}, ${age}.`,
    priorFit: "Noch keine Anpassung veröffentlicht.",
    ages: {
      now: "eben veröffentlicht",
      minutes: (n: number) => `${n} min alt`,
      hours: (n: number) => `${n} h alt`,
      days: (n: number) => `${n} Tage alt`,
    },
  },
};
