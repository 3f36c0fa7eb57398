/** Wörter der Reise. */
export const trip: typeof import("../en/trip.ts").trip = {
  add: {
    title: "Stopp hinzufügen",
    intro:
      "Wo du schläfst, der Reihe nach. Kalte Nachtluft ist dichter: das macht so viel aus wie die Höhe.",
    name: "Name",
    elevation: "Höhe",
    temperature: "Nachttemperatur",
    nights: "Nächte",
    button: "Diesen Stopp hinzufügen",
    needElevation: "Erst die Höhe eintippen.",
    full: (most) => `Eine Reise hat höchstens ${most} Stopps.`,
    byName: (n) => `Stopp ${n}`,
    file: "Oder eine Datei: GPX, GeoJSON oder CSV",
    fileHint:
      "CSV mit Kopfzeile: name, elevation_m, temperature_C, lat, lon, nights. Die Datei wird nur in diesem Browser gelesen und nicht hochgeladen. Ihre Stopps kommen ans Ende.",
    reading: "Die Datei wird gelesen …",
    added: (n) => (n === 1 ? "1 Stopp hinzugefügt." : `${n} Stopps hinzugefügt.`),
    estimated: (n) =>
      n === 1
        ? "1 Höhe ist aus der Position geschätzt."
        : `${n} Höhen sind aus den Positionen geschätzt.`,
    line: (line, reason) => `Zeile ${line}: ${reason}. Nichts wurde hinzugefügt.`,
    refused: (reason) => `${reason}. Nichts wurde hinzugefügt.`,
    noTerrain:
      "Manche Stopps haben keine Höhe, und die Dateien zum Schätzen sind nicht erreichbar. Höhen eintragen oder noch einmal versuchen, sobald wieder Netz da ist",
  },
  map: {
    open: "Oder auf der Karte wählen",
    middle: "Kartenmitte als Stopp hinzufügen",
    how: "Klicken oder tippen fügt dort einen Stopp hinzu. Mit der Tastatur: Pfeile bewegen die Karte, + und − zoomen, Enter nimmt ihre Mitte.",
    name: (lat, lon) => `${lat}; ${lon}`,
    noTerrain: "Die Dateien, aus denen die Höhe kommt, sind nicht erreichbar: die Höhe eintippen.",
  },
  list: {
    empty: "Noch kein Stopp: einen Ort suchen, eine Höhe eintippen oder eine Datei öffnen.",
    stop: (n, name) => `Stopp ${n}: ${name}`,
    guess: (temperature) => `Leer: gerechnet mit ${temperature} aus der Normatmosphäre.`,
    estimated: (half) => `Aus der Position geschätzt, ±${half}.`,
    close: "Schließen",
    earlier: "Früher",
    later: "Später",
    remove: "Entfernen",
    earlierThan: (name) => `${name} nach vorn`,
    laterThan: (name) => `${name} nach hinten`,
    tune: "Dort abstimmen",
    tuneAt: (name: string) => `Dort abstimmen: ${name}`,
    removeThis: (name) => `${name} entfernen`,
    nowAt: (name, n, of) => `${name} ist jetzt Stopp ${n} von ${of}.`,
    clear: "Neue Reise beginnen",
    bringBack: "Die letzte Reise zurückholen",
  },
  heater: {
    title: "Heizung und Nächte",
    rich: "Zu fett ab, %",
    lean: "Zu mager ab, %",
    windowWhy:
      "Wie weit das Gemisch von einer guten Abstimmung abweichen darf, bevor eine neue nötig ist. 12 % fetter und 25 % magerer sind unsere eigenen Arbeitswerte, keine gemessenen Grenzen.",
    hours: "Stunden je Nacht",
    share: "Leistung, % des Bereichs",
    shareHint: "0 ist die kleinste Leistung, 100 die größte.",
    supply: "Bordspannung",
    tank: "Kraftstofftank, L",
    battery: "Nutzbare Batterie, Ah",
    outOfRange: (least, most) => `Von ${least} bis ${most}.`,
  },
  result: {
    title: "Die Reise",
    all: "Alle Zahlen",
    kept: "Entlang der Reise gezeigt",
    oneTune: "eine Abstimmung für alle Stopps",
    each: "an jedem Stopp neu abstimmen",
    now: "deine Heizung, wie sie jetzt eingestellt ist",
    fewest: (n) => `möglichst wenige Abstimmungen: ${n}`,
    tuneOf: (n, name) => `Abstimmung von Stopp ${n}, ${name}`,
    stop: "Stopp",
    set: "Einstellen, kleinste / größte",
    guessed: "geschätzt",
    start: (end) => `Startwert, ${end}`,
    startHere: (hz) => `Startwert hier: ${hz} Hz.`,
    bandOthers: (level, band) => `${level} von 10 Heizungen: ${band} Hz.`,
    bandMine: (level, band) => `Deine Heizung, in ${level} von 10 Fällen: ${band} Hz.`,
    shift: (end) => `Abweichung, ${end}`,
    band: (lower, upper) => `${lower} bis ${upper}`,
    about: (pct) => `±${pct}`,
    shifts: (shown) => `Einstellungen und Abweichungen für: ${shown}.`,
    bands: (low, high, level) =>
      `Unter jedem Startwert, bei Lüfterdrehzahlen von ${low} und ${high} U/min: wo ${level} von 100 Heizungen liegen.`,
    bandsMine: (low, high, level) =>
      `Unter jedem Startwert, bei Lüfterdrehzahlen von ${low} und ${high} U/min: wo deine Heizung in ${level} von 100 Fällen liegt.`,
    published: (date) => `veröffentlicht am ${date}`,
    tableLabel:
      "Tabelle: Einstellungen, Abweichung des Gemischs, Kraftstoff und Batterie an jedem Stopp",
    rich: (pct) => `${pct} % fetter`,
    lean: (pct) => `${pct} % magerer`,
    none: "keine Abweichung",
    beyond: "außerhalb der Grenzen",
    tight: (room) => `knapp: ${room} % bis zur Grenze`,
    extrapolated: "in solcher Luft noch keine Abstimmungen",
    prior:
      "Noch keine Abstimmungen dieser Heizungsgröße: nur eine Schätzung aus Physik und gängiger Praxis, darum sind die Spannen breit.",
    how: "Die Abweichung vergleicht die Pumpenfrequenz, die du einstellen kannst, mit der, die am Stopp zu erwarten ist, bei gleicher Lüfterdrehzahl, in ganzen Prozent. Knapp heißt: näher an der Grenze als 3 % oder als die Unsicherheit. ± ist die Unsicherheit durch Nachtluft und Höhe (95 von 100 Fällen); dass die Auswertung selbst danebenliegen kann, kommt hinzu. Die Spannen gelten für die Startwerte: Das Minimum deiner Heizung kann überall darin liegen, die Abweichungen von Stopp zu Stopp folgen aber derselben Kurve.",
    cannot:
      "Diese Zahlen passen nicht zusammen. Lüfterdrehzahlen, Kraftstoff je Takt und Grenzen prüfen.",
  },
  plan: {
    yes: (rates) => `Eine Abstimmung reicht: ${rates} Hz.`,
    tightly: (rates) => `Eine Abstimmung reicht, aber nur knapp: ${rates} Hz.`,
    no: (n) => `Eine Abstimmung reicht nicht: ${n} nötig.`,
    notQuite: "Eine Abstimmung reicht nicht ganz.",
    room: (place, room) => `Am engsten: ${place}, ${room} % bis zur Grenze.`,
    tight: (place, room) =>
      `Knapp: ${place}, nur ${room} % bis zur Grenze. Dort mit dem Messgerät prüfen.`,
    unsure: (place, room, unsure) =>
      `Knapp: ${place}, ${room} % bis zur Grenze, und das kann um ${unsure} % danebenliegen. Eine genauere Nachttemperatur oder Höhe hilft.`,
    over: (place, shift, over) =>
      `Am weitesten daneben: ${place}, ${shift}, ${over} % über der Grenze.`,
    coarse: (hz) =>
      `Die Pumpe lässt sich nur in Schritten von ${hz} Hz einstellen, und das ist gröber als deine Grenzen: Der nächstliegende Wert gilt. Den Rest kann der Lüfter ausgleichen.`,
    changeAt: (names) => `Vor der Nacht umstellen: ${names}.`,
    tune: (n) => `Abstimmung ${n}`,
  },
  profile: {
    set: (low, high) => `Hz bei kleinster / größter Leistung; Lüfter ${low} / ${high} U/min`,
    richer: "fetter",
    leaner: "magerer",
    tap: "Einen Stopp antippen, um ihn zu ändern.",
    ends: "Linker Balken: kleinste Leistung; rechter: größte.",
    window: (rich, lean) => `Gestrichelt: deine Grenzen, ${rich} % fetter und ${lean} % magerer.`,
    change: "Senkrechte Linie: umstellen.",
    guessed: "≈: Nacht nicht bekannt, Temperatur geschätzt.",
    nights: (n) => `${n} Nächte`,
    spokenSite: (elevation, night) => `${elevation}, Nacht ${night}.`,
    spokenEnd: (end, hz, shift) => `${hz} Hz bei ${end}: ${shift}.`,
    press: "Drücken, um den Stopp zu ändern.",
  },
  nights: {
    fuelWord: "Kraftstoff",
    batteryWord: "Batterie",
    spare: (full, pct) => `von ${full}: ${pct} % übrig`,
    spareTight: (full, pct) => `von ${full}: knapp, nur ${pct} % übrig`,
    notEnough: (full) => `sind mehr als ${full}`,
    tank: {
      tightWhy:
        "Knapp, denn Heizungen unterscheiden sich um mehr als das, und eine kalte Nacht braucht mehr. Unterwegs einmal Tanken einplanen, mit ausgeschalteter und kalter Heizung.",
      ends: "Ein voller Tank reicht nicht. Spätestens hier tanken, mit ausgeschalteter und kalter Heizung:",
      short: (name) => `Ein voller Tank reicht nicht für eine Nacht in ${name}.`,
      sooner: ". Knapp: eine Nacht früher tanken",
    },
    battery: {
      tightWhy:
        "Knapp, denn Heizungen unterscheiden sich um mehr als das, und eine Batterie gibt bei Kälte weniger her. Unterwegs einmal Laden einplanen.",
      ends: "Eine volle Batterie reicht nicht. Spätestens hier laden:",
      short: (name) => `Eine volle Batterie reicht nicht für eine Nacht in ${name}.`,
      sooner: ". Knapp: eine Nacht früher laden",
    },
    count: (n) => (n === 1 ? "1 Nacht:" : `${n} Nächte:`),
    oneNight: (litres, Ah) => `Eine Nacht braucht ${litres} L und ${Ah} Ah.`,
    afterLast: (left) => `Nach der letzten Nacht sind noch ${left} übrig.`,
    afterLastTight: (left) => `Nach der letzten Nacht sind nur noch ${left} übrig: knapp.`,
    leftThen: (left) => `: dann noch ${left}`,
    refill: (name, night) => `${name}, vor der ${night}. Nacht dort`,
    refillEvery: (n) => (n === 1 ? ", dann vor jeder weiteren" : `, dann alle ${n} Nächte`),
    nightsColumn: "Nächte",
    fuelColumn: "Kraftstoff, L",
    batteryColumn: "Batterie, Ah",
    tankColumn: "Tank reicht, Nächte",
    chargeColumn: "Batterie reicht, Nächte",
    total: "Alle Nächte",
    noDose:
      "Geschätzt nach dem, was eine Heizung dieser Größe in solcher Luft üblicherweise verbraucht: Mit dem Kraftstoff je Takt (µL) wird es genauer.",
    assumes: (hours, share, current, V) =>
      `Angenommen: ${hours} h je Nacht bei ${share} % des Leistungsbereichs, mit den Startwerten jedes Stopps; ${current} A im Betrieb bei ${V} V, ein Start je Nacht; sonst nimmt nichts aus Tank oder Batterie, und nichts lädt sie unterwegs.`,
    practice: (run, start, minutes) =>
      `${run} A im Betrieb von kleinster bis größter Leistung, ${start} A beim Start: gängige Praxis, keine Quelle; ${minutes} Minuten je Start: unser eigener Wert.`,
  },
  keep: {
    title: "Mitnehmen",
    send: "Reise senden",
    link: "Link kopieren",
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
        ? "1 Stopp hat keine Position und fehlt in GPX und GeoJSON."
        : `${n} Stopps haben keine Position und fehlen in GPX und GeoJSON.`,
    kept: "Diese Reise ist in diesem Browser gespeichert.",
    notKept:
      "Dieser Browser speichert sie nicht (Speicher voll oder gesperrt): stattdessen den Link kopieren.",
    opened: (n) =>
      n === 1 ? "Aus einem Link geöffnet: 1 Stopp." : `Aus einem Link geöffnet: ${n} Stopps.`,
    openedOwn: (n) =>
      n === 1
        ? "Gerechnet ist sie mit 1 eigenen Abstimmung der Heizung, für die der Link ist."
        : `Gerechnet ist sie mit ${n} eigenen Abstimmungen der Heizung, für die der Link ist.`,
    openedAverage:
      "Sie zeigt die mittlere Antwort für eine solche Heizung, ohne eigene Abstimmungen.",
    linkRefused: (reason) => `${reason}. Unten steht die Reise, die hier gespeichert ist.`,
    back: "Zurück zur vorher gespeicherten Reise",
  },
  cautions: {
    title: "Unterwegs",
    lines: [
      "Nie tanken, solange die Heizung heiß ist oder läuft.",
      "Nach schlechten Straßen und vor der ersten Nacht die Verbindungen des Abgasrohrs, die Luftansaugung und die Kraftstoffleitungen ansehen.",
      "Sicherung und Kabel müssen so bemessen sein, wie der Hersteller es verlangt; der Start zieht am meisten Strom.",
      "Eine mitgenommene Abstimmung ist ein Anfang, keine fertige Einstellung: wo es darauf ankommt, im Freien mit dem Messgerät neu abstimmen.",
    ],
  },
  refused: {
    empty: "Die Datei ist leer",
    noText: "Die Datei ist kein Text",
    noStop: "In der Datei ist kein Stopp",
    tooMany: (n, most) => `Die Datei hat ${n} Stopps; eine Reise hat höchstens ${most}`,
    tooLarge: (MB) => `Die Datei ist größer als ${MB} MB`,
    unreadable: "Der Stopp ist nicht lesbar",
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
      "Die Datei ist JSON, aber kein GeoJSON: Nötig ist FeatureCollection, Feature oder Point",
    notFeature: (n) => `Nummer ${n} der Sammlung ist kein Feature`,
    position: "ein Punkt braucht zwei Zahlen, lon und lat",
    documentType: "In der Datei steht ein Dokumenttyp, den GPX nicht braucht",
    xml: "das ist kein lesbares XML",
    notGpx: "Die Datei ist XML, aber kein GPX",
    trackOnly:
      "Die Datei enthält nur eine Wegaufzeichnung: keinen Weg- oder Routenpunkt für einen Stopp",
    linkLong: "Der Link ist länger als jede Reise",
    linkNone: "Der Link enthält keine Reise",
    linkNewer:
      "Der Link stammt von einer neueren Version dieser Seite: Seite neu laden, dann noch einmal öffnen",
    linkDamaged: "Der Link ist beschädigt, vielleicht fehlt ein Teil: noch einmal ganz kopieren",
    linkFigures: "Der Link enthält unmögliche Zahlen: Er kann unterwegs verändert worden sein",
  },
};
