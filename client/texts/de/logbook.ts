/** The Logbook view, in German. */
export const logbookWords: typeof import("../en/logbook.ts").logbookWords = {
  title: "Logbuch",
  intro:
    "Deine Heizungen und was du mit ihnen gemacht hast. Alles bleibt in diesem Browser: Nichts davon wird gesendet, außer du teilst eine Abstimmung.",
  empty:
    "Noch keine Heizung. Deine anlegen, dann Abstimmungen und Reinigungen eintragen, oder eine exportierte Datei einlesen.",
  lost: (n: number) =>
    `Dieser Browser hat seinen Speicher geleert: ${n === 1 ? "1 Eintrag ist" : `${n} Einträge sind`} weg. Den letzten Export unten wieder einlesen.`,
  lostUnderstood: "Verstanden",
  mayWipe: "Ein Browser kann seinen Speicher leeren. Ab und zu exportieren.",
  store: {
    forbidden:
      "Dieser Browser verbietet, hier Daten zu speichern (ein privates Fenster oder gesperrte Websitedaten): Das Logbuch kann nicht gespeichert werden. Speicher für diese Seite erlauben oder ein anderes Fenster verwenden.",
    full: "Dieser Browser hat keinen Platz mehr: Es wurde nichts gespeichert und nichts geändert. Platz schaffen oder Fotos entfernen, dann noch einmal versuchen.",
  },
  heater: {
    title: "Heizungen",
    choose: "Heizung",
    add: "Heizung anlegen",
    edit: "Diese Heizung ändern",
    remove: "Diese Heizung entfernen",
    removeSure: (n: number) =>
      n === 1 ? "Mit ihrem Eintrag entfernen" : `Mit ihren ${n} Einträgen entfernen`,
    removed: (name: string) => `${name} ist entfernt.`,
    name: "Wie du sie nennst",
    tank: "Tank, L (freiwillig)",
    dose: "Kraftstoff je Takt, µL (freiwillig)",
    lowFan: "Lüfterdrehzahl, kleinste Leistung, U/min (freiwillig)",
    highFan: "Lüfterdrehzahl, größte Leistung, U/min (freiwillig)",
    supply: "Bordspannung, V (freiwillig)",
    hours: "Betriebsstunden bisher (freiwillig)",
    line: (kW: string) => `${kW} kW`,
    save: "Heizung speichern",
  },
  kinds: { tune: "Abstimmung", cleaning: "Reinigung", note: "Notiz" },
  entry: {
    title: "Einträge",
    none: "Noch kein Eintrag zu dieser Heizung.",
    add: {
      tune: "Abstimmung eintragen",
      cleaning: "Reinigung eintragen",
      note: "Notiz schreiben",
    },
    newTitle: { tune: "Eine Abstimmung", cleaning: "Eine Reinigung", note: "Eine Notiz" },
    at: "Datum und Uhrzeit",
    hours: "Stand des Betriebsstundenzählers (freiwillig)",
    hoursWhy: "Daran zeigt sich, wie sich die Heizung mit der Zeit verändert.",
    fuel: "Kraftstoff seit dem letzten Eintrag, L (freiwillig)",
    notes: "Notizen (freiwillig)",
    photo: "Foto (freiwillig)",
    photoHint: "Wird verkleinert; was die Kamera über Ort und Gerät hineinschreibt, wird entfernt.",
    photoDrop: "Foto entfernen",
    photoBad: "Diese Datei ist kein lesbares Bild.",
    photoAlt: (when: string) => `Foto zum Eintrag vom ${when}`,
    site: "Wo",
    meter: "Messgerät",
    meterWhy: "CO wird nur mit demselben Messgerät an derselben Stelle verglichen.",
    meterName: "Wie du es nennst (freiwillig)",
    reading: "Das Messgerät zeigt",
    readings: {
      co_ppm: "einen Wert",
      co_below_ppm: "nichts: zu wenig CO",
      co_above_ppm: "Anschlag: zu viel CO",
    },
    readingOf: {
      co_ppm: "Niedrigster CO-Wert, ppm",
      co_below_ppm: "Kleinster Wert, den es anzeigt, ppm",
      co_above_ppm: "Größter Wert, den es anzeigt, ppm",
    },
    save: "Eintrag speichern",
    cancel: "Abbrechen",
    edit: "Ändern",
    remove: "Entfernen",
    editThis: (what: string) => `Ändern: ${what}`,
    removeThis: (what: string) => `Entfernen: ${what}`,
    removed: (what: string) => `${what} ist entfernt.`,
    undo: "Rückgängig",
    undone: "Ist wieder da.",
    kept: "In diesem Browser gespeichert.",
    fix: "Bitte die markierten Felder prüfen.",
    looks: "Das sieht vertippt aus",
    anyway: "Du kannst es so speichern: Antworten lassen es weg, bis es berichtigt ist.",
    saveAsIs: "So speichern",
    keptAside: "Gespeichert, aber Antworten lassen es weg: Es sieht vertippt aus.",
    setTo: (hz: string, rpm: string) => `${hz} Hz, ${rpm} U/min`,
    power: (setting: string) => `eingestellte Leistung ${setting}`,
    swept: (hz: string, lower: string, upper: string) =>
      `Minimum bei ${hz} Hz, zwischen ${lower} und ${upper} Hz`,
    density: (density: string) => `Luft ${density} kg/m³`,
    atHours: (hours: string) => `bei ${hours} h`,
    fuelLine: (litres: string) => `${litres} L seit dem letzten Eintrag`,
    meterLine: (kind: string, distance: string) => `${kind}, ${distance} m vom Abgasrohr`,
  },
  check: {
    missing: "Bitte ausfüllen.",
    number: "muss eine Zahl sein",
    between: (least: string, most: string) => `muss zwischen ${least} und ${most} liegen`,
    classStep: "muss in Schritten von 0,5 kW sein",
    when: "muss Datum und Uhrzeit sein wie 2026-11-05T20:30:00Z",
    oneReading:
      "eine der drei Angaben fehlt: der Messwert oder der kleinste oder größte Wert, den das Messgerät anzeigt",
    oneReadingOnly: "nur eine der drei Angaben ist möglich",
    pair: "Breite und Länge gehören zusammen",
    onePressure: "Luftdruck am Ort oder auf Meereshöhe bezogen, nicht beide",
    bothEnds: "Zu einer Abstimmung gehören ein Ort, die kleinste und die größte Leistung.",
    unknown: "ist hier nicht bekannt: vertippt oder aus einer neueren Version",
    text: "muss Text sein und nicht zu lang",
    choice: "ist keine der Möglichkeiten",
    photo: "muss eine Data-URL eines Bildes in JPEG, PNG oder WebP von höchstens 2 MB sein",
  },
  share: {
    share: "Diese Abstimmung teilen",
    shareThis: (what: string) => `Diese Abstimmung teilen: ${what}`,
    what: (elevation: string) =>
      `Gesendet werden: Heizung, Luft, beide Einstellungen mit ihrem CO-Wert und wie du darauf gekommen bist, Messgerät, Monat und ${elevation}; vom Standort nur die Mitte der Kartenzelle. Nicht gesendet werden: Name des Ortes, Datum, Notizen, Foto, Stunden.`,
    cannot:
      "Das Messgerät war am Anschlag, ein CO-Wert fehlt also: Diese Abstimmung lässt sich nicht teilen.",
    looks:
      "Das sieht vertippt aus. Den Eintrag ändern oder ihn trotzdem so senden: Dann wird er zurückgehalten.",
    cancel: "Nicht teilen",
    shared: "Geteilt",
    waits: "Wartet aufs Senden; das geschieht von selbst, einmal, sobald der Atlas erreichbar ist.",
    gone: "Sie sollte geteilt werden, wartet aber nicht und hat in diesem Browser keinen Beleg: noch einmal teilen.",
    discard: "Doch nicht senden",
    revise: "Geteilte Abstimmung berichtigen",
    revised: (verdict: string) => `Berichtigt: ${verdict}.`,
    arrived: (verdict: string) => `Angekommen: ${verdict}.`,
    receiptNotKept: "Der Beleg ist beim Eintrag gespeichert.",
    notThere: "Der Atlas hat diese Abstimmung nicht mehr: Der Eintrag gilt nicht mehr als geteilt.",
    openShare: "Belege und mehr stehen unter „Teilen“.",
  },
  ownSteps: {
    title: "Was jede eigene Abstimmung gebracht hat",
    means:
      "So weit liegt die beste Einstellung 8 von 10 Mal höchstens von der Antwort: vor jeder eigenen Abstimmung und nach jeder, dort, wo die neueste gefunden wurde.",
    list: "Eigene Abstimmungen, die älteste zuerst",
    columns: ["Nach der Abstimmung vom", "8 von 10 Mal", "Änderung"],
    before: "noch keine",
    average: "mittlere Heizung",
    narrower: (points: string) => `um ${points} Punkte schmaler`,
    wider: (points: string) => `um ${points} Punkte breiter: passt schlecht zu den anderen`,
    same: "keine Änderung",
    aside: "zählt nicht: siehe Start",
  },
  drift: {
    picture: {
      end: "Gezeigte Leistung",
      none: "Sobald mindestens zwei Abstimmungen Betriebsstunden (oder Kraftstoff) nennen, ist hier ein Bild.",
      mixture: "Gemisch",
      mixtureLabel: (end: string) => `Diagramm: Gemisch bei ${end} über den Betrieb der Heizung.`,
      mixtureAxis: "Fetter (+) oder magerer (−) als die erste Abstimmung, %",
      co: "Kohlenmonoxid",
      coLabel: (end: string) => `Diagramm: CO bei ${end} über den Betrieb der Heizung.`,
      coAxis: "Niedrigster CO-Wert, ppm",
      axis: { hours: "Betriebsstunden", fuel_L: "Kraftstoff seit der letzten Reinigung, L" },
      read: "Abstimmung für Abstimmung",
      same: "wie die erste Abstimmung.",
      richer: (pct: string) => `${pct} % fetter als die erste Abstimmung.`,
      leaner: (pct: string) => `${pct} % magerer als die erste Abstimmung.`,
      apart: "Mit dem neuesten nicht vergleichbar.",
      means:
        "Gemisch: Pumpenfrequenz je Lüfterdrehzahl, ohne das, was die Luft verlangt. CO: Volle Punkte sind mit dem neuesten Messwert vergleichbar, Ringe nicht (anderes Messgerät, andere Stelle, anderes Gemisch oder vor einer Reinigung), Dreiecke liegen außerhalb der Anzeige.",
      line: "Die Linie ist der Trend durch die vollen Punkte; ob er etwas bedeutet, steht in den Sätzen darüber.",
      cleaning: "Gestrichelt: gereinigt.",
      leftOut: (n: number) =>
        n === 1
          ? "1 Abstimmung ohne Betriebsstunden fehlt."
          : `${n} Abstimmungen ohne Betriebsstunden fehlen.`,
    },
    title: "Hat sich die Heizung verändert?",
    howTitle: "Woran sich das zeigt",
    how: "Einstellungen werden über die Luftdichte hinweg mit denen derselben Heizung verglichen; CO nur bei gleichem Gemisch, mit demselben Messgerät an derselben Stelle und seit der letzten Reinigung. Dass nach jedem Eintrag nachgesehen wird, ist eingerechnet: Auch ohne Veränderung erscheint ein solcher Satz in weniger als 5 von 100 Wintern. Die Spannen gelten in 95 von 100 Fällen, wie oft auch nachgesehen wird.",
    none: "Dazu lässt sich noch nichts sagen: Nötig sind mehrere Abstimmungen seit der letzten Reinigung, mit Stunden (oder Kraftstoff) und Messgerät.",
    co: (from: string, to: string, amount: string) =>
      `Dein bester CO-Wert bei diesem Gemisch stieg in ${amount} von ${from} auf ${to} ppm: Ruß oder eine verstopfte Luftansaugung ist wahrscheinlicher als die Luft.`,
    coQuiet: (n: number, amount: string) =>
      `${n} vergleichbare Messwerte in ${amount}: kein deutlicher Anstieg von CO.`,
    change: (factor: string, lower: string, upper: string) =>
      `Veränderung: auf das ${factor}-Fache; zwischen dem ${lower}- und dem ${upper}-Fachen.`,
    changeOpen: (factor: string) =>
      `Veränderung bisher: auf das ${factor}-Fache; zu wenige Messwerte für eine Spanne.`,
    richer: (pct: string, amount: string) =>
      `Bei gleicher Luft stieg deine beste Pumpenfrequenz in ${amount} um ${pct} %: Etwas anderes als die Luft hat sich verändert.`,
    leaner: (pct: string, amount: string) =>
      `Bei gleicher Luft sank deine beste Pumpenfrequenz in ${amount} um ${pct} %: Es kommt weniger Luft hinein, oder etwas anderes hat sich verändert.`,
    mixtureQuiet: (n: number, amount: string) =>
      `${n} Abstimmungen in ${amount}: keine deutliche Veränderung des besten Gemischs.`,
    mixtureInterval: (lower: string, upper: string) => `Zwischen ${lower} und ${upper} %.`,
    amount: {
      hours: (n: string) => `${n} Stunden`,
      fuel_L: (n: string) => `${n} L Kraftstoff`,
    },
    floor: (n: number) =>
      n === 1
        ? "1 Messwert lag unter dem kleinsten Wert des Messgeräts: Er zählt hier nicht, und ein Anstieg zeigt sich erst später."
        : `${n} Messwerte lagen unter dem kleinsten Wert des Messgeräts: Sie zählen hier nicht, und ein Anstieg zeigt sich erst später.`,
    ceiling: (n: number) =>
      n === 1
        ? "1 Messwert lag über dem größten Wert des Messgeräts: Er zählt hier nicht."
        : `${n} Messwerte lagen über dem größten Wert des Messgeräts: Sie zählen hier nicht.`,
    risen: (ppm: string, floor: string) =>
      `Das Messgerät zeigt jetzt ${ppm} ppm, wo es vorher nichts zeigte (unter ${floor}). Ein einzelner Messwert beweist noch nichts: noch einmal ablesen.`,
    noMeter: (n: number) =>
      n === 1
        ? "Bei 1 Abstimmung fehlt das Messgerät oder sein Abstand: Ihr CO-Wert wird nicht verglichen."
        : `Bei ${n} Abstimmungen fehlt das Messgerät oder sein Abstand: Ihre CO-Werte werden nicht verglichen.`,
    stepsTitle: "Übliche nächste Schritte, nach der Anleitung des Herstellers",
    steps: [
      "Die Luftansaugung ansehen: Filter, Schlauch, Nester, Schnee, Laub.",
      "Das Abgasrohr ansehen: geknickt oder durchhängend, Wasser an einer tiefen Stelle, Ruß an der Mündung, dichte Verbindungen.",
      "Die Heizung im Freien eine Weile mit voller Leistung laufen lassen, wenn die Anleitung es vorsieht.",
      "Sieb, Glühkerze und Brenner: nach der Anleitung des Herstellers oder vom Fachbetrieb prüfen, reinigen oder tauschen lassen.",
      "Die Reinigung eintragen, damit der Vergleich neu beginnt.",
    ],
  },
  supply: {
    title: "Kraftstoff und Batterie für heute Nacht",
    elevation: "Höhe heute Nacht",
    hours: "Stunden",
    share: "Leistung, % des Bereichs",
    fuel: (litres: string, hours: string) => `${litres} L für ${hours} h`,
    heat: (kW: string) => `etwa ${kW} kW in den Raum`,
    tank: (hours: string) => `Ein voller Tank reicht ${hours} h.`,
    noTank: "Mit der Größe des Tanks stünde hier, wie lange er reicht.",
    battery: (at12: string, at24: string) => `${at12} Ah bei 12 V oder ${at24} Ah bei 24 V`,
    starts: "Jeder Start zieht 8–12 A bei 12 V oder 4–6 A bei 24 V.",
    logged: (day: string, low: string, high: string) =>
      `Verbrauch aus deiner Abstimmung vom ${day}, ${low} und ${high} Hz, und dem Kraftstoff je Takt dieser Heizung.`,
    retuned: (low: string, high: string, litres: string) =>
      `Auf die Luft dieser Nacht eingestellt, etwa ${low} und ${high} Hz, wären es ${litres} L.`,
    dose: "Verbrauch aus den Startwerten für die Luft dieser Nacht und deinem Kraftstoff je Takt.",
    class:
      "Geschätzt nach dem, was eine Heizung dieser Größe in solcher Luft üblicherweise verbraucht: Mit dem Kraftstoff je Takt wird es genauer.",
    assumes: (minutes: number) =>
      `Angenommen: 0,6 A bei kleinster bis 3,5 A bei größter Leistung an 12 V, 8–12 A beim Start (gängige Praxis, keine Quelle) von ${minutes} Minuten (unser eigener Wert); 9,9 kWh je Liter, davon 80 % in den Raum; gleichmäßige Leistung.`,
    cannot: "Diese Zahlen passen nicht zusammen. Höhe, Stunden und Leistung prüfen.",
  },
  files: {
    title: "Export und Import",
    json: "Alles exportieren (JSON, mit Fotos)",
    csv: "Als CSV exportieren, ohne Fotos",
    note: "Die Dateien enthalten deine Orte und die Belege geteilter Abstimmungen: Wer einen Beleg hat, kann die Abstimmung zurückziehen. Behalte sie für dich.",
    bring: "Eine Datei einlesen: JSON oder CSV",
    bringHint:
      "Was schon da ist, bleibt; gibt es einen Eintrag zweimal, gilt der zuletzt geänderte.",
    brought: (added: number, changed: number, same: number) =>
      `${added} neu, ${changed} geändert, ${same} unverändert.`,
    refused: (reason: string) => `${reason}. Nichts wurde übernommen.`,
    line: (line: number, reason: string) => `Zeile ${line}: ${reason}. Nichts wurde übernommen.`,
    empty: "Die Datei ist leer",
    large: (MB: number) => `Die Datei ist größer als ${MB} MB`,
    notJson: "das ist kein lesbares JSON",
    notLogbook: "Die Datei ist JSON, aber kein Logbuch dieser Seite",
    newer:
      "Die Datei stammt von einer neueren Version dieser Seite: Seite neu laden, dann noch einmal versuchen",
    head: "die Kopfzeile muss mindestens die Spalten kind, id und changed_at nennen",
    badCsv:
      "das lässt sich nicht als CSV lesen: ein Feld zu viel oder zu wenig oder ein offenes Anführungszeichen",
    kind: "kind muss heater, tune, cleaning oder note sein",
    twice: (id: string) => `die id ${id} kommt zweimal vor`,
    noHeater: (id: string) => `die Heizung dazu (${id}) ist weder in der Datei noch hier`,
    field: (field: string, reason: string) => `${field}: ${reason}`,
  },
  cautions: {
    title: "Vor der Arbeit an der Heizung",
    lines: [
      "Das Nachlaufen bis zum Ende abwarten; nie im heißen Zustand den Strom trennen.",
      "Nie tanken, solange die Heizung heiß ist oder läuft.",
      "Nach jeder Arbeit alles ansehen: Verbindungen des Abgasrohrs, Luftansaugung, Kraftstoffleitungen.",
      "Sicherung und Kabel in der Größe, die der Hersteller verlangt.",
    ],
  },
};
