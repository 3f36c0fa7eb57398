/** Words of the On site view, in German. */
export const onsite: typeof import("../en/onsite.ts").onsite = {
  title: "Vor Ort: mit dem CO-Messgerät abstimmen",
  intro:
    "Eine geführte Suche erst bei kleinster, dann bei größter Leistung: einstellen, warten, ablesen, bis CO am niedrigsten ist. Das geht ohne Netz; jede Eingabe wird gespeichert.",
  notKept: "Dieser Browser speichert deine Eingaben nicht: Beim Neuladen ginge die Suche verloren.",
  prepare: {
    basis: "Ort, Luft, Heizung",
    nightWhy: "Für die kommende Nacht: Am Ende steht, wie die Abstimmung zu ihr passt.",
    air: "Luft jetzt",
    temperatureNow: "Temperatur jetzt",
    airNow: "Dort, wo die Heizung ansaugt. Leer gilt die Normatmosphäre.",
    start: (low, high) => `Gesucht wird um ${low} Hz und ${high} Hz.`,
    fansAt: (low, high) => `Der Lüfter bleibt bei ${low} und ${high} U/min.`,
    finerAir: "Druck und Luftfeuchte",
    fansAndSteps: "Lüfter und Schritte",
    figures: "Was es anzeigen kann",
    before: "Jetzige Einstellungen",
    beforeWhy: "Hier beginnt die Suche. Wer sie abbricht, stellt auf diese Werte zurück.",
    lowBefore: "Pumpenfrequenz jetzt, kleinste Leistung, Hz",
    highBefore: "Pumpenfrequenz jetzt, größte Leistung, Hz",
    fanWhy:
      "Lüfterdrehzahlen, wie sie jetzt eingestellt sind: Die Suche ändert nur die Pumpe. Bleiben die Felder leer, gelten die für die Heizungsgröße üblichen.",
    step: "Kleinster Schritt der Pumpenfrequenz, Hz",
    supply: "Bordspannung, V (freiwillig)",
    meter: "Messgerät am Abgasrohr",
    meterWhy:
      "Die Art füllt ein, was für solche Geräte üblich ist (gängige Praxis, keine Quelle). Die Anleitung deines Geräts weiß es besser.",
    kind: "Art des Messgeräts",
    resolution: "Kleinster Unterschied, den es anzeigt, ppm",
    floor: "Kleinster Wert, den es anzeigt, ppm",
    floorHint:
      "0, wenn es jeden Wert anzeigt. Viele CO-Melder für Räume zeigen unter 30 nichts an: Das heißt nicht 0.",
    ceiling: "Größter Wert, den es anzeigt, ppm",
    lag: "Ansprechzeit, Sekunden",
    lagHint:
      "Wie lange es braucht, bis es eine Änderung zum größten Teil anzeigt. Schätzen genügt: Danach richtet sich nur, wie lange du wartest.",
    distance: "Abstand von der Mündung des Abgasrohrs, m",
    distanceHint:
      "Etwa 0,3 m ist gängige Praxis (keine Quelle). Bei jedem Ablesen dieselbe Stelle.",
    missing: "Bitte ausfüllen.",
    range: (least, most) => `Bitte von ${least} bis ${most}.`,
    ends: "Die größte Leistung braucht eine höhere Frequenz als die kleinste.",
    cannot:
      "Aus diesen Zahlen lassen sich keine Startwerte berechnen. Drehzahlen und Druck prüfen.",
    fix: "Bitte die markierten Felder prüfen.",
    begin: "Weiter zur Checkliste",
  },
  guards: (lean, rich) => `Grenzen: ${lean}–${rich} Hz.`,
  progress: {
    step: (step, most) => `Schritt ${step} von höchstens ${most}.`,
    lean: "Magerer",
    rich: "Fetter",
    seen: {
      rose: "CO stieg\u00a0✓",
      open: "noch kein Anstieg",
      "flame-out": "Flamme ging aus",
      limit: "Grenze erreicht",
    },
    at: (co, rate) => `${co} ppm bei ${rate} Hz`,
    next: (rate) => `als Nächstes: ${rate} Hz`,
  },
  keys: {
    label: "Ziffern",
    minus: "Über oder unter 0",
    decimal: "Komma",
    remove: "Löschen",
  },
  checklist: {
    title: "Vor dem Zünden",
    intro: "Alles ansehen, dann abhaken.",
    checks: {
      air: "Das Fahrzeug steht im Freien, die Türen sind offen, und niemand schläft darin.",
      alarm:
        "Drinnen hängt ein separater, zertifizierter CO-Melder, und ich habe gerade seine Prüftaste gedrückt. Er ist nicht das Messgerät am Abgasrohr.",
      exhaust:
        "Abgasrohr und Luftansaugung sind dicht, frei und weit genug auseinander: Die Heizung saugt nicht ihr eigenes Abgas an.",
      meter:
        "Das Messgerät zeigt an frischer Luft nichts an und ist nahe am Abgasrohr befestigt, nicht darin: außerhalb des heißen Strahls, immer an derselben Stelle.",
      fuel: "Der Kraftstoff reicht für eine Stunde bei voller Leistung; nachgefüllt wird nicht, solange etwas heiß ist.",
      supply:
        "Die Bordspannung hält unter Last: Eine schwache Batterie verstellt Lüfter und Pumpe.",
    },
    hot: "Das Abgasrohr wird so heiß, dass es die Haut verbrennt und trockenes Gras anzündet. Nach dem Ausschalten die Heizung von selbst nachlaufen und abkühlen lassen: nie den Strom trennen.",
    maker:
      "Die Anleitung des Herstellers geht vor. Manche zugelassenen Anlagen dürfen gar nicht verändert werden.",
    light: "Die Heizung läuft",
    tickAll: "Erst alles abhaken.",
  },
  warmUp: {
    title: "Warmlaufen",
    why: "Mit kleinster Leistung laufen lassen. Solange der Brenner kalt ist, sagen Messwerte nichts.",
    left: "Noch",
    over: "Warm. Bei kleinster Leistung beginnen.",
    begin: "Bei kleinster Leistung beginnen",
    already: "Sie ist schon warm",
  },
  step: {
    title: (end) => `${end}: nächster Schritt`,
    titleWait: (end) => `${end}: warten, ablesen`,
    settling: "Flamme und Messgerät zur Ruhe kommen lassen.",
    set: "Pumpe einstellen auf",
    keep: "Pumpe bleibt auf",
    why: {
      start: "Dort beginnen, wo die Pumpe jetzt steht.",
      turnUp:
        "Dreh die Heizung auf größte Leistung und lass sie dort. Dort beginnen, wo ihre Pumpe jetzt steht.",
      leaner: "Etwas magerer.",
      richer: "Etwas fetter.",
      between: "Zwischen zwei Messwerten, wo CO noch niedriger sein kann.",
      "on the way": "Auf dem Weg dorthin, denn die Pumpe wird nur in kleinen Schritten verstellt.",
      confirm: "Zur Bestätigung: hier noch einmal ablesen.",
      spike: "CO ist stark gestiegen: sofort zurück.",
      "flame-out":
        "Zurück dorthin, wo die Heizung lief. Die Frequenz, bei der die Flamme ausging, ist zu mager und kommt nicht noch einmal dran.",
      wait: "Die Anzeige ist noch nicht ruhig: bei derselben Frequenz noch einmal ablesen.",
    },
    isSet: "Ist eingestellt",
    thenWait: (span) => `Dann ${span} warten.`,
    readIn: "Ablesen in",
    readNow: "Jetzt das Messgerät ablesen",
    reading: "Das Messgerät zeigt, ppm",
    take: "Messwert übernehmen",
    below: (floor) => `Unter ${floor}`,
    above: (ceiling) => `Über ${ceiling}`,
    still: "Seit 30 s ruhig",
    noReading:
      "Den Messwert eintippen oder angeben, dass er unter oder über dem liegt, was dein Messgerät anzeigen kann.",
    aboveCeiling: (ceiling) =>
      `„Das Messgerät zeigt“ liegt über ${ceiling} ppm, dem größten Wert, den du für dein Messgerät angegeben hast. Die Zahl prüfen oder „Über ${ceiling}“ drücken.`,
    belowZero: "Ein Messgerät zeigt 0 oder mehr. Bitte die Zahl prüfen.",
    early:
      "Ein Messwert zählt, wenn die Anzeige ruhig ist: wenn zwei übereinstimmen oder du eine halbe Minute lang zugesehen hast.",
    out: "Die Flamme ist ausgegangen",
    signal: "Ton und Vibration, wenn eine Wartezeit endet",
    undo: "Letzte Eingabe zurücknehmen",
    leave: "Suche abbrechen",
    leaveSure: "Abbrechen und zeigen, was zurückzustellen ist",
    stay: "Weitersuchen",
    seconds: (n) => `${n} s`,
    minutes: (n) => `${n} min`,
  },
  chart: {
    title: "CO über der Pumpenfrequenz",
    x: "Pumpenfrequenz, Hz",
    y: "CO am Messgerät, ppm",
    label: "Diagramm der Messwerte: CO über der Pumpenfrequenz.",
    first: "Noch kein Messwert.",
    lowest: (co, rate) => `Bisher am niedrigsten: ${co} ppm bei ${rate} Hz.`,
    lowestBelow: (floor, rate) => `Bisher am niedrigsten: unter ${floor} ppm bei ${rate} Hz.`,
    next: (rate) => `als Nächstes: ${rate}`,
    keyLine: "Messwerte, verbunden",
    keyBetween: "außerhalb davon ist CO deutlich höher",
    keyNext: "nächste Einstellung",
    readings: "Messwerte",
    rate: "Pumpenfrequenz, Hz",
    co: "CO, ppm",
    time: "Nach dem Einstellen",
    flameOut: "Flamme aus",
    settled: "Anzeige war ruhig",
    none: "Noch keine.",
  },
  ended: {
    found: {
      title: (end) => `${end}: gefunden`,
      minimum: (rate, lower, upper) =>
        `Am niedrigsten ist CO bei etwa ${rate} Hz: Bei ${lower} und bei ${upper} Hz war es deutlich höher.`,
    },
    "not bracketed": {
      title: (end) => `${end}: bester Wert bisher, aber kein Minimum`,
      means:
        "CO stieg nicht auf beiden Seiten dieser Frequenz. Sie ist die beste von allen, bei denen du abgelesen hast, aber kein gemessenes Minimum.",
      farther: "Weiter außen kann CO niedriger sein.",
      lean: {
        rose: () => "Magerer: CO stieg.",
        "flame-out": () => "Magerer: Die Flamme geht aus, bevor CO steigt.",
        limit: (rate) =>
          `Magerer: Bei ${rate} Hz, der letzten Frequenz innerhalb der Grenzen, war CO nicht deutlich gestiegen. Sind Drehzahlen, Ort und Luft richtig eingegeben, ist diese Heizung anders als die meisten.`,
        open: (rate) =>
          `Magerer: Bei ${rate} Hz waren die Schritte aufgebraucht, bevor CO deutlich stieg.`,
      },
      rich: {
        rose: () => "Fetter: CO stieg.",
        "flame-out": () => "Fetter: Die Flamme geht aus, bevor CO steigt.",
        limit: (rate) =>
          `Fetter: Bei ${rate} Hz, der letzten Frequenz innerhalb der Grenzen, war CO nicht deutlich gestiegen. Sind Drehzahlen, Ort und Luft richtig eingegeben, ist diese Heizung anders als die meisten.`,
        open: (rate) =>
          `Fetter: Bei ${rate} Hz waren die Schritte aufgebraucht, bevor CO deutlich stieg.`,
      },
      changed:
        "Die Messwerte bei dieser Frequenz haben sich unterwegs geändert: Wind, Aufwärmen oder ein Messgerät, dessen Anzeige wandert. Darum gilt keiner davon als Minimum.",
      now: "Vorläufig kannst du damit heizen, wenn die Flamme ruhig brennt.",
      further: "Um weiterzusuchen, hier neu beginnen: Die Suche geht von diesem Wert aus weiter.",
    },
    "below floor": {
      title: (end) => `${end}: unter dem kleinsten Wert des Messgeräts`,
      means: (floor, lower, upper) =>
        lower === upper
          ? `Bei ${lower} Hz liegt CO unter ${floor} ppm, dem kleinsten Wert, den dein Messgerät anzeigt.`
          : `Von ${lower} bis ${upper} Hz liegt CO unter ${floor} ppm, dem kleinsten Wert, den dein Messgerät anzeigt.`,
      middle: "Die Mitte dieses Bereichs ist eine vernünftige Wahl, kein gemessenes Minimum.",
      suggested:
        "Wie weit dieser Bereich reicht, war nicht zu sehen. Der Startwert oder die Frequenz im Bereich, die ihm am nächsten liegt, ist eine vernünftige Wahl, kein gemessenes Minimum.",
      now: (floor) =>
        `Unter ${floor} heißt nicht 0. Für ein Minimum hier neu beginnen: mit dem Messgerät näher am Abgasrohr oder mit einem, das kleinere Werte anzeigt.`,
    },
    "above scale": {
      title: (end) => `${end}: über dem größten Wert des Messgeräts`,
      means: (ceiling) =>
        `Alle Messwerte liegen über ${ceiling} ppm, dem größten Wert, den dein Messgerät anzeigt. So findet es kein Minimum. Die Pumpe bei dieser Frequenz lassen, das Messgerät weiter vom Abgasrohr wegrücken und neu beginnen. Bleibt es so, die Heizung prüfen lassen.`,
    },
    goOn: "Ohne Minimum weiter",
  },
  found: {
    leave: "Die Pumpe lassen auf",
    shown: (co) => `Dort blieb die Anzeige bei ${co} stehen.`,
    flat: (lower, upper) =>
      `Von ${lower} bis ${upper} Hz ist CO gleich, soweit das Messgerät es unterscheiden kann.`,
    seat: {
      low: "Die gewählte Frequenz liegt eher am fetten Rand dieses Bereichs: Dort brennt eine kleine Flamme ruhiger.",
      high: "Die gewählte Frequenz liegt eher auf der mageren Seite dieses Bereichs: Dort entsteht weniger Ruß.",
    },
    besideFlameOut: (rate) =>
      `Bei ${rate} Hz, nur wenig magerer, ging die Flamme aus. Bei Wind oder in einer kälteren Nacht kann sie auch hier ausgehen: dann die Pumpe einen Schritt fetter stellen.`,
    practice:
      "CO unter 30 ppm nahe am Abgasrohr ist üblich, 7–15 ppm sind gut (gängige Praxis, keine Quelle). Ein anderes Gerät oder eine andere Stelle zeigt einen anderen Wert.",
    nextHigh: "Weiter zur größten Leistung",
    nextCheck: "Weiter zur Kontrolle",
    again: "Hier neu beginnen",
  },
  check: {
    title: { middle: "Kontrolle bei mittlerer Leistung", full: "Kontrolle bei voller Leistung" },
    why: {
      middle:
        "Zwischen kleinster und größter Leistung regelt die Steuerung geradlinig: Auf halbem Weg stehen auch Pumpe und Lüfter auf halbem Weg, und CO liegt zwischen den beiden Messwerten.",
      full: "Noch einmal auf volle Leistung: CO muss wieder dort liegen, wo es bei größter Leistung stehen blieb.",
    },
    setTo: {
      middle: "Leistung in die Mitte zwischen kleinster und größter stellen",
      full: "Volle Leistung einstellen",
    },
    is: (pump, fan) => `dort läuft die Pumpe mit etwa ${pump} Hz, der Lüfter mit ${fan} U/min`,
    expect: (co, upper) => `Zu erwarten sind etwa ${co} ppm; über ${upper} ist schlecht.`,
    expectBelow: (upper) => `Über ${upper} ppm ist schlecht.`,
    good: (co) => `${co}: wie zu erwarten.`,
    unseen: "Das Messgerät zeigt hier nichts an: Das spricht weder dagegen noch dafür.",
    poor: (co) => `${co}: deutlich mehr als bei kleinster und größter Leistung.`,
    poorMeans: {
      middle:
        "Entweder regelt die Steuerung nicht geradlinig, oder eine der beiden Einstellungen stimmt nicht mehr. Nichts zum Ausgleich verstellen: erst bei kleinster und größter Leistung noch einmal ablesen. Bleibt es schlecht, nur nahe der kleinsten und größten Leistung heizen und die Heizung prüfen lassen.",
      full: "Die größte Leistung hält nicht, was sie gezeigt hat: Die Anzeige war noch nicht ruhig, oder etwas hat sich geändert. Noch einmal ablesen oder die Suche bei größter Leistung ein andermal wiederholen. Bleibt es schlecht, die Heizung prüfen lassen.",
    },
    readAgain: "Noch einmal ablesen",
    skip: "Diese Kontrolle auslassen",
    next: "Weiter zur vollen Leistung",
    finish: "Fertig",
    skipped: "ausgelassen",
  },
  relight: {
    title: "Die Flamme ist aus",
    cool: "Die Heizung von selbst abkühlen lassen. Nie den Strom trennen. Das Abgasrohr ist heiß; unverbrannter Kraftstoff kann qualmen.",
    richer: (rate) => `Dann die Pumpe fetter stellen, auf ${rate} Hz, und noch einmal zünden.`,
    same: "Dann noch einmal zünden.",
    rule: (left) =>
      left === 1
        ? "Noch ein Versuch; danach gilt nur noch die Anleitung des Herstellers."
        : `Höchstens ${left} Zündversuche; danach gilt nur noch die Anleitung des Herstellers.`,
    attempt: "Sie ist abgekühlt: Ich zünde jetzt",
    burns: "Die Flamme brennt",
    noLight: "Sie zündet nicht",
  },
  stopped: {
    alarm: {
      title: "Draußen bleiben",
      lines: [
        "Niemand geht wieder hinein: nicht um die Ursache zu suchen, nicht wegen der Heizung, nicht um etwas zu holen.",
        "Kopfschmerzen, Schwindel, Übelkeit, oder fehlt jemand? Beim Notruf sagen. Zum Arzt gehen, auch wenn es vorübergeht.",
        "Die Heizung nur ausschalten, wenn das von draußen geht. Sie von selbst abkühlen lassen.",
        "Niemand zündet sie und niemand schläft dort, bevor die Luft sauber und der Melder still ist und jemand, der solche Heizungen kennt, die Ursache gefunden hat.",
      ],
      number: "Notrufnummer zeigen",
      sweepEnded: "Der Alarm hat die Suche beendet.",
      later: "Später: Einstellungen zurückstellen",
      onlyThen: "Erst wenn die Luft sauber und die Ursache gefunden ist.",
      areBack: "Sie sind zurückgestellt",
      endSweep: "Diese Suche beenden",
      notYet: "Noch nicht",
      mistaken: "Das war ein Versehen",
      mistakenSure: "Ja: kein Alarm, und drinnen kein CO gemessen",
    },
    flame: {
      title: "Kein weiterer Versuch",
      lines: [
        "Die Flamme ging zu oft aus oder kam nicht wieder. Die Heizung von selbst abkühlen lassen; nie den Strom trennen.",
        "Ab jetzt gilt die Anleitung des Herstellers; sonst die Heizung prüfen lassen.",
      ],
    },
    abort: {
      title: "Die Suche ist abgebrochen",
      lines: [
        "Es wird keine Abstimmung gespeichert. Die Heizung zur Ruhe kommen oder von selbst abkühlen lassen; nie den Strom trennen.",
      ],
    },
    putBack: "Einstellungen zurückstellen",
    fanKept:
      "So hattest du sie vor der Suche angegeben. Die Suche hat nur die Pumpe verstellt: Der Lüfter ist, wie er war.",
    fan: "Lüfterdrehzahl, U/min",
    pump: "Pumpenfrequenz, Hz",
    resume: "Zurück zur Suche",
    anew: "Eine neue Suche beginnen",
    anewSure: "Ja: diese Suche verwerfen",
  },
  done: {
    title: "Beide Minima gefunden",
    titleSet: "Beide Leistungen eingestellt",
    end: "Leistung",
    pump: "Pumpe, Hz",
    fan: "Lüfter, U/min",
    co: "Niedrigster CO-Wert",
    minimum: "Minimum zwischen, Hz",
    none: "kein Minimum gesehen",
    settled: "Messwerte",
    before: "Vor der Suche, Hz",
    logged: "Im Logbuch gespeichert.",
    whose: "Welche Heizung hast du abgestimmt?",
    whoseWhy: "Die Abstimmung kommt in ihr Logbuch, und die Antworten für sie werden genauer.",
    whoseNew: "Eine, die hier nicht steht",
    notLogged:
      "Das konnte nicht im Logbuch gespeichert werden: Der Speicher ist vielleicht voll oder gesperrt.",
    retry: "Noch einmal versuchen",
    openLogbook: "Logbuch öffnen",
    recheck:
      "Das gilt für diese Heizung, diesen Ort, diese Luft. Nach 500 Höhenmetern oder 15 °C neu prüfen (unsere eigenen Arbeitswerte).",
    night: {
      title: "In der Luft der kommenden Nacht",
      temperature: "Nachttemperatur",
      type: "Eintippen, wie kalt die Nacht wird: Kalte Luft ist dichter, und dieselben Einstellungen laufen in ihr magerer.",
      air: (night, size, now) =>
        `Bei ${night} ist die Luft ${size} als bei den ${now}, bei denen du abgestimmt hast.`,
      same: (night, now) =>
        `Bei ${night} ist die Luft auf ein halbes Prozent so dicht wie bei den ${now}, bei denen du abgestimmt hast.`,
      denser: (pct) => `${pct} % dichter`,
      thinner: (pct) => `${pct} % dünner`,
      assumed: (now) =>
        `Beim Abstimmen hast du keine Temperatur angegeben: Gerechnet ist mit den ${now} der Normatmosphäre, das ist also nur geschätzt.`,
      asIs: "So gelassen",
      pump: "Pumpe stellen auf, Hz",
      fan: "Oder Lüfter auf, U/min",
      fanUsual: "Oder der Lüfter",
      richer: (pct) => `${pct} % fetter`,
      leaner: (pct) => `${pct} % magerer`,
      none: "keine Abweichung",
      faster: (pct) => `${pct} % schneller`,
      slower: (pct) => `${pct} % langsamer`,
      fanEnds: "mehr, als der Lüfter kann",
      unchanged: "bleibt",
      stay: (rich, lean) =>
        `Das kann so bleiben: Bis ${rich} % fetter oder ${lean} % magerer als das Minimum lassen wir gelten (unsere eigenen Arbeitswerte). Damit CO auch in der Nacht am niedrigsten ist, eines davon einstellen:`,
      tight: (room, rich, lean) =>
        `Das kann so bleiben, ist aber knapp: ${room} % bleiben bis zur Grenze (${rich} % fetter bis ${lean} % magerer als das Minimum, unsere eigenen Arbeitswerte). Besser bei jeder Leistung eines davon einstellen:`,
      set: (rich, lean) =>
        `Zu weit daneben: mehr als ${rich} % fetter oder ${lean} % magerer als das Minimum (unsere eigenen Arbeitswerte). Vor der Nacht bei jeder Leistung eines davon einstellen:`,
      nearOut: (end, night) =>
        `${end}: Nur wenig magerer ging die Flamme aus, und bei ${night} läuft die Heizung noch magerer. Stell lieber eines davon ein, als es so zu lassen:`,
      well: "So lassen.",
      worked:
        "Aus der Luftdichte berechnet, nicht gemessen. Wenn möglich in der kalten Luft im Freien noch einmal ablesen, und zurückstellen, wenn es wärmer wird.",
    },
    shareTitle: "Diese Abstimmung teilen",
    shareIntro:
      "So, wie sie oben steht, mit Messgerät, Luft, Monat und wie du darauf gekommen bist. Du musst nichts neu tippen.",
    sharePlace:
      "Auch den Ort senden, als Mitte einer Kartenzelle von etwa 250 km²; nichts Genaueres verlässt diesen Browser.",
    wrong: "So lässt sie sich nicht teilen:",
    inShare: "Unter „Teilen“ ansehen",
    receiptKept: "Der Beleg ist beim Eintrag im Logbuch und unter „Teilen“ gespeichert.",
    receiptNotKept: "Dieser Browser konnte den Beleg nicht speichern. Jetzt kopieren:",
    anew: "Eine neue Suche beginnen",
    keepShown: "Diese Suche weiter anzeigen",
    heaterName: "Ohne Namen",
    span: (lower, upper) => `${lower} bis ${upper}`,
    verdicts: {
      good: "wie erwartet",
      high: "wie erwartet, aber hoch",
      poor: "schlecht",
      unseen: "nicht zu sehen",
    },
  },
};
