/** Wörter der Reise. */
export const trip: typeof import("../en/trip.ts").trip = {
  add: {
    title: "Halte",
    intro: "Wo geschlafen wird, der Reihe nach. Die Temperatur der Nacht zählt wie die Höhe.",
    name: "Name",
    elevation: "Höhe",
    temperature: "Nachttemperatur",
    nights: "Nächte",
    button: "Diesen Halt hinzufügen",
    needElevation: "Erst die Höhe eintippen.",
    full: (most) => `Eine Reise hat höchstens ${most} Halte.`,
    byName: (n) => `Halt ${n}`,
    file: "Oder eine Datei: GPX, GeoJSON oder CSV",
    fileHint:
      "CSV mit Kopfzeile: name, elevation_m, temperature_C, lat, lon, nights. Die Datei wird in diesem Browser gelesen und geht nirgendwohin. Ihre Halte kommen ans Ende.",
    reading: "Die Datei wird gelesen …",
    added: (n) => (n === 1 ? "1 Halt hinzugefügt." : `${n} Halte hinzugefügt.`),
    estimated: (n) =>
      n === 1
        ? "1 Höhe ist aus der Position geschätzt."
        : `${n} Höhen sind aus Positionen geschätzt.`,
    line: (line, reason) => `Zeile ${line}: ${reason}. Nichts wurde hinzugefügt.`,
    refused: (reason) => `${reason}. Nichts wurde hinzugefügt.`,
    noTerrain:
      "Manche Halte haben keine Höhe, und die Dateien zum Schätzen sind nicht erreichbar. Höhen eintragen oder mit Verbindung noch einmal versuchen",
  },
  map: {
    open: "Oder auf der Karte wählen",
    middle: "Die Mitte der Karte als Halt hinzufügen",
    how: "Klicken oder tippen fügt dort einen Halt hinzu. Mit der Tastatur: Pfeile bewegen die Karte, + und − zoomen, Enter nimmt ihre Mitte.",
    name: (lat, lon) => `${lat}; ${lon}`,
    noTerrain: "Die Dateien, aus denen die Höhe folgt, sind nicht erreichbar: Höhe eintippen.",
  },
  list: {
    title: "Halte in ihrer Reihenfolge",
    empty: "Noch kein Halt: einen Ort suchen, eine Höhe eintippen oder eine Datei mitbringen.",
    stop: (n, name) => `Halt ${n}: ${name}`,
    guess: (temperature) => `Leer gelassen: ${temperature}, geraten nach der Normatmosphäre.`,
    estimated: (half) => `Aus der Position geschätzt, auf ± ${half} bei 95 von 100 Punkten.`,
    earlier: "Früher",
    later: "Später",
    remove: "Entfernen",
    earlierThan: (name) => `${name} nach vorn`,
    laterThan: (name) => `${name} nach hinten`,
    removeThis: (name) => `${name} entfernen`,
    nowAt: (name, n, of) => `${name} ist jetzt Halt ${n} von ${of}.`,
    clear: "Neue Reise beginnen",
    bringBack: "Die letzte Reise zurückholen",
  },
  heater: {
    title: "Heizung und Nächte",
    rich: "Fenster nach fett, %",
    lean: "Fenster nach mager, %",
    windowWhy:
      "Wie weit sich das Gemisch von einer guten Abstimmung verschieben darf, bevor es eine neue braucht. 12 fett und 25 mager sind unsere eigenen Arbeitswerte, keine gemessenen Grenzen.",
    hours: "Stunden je Nacht",
    share: "Leistung, % des Bereichs",
    shareHint: "0 ist das untere Ende, 100 das obere.",
    supply: "Bordspannung",
    tank: "Kraftstofftank, L",
    outOfRange: (least, most) => `Von ${least} bis ${most}.`,
  },
  result: {
    title: "Entlang der Reise",
    kept: "Verschiebung gezeigt für",
    oneTune: "eine Abstimmung für alle Halte",
    fewest: (n) => `wenigste Abstimmungen: ${n}`,
    tuneOf: (n, name) => `Abstimmung von Halt ${n}, ${name}`,
    stop: "Halt",
    night: "Nacht",
    guessed: "geraten",
    start: (end) => `Startabstimmung, ${end}`,
    shift: (end) => `Verschiebung, ${end}`,
    fan: (fan, level) => `Lüfter ${fan} U/min; darunter ${level} von 100 Heizungen`,
    band: (lower, upper) => `${lower} bis ${upper}`,
    about: (pct) => `± ${pct}`,
    shifts: (shown) => `Verschiebungen von: ${shown}.`,
    published: (date) => `veröffentlicht am ${date}`,
    tableLabel: "Tabelle: Startabstimmung und Gemischverschiebung an jedem Halt",
    rich: (pct) => `${pct} % fett`,
    lean: (pct) => `${pct} % mager`,
    none: "keine Verschiebung",
    beyond: "außerhalb des Fensters",
    tight: (room) => `knapp: ${room} % vom Rand`,
    extrapolated: "außerhalb der Luft, in der jemand abgestimmt hat",
    prior:
      "Noch keine Abstimmungen dieser Klasse: nur Physik und übliche Praxis, mit breiten Bändern.",
    how: "Eine Verschiebung ist die der Pumpenfrequenz, wie sie sich einstellen lässt, gegen das, was die Anpassung am Halt erwartet, bei gleicher Lüfterdrehzahl, in ganzen Prozent. Knapp ist näher am Rand des Fensters als 3 % oder als das, was nicht bekannt ist. ± steht für das, was von der Luft der Nacht und der Höhe nicht bekannt ist (95 von 100); dass die Steigung der Anpassung danebenliegen kann, kommt hinzu. Die Bänder sind die der Startabstimmung: Die gute Abstimmung der eigenen Heizung kann überall darin liegen, ihre Verschiebungen von Halt zu Halt folgen aber derselben Steigung.",
    cannot: "Diese Zahlen passen nicht zusammen. Lüfterdrehzahlen, Dosis und Fenster prüfen.",
  },
  plan: {
    title: "Reicht eine Abstimmung?",
    yes: (rich, lean) =>
      `Ja: Eine Abstimmung bleibt an jedem Halt innerhalb von ${rich} % fett und ${lean} % mager.`,
    no: (rich, lean) =>
      `Nein: Keine einzelne Abstimmung bleibt an jedem Halt innerhalb von ${rich} % fett und ${lean} % mager.`,
    tightly: (rich, lean) =>
      `Ja, aber nur knapp: Eine Abstimmung bleibt an jedem Halt innerhalb von ${rich} % fett und ${lean} % mager.`,
    oneTitle: "Die eine Abstimmung",
    leastTitle: "Die eine Abstimmung, die am wenigsten danebenliegt",
    room: (place, shift, room) =>
      `Am wenigsten Spielraum: ${place}, ${shift}, ${room} % vom Rand des Fensters.`,
    tight: (place, shift, room) =>
      `Knapp: ${place}, ${shift}, nur ${room} % vom Rand des Fensters. Dort mit dem Messgerät prüfen.`,
    unsure: (place, shift, room, unsure) =>
      `Knapp: ${place}, ${shift}, ${room} % vom Rand des Fensters, und diese Verschiebung kann um ${unsure} % danebenliegen. Eine genauere Nachttemperatur oder Höhe sagt mehr.`,
    over: (place, shift, over) =>
      `Am weitesten daneben: ${place}, ${shift}, ${over} % außerhalb des Fensters.`,
    coarse: (hz) =>
      `Hier sind die Schritte der Pumpe von ${hz} Hz gröber als das Fenster: Der nächste wird genommen. Den Rest kann der Lüfter ausgleichen.`,
    where: (stop, end) => `${stop}, ${end}`,
    fewestTitle: (n) =>
      n === 1 ? "Die wenigsten Abstimmungen: eine" : `Die wenigsten Abstimmungen: ${n}`,
    legs: (first, last) => (first === last ? first : `${first} bis ${last}`),
    changeAt: (name) => `In ${name} vor der Nacht wechseln.`,
    tune: (n) => `Abstimmung ${n}`,
  },
  profile: {
    title: "Höhe und Verschiebung",
    label: (shown) => `Höhe jedes Halts und die Gemischverschiebung dort mit: ${shown}`,
    rich: "fett: schräge Linien, nach oben",
    lean: "mager: Punkte, nach unten",
    ends: "Linker Balken: unteres Ende; rechter: oberes Ende.",
    scrollLabel: "Zeichnung: Höhe und Verschiebung entlang der Reise",
    window: "Ränder des Fensters",
    change: "Wechsel",
  },
  nights: {
    title: "Kraftstoff und Batterie für die Nächte",
    fuel: (litres) => `${litres} L Diesel`,
    battery: (Ah, V) => `${Ah} Ah bei ${V} V.`,
    count: (n) => (n === 1 ? "1 Nacht:" : `${n} Nächte:`),
    oneNight: (litres, Ah) => `Eine Nacht nimmt ${litres} L und ${Ah} Ah.`,
    tankLasts: (litres, left, pct) =>
      `Ein voller Tank von ${litres} L reicht für alle, ${left} L (${pct} %) bleiben übrig.`,
    tankTight: (litres, left, pct) =>
      `Ein voller Tank von ${litres} L reicht nur knapp für alle: ${left} L (${pct} %) bleiben übrig.`,
    tightWhy:
      "Knapp: Heizungen unterscheiden sich um mehr, und eine kalte Nacht braucht mehr. Unterwegs einmal Nachfüllen einplanen, Heizung aus und kalt.",
    afterLast: (left) => `Nach der letzten Nacht sind noch ${left} L übrig.`,
    afterLastTight: (left) => `Nach der letzten Nacht sind nur noch ${left} L übrig: knapp.`,
    leftThen: (left) => `: dann noch ${left} L`,
    fillEarlier: ". Knapp: eine Nacht früher füllen",
    tankEnds: (litres) =>
      `Ein voller Tank von ${litres} L reicht nicht für alle. Spätestens hier füllen, Heizung aus und kalt:`,
    tankShort: (litres, name) => `Ein Tank von ${litres} L reicht nicht für eine Nacht in ${name}.`,
    refill: (name, night) => `${name}, vor der ${night}. Nacht dort`,
    refillEvery: (n) => (n === 1 ? ", dann vor jeder" : `, dann alle ${n} Nächte`),
    noTank: "Mit der Größe des Tanks stünde hier, wie viele Nächte er reicht und wo zu füllen ist.",
    perNight: "Halt für Halt",
    nightsColumn: "Nächte",
    fuelColumn: "Kraftstoff, L",
    batteryColumn: "Batterie, Ah",
    tankColumn: "Ein Tank reicht, Nächte",
    total: "Alle Nächte",
    noDose:
      "Kraftstoff nach dem, was die Leistungsklasse in dieser Luft üblicherweise verbraucht: Mit der Dosis (µL je Pumpenhub) wäre es genauer.",
    assumes: (hours, share, current, V) =>
      `Angenommen: ${hours} h je Nacht bei ${share} % des Leistungsbereichs, mit der Startabstimmung jedes Halts; ${current} A im Lauf bei ${V} V, ein Start je Nacht; nichts sonst nimmt aus dem Tank.`,
    practice: (run, start, minutes) =>
      `${run} A im Lauf vom unteren Ende zum oberen, ${start} A beim Start: übliche Praxis, keine Quelle; ${minutes} Minuten je Start: eigener Wert.`,
    tableLabel: "Tabelle: Nächte, Kraftstoff und Batterie je Halt",
  },
  keep: {
    title: "Mitnehmen",
    link: "Link kopieren",
    copied: "Der Link ist kopiert.",
    copyByHand: "Von hier kopieren:",
    linkLabel: "Link, der diese Reise enthält",
    linkNote:
      "Der Link enthält die ganze Reise, auch Namen und Positionen. Er wird nicht an den Atlas geschickt; wer ihn bekommt, kann sie lesen.",
    print: "Drucken",
    csv: "Als CSV herunterladen",
    json: "Als JSON herunterladen",
    gpx: "Als GPX herunterladen",
    geojson: "Als GeoJSON herunterladen",
    unplaced: (n) =>
      n === 1
        ? "1 Halt hat keine Position: GPX und GeoJSON lassen ihn aus."
        : `${n} Halte haben keine Position: GPX und GeoJSON lassen sie aus.`,
    kept: "Diese Reise ist in diesem Browser aufbewahrt.",
    notKept:
      "Dieser Browser bewahrt sie nicht auf (Speicher voll oder verboten): stattdessen den Link kopieren.",
    opened: (n) =>
      n === 1 ? "Aus einem Link geöffnet: 1 Halt." : `Aus einem Link geöffnet: ${n} Halte.`,
    linkRefused: (reason) => `${reason}. Die Reise unten ist die hier aufbewahrte.`,
    back: "Zurück zur vorher aufbewahrten Reise",
  },
  cautions: {
    title: "Unterwegs",
    lines: [
      "Nie nachtanken, solange die Heizung heiß ist oder läuft.",
      "Nach schlechten Straßen Abgasverbindungen, Luftansaugung und Kraftstoffleitungen ansehen, jeweils vor der ersten Nacht.",
      "Sicherung und Kabel müssen so bemessen sein, wie der Hersteller es verlangt; der Start zieht am meisten.",
      "Eine mitgenommene Abstimmung ist ein Anfang, keine Einstellung: wo es darauf ankommt, im Freien mit Messgerät neu abstimmen.",
    ],
  },
  refused: {
    empty: "Die Datei ist leer",
    noText: "Die Datei ist kein Text",
    noStop: "In der Datei ist kein Halt",
    tooMany: (n, most) => `Die Datei hat ${n} Halte; eine Reise hat höchstens ${most}`,
    tooLarge: (MB) => `Die Datei ist größer als ${MB} MB`,
    unreadable: "Der Halt ist nicht lesbar",
    pair: "lat und lon gehören zusammen: eins davon fehlt",
    nowhere: "weder Höhe noch Position",
    mustBe: (name, least, most, unit) =>
      `${name} muss eine Zahl von ${least} bis ${most}${unit} sein`,
    notNumber: (name, text) => `${name} ist keine Zahl: „${text}“`,
    csvHead:
      "die Kopfzeile muss die Spalten elevation_m oder lat und lon nennen (name und temperature_C nach Belieben)",
    csvLine: "das ist nicht als CSV lesbar",
    csvLength: "sie hat mehr oder weniger Felder als die Kopfzeile",
    csvOpen: "ein Anführungszeichen wird geöffnet und nie geschlossen",
    csvAfterQuote: "auf ein schließendes Anführungszeichen folgt Text",
    csvMiddleQuote: "mitten in einem Feld steht ein Anführungszeichen",
    json: "das ist kein lesbares JSON",
    notGeoJson:
      "Die Datei ist JSON, aber kein GeoJSON: FeatureCollection, Feature oder Point wird gebraucht",
    notFeature: (n) => `Nummer ${n} der Sammlung ist kein Feature`,
    position: "ein Punkt braucht zwei Zahlen, lon und lat",
    documentType: "Die Datei erklärt einen Dokumenttyp, den GPX nicht braucht",
    xml: "das ist kein lesbares XML",
    notGpx: "Die Datei ist XML, aber kein GPX",
    trackOnly: "Die Datei enthält nur eine Aufzeichnung: keinen Weg- oder Routenpunkt zum Halten",
    linkLong: "Der Link ist länger als jede Reise",
    linkNone: "Der Link enthält keine Reise",
    linkNewer:
      "Der Link stammt von einer neueren Fassung dieser Seite: Seite neu laden, dann noch einmal öffnen",
    linkDamaged: "Der Link ist beschädigt, vielleicht fehlt ein Teil: noch einmal ganz kopieren",
    linkFigures: "Der Link enthält unmögliche Zahlen: Er kann unterwegs verändert worden sein",
  },
};
