/** The Logbook view, in German. */
export const logbookWords: typeof import("../en/logbook.ts").logbookWords = {
  title: "Logbuch",
  intro:
    "Die eigenen Heizungen und was mit ihnen geschah. Es bleibt in diesem Browser: Nichts davon wird gesendet, außer eine Abstimmung wird geteilt.",
  empty:
    "Noch keine Heizung. Die eigene anlegen, dann Abstimmungen und Reinigungen eintragen, oder eine exportierte Datei bringen.",
  lost: (n: number) =>
    `Dieser Browser hat seinen Speicher geleert: ${n === 1 ? "1 Eintrag ist" : `${n} Einträge sind`} fort. Unten lässt sich der letzte Export zurückholen.`,
  lostUnderstood: "Verstanden",
  mayWipe: "Ein Browser kann seinen Speicher leeren. Ab und zu exportieren.",
  store: {
    forbidden:
      "Dieser Browser verbietet, hier Daten aufzubewahren (ein privates Fenster oder gesperrte Websitedaten): Das Logbuch kann nicht aufbewahrt werden. Speicher für diese Seite erlauben oder ein anderes Fenster nehmen.",
    full: "Dieser Browser hat keinen Platz mehr: Es wurde nicht aufbewahrt und nichts geändert. Platz schaffen oder Fotos entfernen, dann noch einmal versuchen.",
  },
  heater: {
    title: "Heizungen",
    choose: "Heizung",
    add: "Heizung anlegen",
    edit: "Diese Heizung ändern",
    remove: "Diese Heizung entfernen",
    removeSure: (n: number) =>
      n === 1 ? "Mit ihrem 1 Eintrag entfernen" : `Mit ihren ${n} Einträgen entfernen`,
    removed: (name: string) => `${name} ist entfernt.`,
    name: "Eigener Name dafür",
    tank: "Tank, L (freiwillig)",
    dose: "Dosis, µL je Takt (freiwillig)",
    lowFan: "Lüfterdrehzahl, unteres Ende, U/min (freiwillig)",
    highFan: "Lüfterdrehzahl, oberes Ende, U/min (freiwillig)",
    supply: "Bordspannung, V (freiwillig)",
    hours: "Betriebsstunden bisher (freiwillig)",
    line: (kW: string) => `${kW} kW`,
    save: "Heizung aufbewahren",
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
    at: "Tag und Uhrzeit",
    hours: "Stunden auf dem Zähler (freiwillig)",
    hoursWhy: "Über sie wird eine Veränderung verfolgt.",
    fuel: "Kraftstoff seit dem Eintrag davor, L (freiwillig)",
    notes: "Notizen (freiwillig)",
    photo: "Foto (freiwillig)",
    photoHint: "Verkleinert und befreit von dem, was die Kamera hineingeschrieben hat.",
    photoDrop: "Foto herausnehmen",
    photoBad: "Diese Datei ist kein lesbares Bild.",
    photoAlt: (when: string) => `Foto zum Eintrag vom ${when}`,
    site: "Wo",
    meter: "Messgerät",
    meterWhy: "CO wird nur mit demselben Messgerät an derselben Stelle verglichen.",
    meterName: "Eigener Name dafür (freiwillig)",
    reading: "Das Messgerät zeigt",
    readings: {
      co_ppm: "eine Zahl",
      co_below_ppm: "nichts: darunter",
      co_above_ppm: "sein Ende: darüber",
    },
    readingOf: {
      co_ppm: "End-CO, ppm",
      co_below_ppm: "Seine Anzeigegrenze, ppm",
      co_above_ppm: "Sein Ende, ppm",
    },
    save: "Eintrag aufbewahren",
    cancel: "Lassen",
    edit: "Ändern",
    remove: "Entfernen",
    editThis: (what: string) => `Ändern: ${what}`,
    removeThis: (what: string) => `Entfernen: ${what}`,
    removed: (what: string) => `${what} ist entfernt.`,
    undo: "Rückgängig",
    undone: "Es ist wieder da.",
    kept: "In diesem Browser aufbewahrt.",
    fix: "Einige Felder sind noch zu berichtigen.",
    setTo: (hz: string, rpm: string) => `${hz} Hz, ${rpm} U/min`,
    co: (ppm: string) => `${ppm} ppm`,
    below: (ppm: string) => `unter ${ppm} ppm`,
    above: (ppm: string) => `über ${ppm} ppm`,
    power: (setting: string) => `Leistungseinstellung ${setting}`,
    swept: (hz: string, lower: string, upper: string) =>
      `am niedrigsten bei ${hz} Hz, zwischen ${lower} und ${upper} Hz`,
    density: (density: string) => `Luft ${density} kg/m³`,
    atHours: (hours: string) => `bei ${hours} h`,
    fuelLine: (litres: string) => `${litres} L seit dem Eintrag davor`,
    meterLine: (kind: string, distance: string) => `${kind}, ${distance} m vom Auspuff`,
  },
  check: {
    missing: "Das wird gebraucht.",
    number: "muss eine Zahl sein",
    between: (least: string, most: string) => `muss zwischen ${least} und ${most} liegen`,
    classStep: "muss in Schritten von 0,5 kW sein",
    when: "muss Tag und Uhrzeit sein wie 2026-11-05T20:30:00Z",
    oneReading: "eine der drei Anzeigen wird gebraucht: eine Zahl, die Anzeigegrenze oder das Ende",
    oneReadingOnly: "nur eine der drei Anzeigen kann es sein",
    pair: "Breite und Länge gehören zusammen",
    onePressure: "Stationsdruck oder Druck auf Meereshöhe, nicht beide",
    bothEnds: "Eine Abstimmung hat einen Ort, ein unteres und ein oberes Ende.",
    unknown: "ist hier nicht bekannt: verschrieben oder von einer neueren Version",
    text: "muss Text sein und nicht zu lang",
    choice: "ist keine der Möglichkeiten",
    photo: "muss eine Data-URL eines Bildes in JPEG, PNG oder WebP von höchstens 2 MB sein",
  },
  share: {
    share: "Diese Abstimmung teilen",
    shareThis: (what: string) => `Diese Abstimmung teilen: ${what}`,
    what: (elevation: string) =>
      `Gesendet werden: Heizung, Luft, beide Enden mit ihrem CO, wie sie gefunden wurden, Messgerät, Monat und ${elevation}; vom Standort nur die Mitte der Kartenzelle. Nicht gesendet: Name des Ortes, Tag, Notizen, Foto, Stunden.`,
    cannot:
      "Eine Anzeige am Ende des Messgeräts ist kein End-CO: Diese Abstimmung lässt sich nicht teilen.",
    looks:
      "Das sieht nach einem Versehen aus. Den Eintrag ändern oder ihn so senden: Er würde zurückgehalten.",
    cancel: "Nicht teilen",
    shared: "Geteilt",
    waits: "Wartet auf das Senden; sie geht von selbst, einmal, sobald der Atlas erreichbar ist.",
    gone: "Sie sollte geteilt werden, wartet aber nicht und hat in diesem Browser keinen Beleg: noch einmal teilen.",
    discard: "Doch nicht senden",
    revise: "So senden, wie der Eintrag jetzt ist",
    revised: (verdict: string) => `Berichtigt: ${verdict}.`,
    arrived: (verdict: string) => `Angekommen: ${verdict}.`,
    receiptNotKept: "Der Beleg ist beim Eintrag aufbewahrt.",
    notThere: "Der Atlas hat diese Abstimmung nicht mehr: Der Eintrag ist davon frei.",
    openShare: "Belege und mehr stehen unter Teilen.",
  },
  drift: {
    title: "Was die Veränderung sagt",
    howTitle: "Woran das erkannt wird",
    how: "Einstellungen werden auf der eigenen Linie der Heizung über der Luftdichte verglichen; CO nur bei gleichem Gemisch, mit demselben Messgerät an derselben Stelle, seit der letzten Reinigung. Dass nach jedem Eintrag nachgesehen wird, ist eingerechnet: Ist nichts da, steht ein solcher Satz in weniger als 5 von 100 Saisons hier. Bereiche gelten in 95 von 100 Fällen, wie oft auch nachgesehen wird.",
    none: "Noch nichts zu sagen: Dazu braucht es seit der letzten Reinigung mehrere Abstimmungen mit Stunden (oder Kraftstoff) und beschriebenem Messgerät.",
    co: (from: string, to: string, amount: string) =>
      `Die beste Anzeige bei diesem Gemisch stieg von ${from} auf ${to} ppm über ${amount}: Ruß oder eine verstopfte Ansaugung ist wahrscheinlicher als die Luft.`,
    coQuiet: (n: number, amount: string) =>
      `${n} vergleichbare Anzeigen über ${amount}: kein Anstieg von CO, den die Belege trügen.`,
    change: (factor: string, lower: string, upper: string) =>
      `Veränderung: das ${factor}-fache; zwischen dem ${lower}- und dem ${upper}-fachen.`,
    changeOpen: (factor: string) =>
      `Veränderung bisher: das ${factor}-fache; zu wenige Anzeigen für einen Bereich.`,
    richer: (pct: string, amount: string) =>
      `Bei gleicher Luft stieg die beste Pumpenfrequenz um ${pct} % über ${amount}: Etwas anderes als die Luft hat sich verändert.`,
    leaner: (pct: string, amount: string) =>
      `Bei gleicher Luft fiel die beste Pumpenfrequenz um ${pct} % über ${amount}: Es kommt weniger Luft hinein, oder etwas anderes hat sich verändert.`,
    mixtureQuiet: (n: number, amount: string) =>
      `${n} Abstimmungen über ${amount}: keine Veränderung des besten Gemischs, die die Belege trügen.`,
    mixtureInterval: (lower: string, upper: string) => `Zwischen ${lower} und ${upper} %.`,
    amount: {
      hours: (n: string) => `${n} Stunden`,
      fuel_L: (n: string) => `${n} L Kraftstoff`,
    },
    floor: (n: number) =>
      n === 1
        ? "1 Anzeige lag unter der Anzeigegrenze: keine Zahl, also ausgelassen, und ein Anstieg zeigt sich später."
        : `${n} Anzeigen lagen unter der Anzeigegrenze: keine Zahlen, also ausgelassen, und ein Anstieg zeigt sich später.`,
    ceiling: (n: number) =>
      n === 1
        ? "1 Anzeige war am Ende des Messgeräts: keine Zahl, also ausgelassen."
        : `${n} Anzeigen waren am Ende des Messgeräts: keine Zahlen, also ausgelassen.`,
    risen: (ppm: string, floor: string) =>
      `Das Messgerät zeigt jetzt ${ppm} ppm, wo es zuvor nichts zeigte (unter ${floor}). Eine Anzeige ist kein Urteil: noch einmal ablesen.`,
    noMeter: (n: number) =>
      n === 1
        ? "1 Abstimmung nennt kein Messgerät mit Abstand: Ihr CO wird nicht verglichen."
        : `${n} Abstimmungen nennen kein Messgerät mit Abstand: Ihr CO wird nicht verglichen.`,
    stepsTitle: "Übliche nächste Schritte, nach der Anleitung des Herstellers",
    steps: [
      "Die Luftansaugung ansehen: Filter, Schlauch, Nester, Schnee, Laub.",
      "Den Auspuff ansehen: geknicktes oder durchhängendes Rohr, Wasser an einer tiefen Stelle, Ruß an der Mündung, dichte Verbindungen.",
      "Sie eine Weile im Freien mit voller Leistung laufen lassen, wenn die Anleitung es vorsieht.",
      "Sieb, Glühteil und Brenner: nach der Anleitung des Herstellers oder vom Fachbetrieb ansehen, reinigen oder tauschen lassen.",
      "Die Reinigung eintragen, damit ein neuer Abschnitt beginnt.",
    ],
  },
  supply: {
    title: "Kraftstoff und Batterie für heute Nacht",
    elevation: "Höhe heute Nacht",
    hours: "Stunden",
    share: "Leistung, % des Bereichs",
    fuel: (litres: string, hours: string) => `${litres} L für ${hours} h`,
    heat: (kW: string) => `etwa ${kW} kW für den Raum`,
    tank: (hours: string) => `Ein voller Tank reicht ${hours} h.`,
    noTank: "Mit der Größe des Tanks stünden hier seine Stunden.",
    battery: (at12: string, at24: string) => `${at12} Ah bei 12 V oder ${at24} Ah bei 24 V`,
    starts: "Jeder Start nimmt 8–12 A bei 12 V oder 4–6 A bei 24 V.",
    logged: (day: string, low: string, high: string) =>
      `Kraftstoff aus Ihrer Abstimmung vom ${day}, ${low} und ${high} Hz, und der Dosis dieser Heizung.`,
    retuned: (low: string, high: string, litres: string) =>
      `Auf die Luft dieser Nacht eingestellt, etwa ${low} und ${high} Hz, wären es ${litres} L.`,
    dose: "Kraftstoff aus der Pumpenfrequenz der Startabstimmung in der Luft dieser Nacht und der Dosis.",
    class:
      "Kraftstoff nach dem, was die Leistungsklasse in der Luft dieser Nacht üblicherweise verbrennt: Die Dosis wüsste es besser.",
    assumes: (minutes: number) =>
      `Vorausgesetzt: 0,6 A am unteren bis 3,5 A am oberen Ende bei 12 V, 8–12 A beim Start (übliche Praxis, keine Quelle) von ${minutes} Minuten (eigener Wert); 9,9 kWh je Liter, davon 80 % für den Raum; gleichmäßige Leistung.`,
    cannot: "Diese Zahlen können nicht zusammen bestehen. Höhe, Stunden und Leistung prüfen.",
  },
  files: {
    title: "Export und Import",
    json: "Alles exportieren (JSON, mit Fotos)",
    csv: "Als CSV exportieren, ohne Fotos",
    note: "Die Dateien enthalten die eigenen Orte und die Belege geteilter Abstimmungen: Wer einen Beleg hat, kann die Abstimmung zurückziehen. Für sich behalten.",
    bring: "Eine Datei bringen: JSON oder CSV",
    bringHint: "Was schon da ist, bleibt; von zwei Fassungen eines Eintrags die zuletzt geänderte.",
    brought: (added: number, changed: number, same: number) =>
      `${added} neu, ${changed} geändert, ${same} wie zuvor.`,
    refused: (reason: string) => `${reason}. Nichts wurde übernommen.`,
    line: (line: number, reason: string) => `Zeile ${line}: ${reason}. Nichts wurde übernommen.`,
    empty: "Die Datei ist leer",
    large: (MB: number) => `Die Datei ist größer als ${MB} MB`,
    notJson: "das ist kein lesbares JSON",
    notLogbook: "Die Datei ist JSON, aber kein Logbuch dieser Seite",
    newer:
      "Die Datei stammt von einer neueren Version dieser Seite: die Seite neu laden, dann noch einmal versuchen",
    head: "die Kopfzeile muss mindestens die Spalten kind, id und changed_at nennen",
    badCsv:
      "das lässt sich nicht als CSV lesen: ein Feld zu viel oder zu wenig oder ein offenes Anführungszeichen",
    kind: "kind muss heater, tune, cleaning oder note sein",
    twice: (id: string) => `die id ${id} steht zweimal da`,
    noHeater: (id: string) => `seine Heizung (${id}) ist weder in der Datei noch hier`,
    field: (field: string, reason: string) => `${field}: ${reason}`,
  },
  cautions: {
    title: "Bevor Hand angelegt wird",
    lines: [
      "Das Nachlaufen bis zum Ende abwarten; nie im heißen Zustand den Strom trennen.",
      "Nicht tanken, solange die Heizung heiß ist oder läuft.",
      "Auspuffverbindungen, Luftansaugung und Kraftstoffleitungen: nach jeder Arbeit daran alle ansehen.",
      "Sicherung und Kabel in der Größe, die der Hersteller verlangt.",
    ],
  },
};
