/** Words of the On site view, in German. */
export const onsite: typeof import("../en/onsite.ts").onsite = {
  title: "Vor Ort: das Minimum finden",
  intro:
    "Eine geführte Suche an jedem Ende des Leistungsbereichs, der Lüfter wie er ist: einstellen, warten, ablesen, bis CO am niedrigsten ist. Alles wird hier gerechnet; es braucht kein Netz, und jeder Druck wird behalten.",
  notKept: "Dieser Browser behält nicht, was Sie drücken: Neuladen würde die Suche verlieren.",
  prepare: {
    basis: "Ort, Luft, Heizung",
    airNow: "Gemeint ist die Temperatur der Luft jetzt, dort wo die Heizung sie ansaugt.",
    start: (low, high) => `Die Suche beginnt bei etwa ${low} Hz und ${high} Hz.`,
    before: "Wie es jetzt eingestellt ist",
    beforeWhy: "Nötig, um alles zurückzustellen, wenn Sie die Suche verlassen.",
    lowBefore: "Pumpenfrequenz jetzt, unteres Ende, Hz",
    highBefore: "Pumpenfrequenz jetzt, oberes Ende, Hz",
    fanWhy:
      "Lüfterdrehzahlen, wie sie jetzt eingestellt sind: die Suche ändert nur die Pumpe. Bleiben sie leer, gelten die üblichen der Heizklasse.",
    step: "Kleinster Schritt der Pumpenfrequenz, Hz",
    heater: "Heizung im Logbuch",
    supply: "Versorgungsspannung, V (freiwillig)",
    meter: "Messgerät am Auspuff",
    meterWhy:
      "Die Art füllt ein, was solche Geräte meist zeigen (gängige Praxis, keine Quelle): das Blatt des Geräts weiß es besser.",
    kind: "Art des Messgeräts",
    resolution: "Kleinster Unterschied, den es zeigt, ppm",
    floor: "Es zeigt nichts unter, ppm",
    floorHint:
      "0, wenn es jede Zahl zeigt. Viele Raumwarner zeigen unter 30 nichts: das ist nicht 0.",
    ceiling: "Es zeigt nichts über, ppm",
    lag: "Wie träge es ist: Sekunden bis zum größten Teil einer Änderung",
    lagHint: "Eine Schätzung genügt: die Ablesungen berichtigen sie.",
    distance: "Abstand von der Auspuffmündung, m",
    distanceHint:
      "Etwa 0,3 m ist gängige Praxis (keine Quelle). Für jede Ablesung dieselbe Stelle.",
    missing: "Das wird gebraucht.",
    range: (least, most) => `Bitte von ${least} bis ${most}.`,
    ends: "Das obere Ende muss über dem unteren liegen.",
    cannot:
      "Aus diesen Zahlen lässt sich die Startabstimmung nicht rechnen. Prüfen Sie Drehzahlen und Druck.",
    fix: "Oben ist noch etwas zu berichtigen.",
    begin: "Zur Prüfliste",
  },
  guards: (lean, rich) => `Grenzen: nichts magerer als ${lean} Hz, nichts fetter als ${rich} Hz.`,
  checklist: {
    title: "Vor dem Zünden",
    intro: "Jede Zeile angesehen, dann abgehakt.",
    checks: {
      air: "Das Fahrzeug steht im Freien, seine Türen sind offen, und niemand schläft darin.",
      alarm:
        "Drinnen ist ein eigener geprüfter Kohlenmonoxid-Warner, und seine Prüftaste wurde eben gedrückt. Er ist nicht das Messgerät am Auspuff.",
      exhaust:
        "Auspuff und Luftansaugung sind dicht, frei und weit genug auseinander: die Heizung saugt nicht ihr eigenes Abgas an.",
      meter:
        "Das Messgerät zeigt an frischer Luft nichts und ist nahe am Auspuff befestigt, nicht darin: außerhalb des heißen Strahls, immer an derselben Stelle.",
      fuel: "Kraftstoff für eine Stunde bei voller Leistung; nicht nachfüllen, solange etwas heiß ist.",
      supply:
        "Die Versorgung hält unter Last ihre Spannung: eine schwache Batterie verstellt Lüfter und Pumpe.",
    },
    hot: "Der Auspuff wird heiß genug, um Haut zu verbrennen und trockenes Gras zu entzünden. Zum Aufhören die Heizung von selbst abkühlen lassen: nicht den Strom trennen.",
    maker:
      "Das Handbuch des Herstellers geht vor. Manche zugelassenen Einbauten dürfen gar nicht verändert werden.",
    light: "Die Heizung brennt",
    tickAll: "Erst jede Zeile abhaken.",
  },
  warmUp: {
    title: "Warm werden",
    why: "Lassen Sie sie am unteren Ende laufen. Ablesungen eines kalten Brenners sagen nichts.",
    left: "Noch",
    over: "Warm. Beginnen Sie am unteren Ende.",
    begin: "Das untere Ende beginnen",
    already: "Sie ist schon warm",
  },
  step: {
    title: (end) => `${end}: nächster Schritt`,
    titleWait: (end) => `${end}: warten, dann ablesen`,
    settling: "Flamme und Messgerät zur Ruhe kommen lassen.",
    set: "Die Pumpe einstellen auf",
    keep: "Die Pumpe bleibt auf",
    why: {
      start: "Hier beginnen.",
      leaner: "Etwas magerer.",
      richer: "Fetter.",
      confirm: "Noch eine Ablesung dort, wo die Pumpe bleiben soll, bevor es zählt.",
      spike: "CO ist hochgeschossen: sofort zurück, und nicht fetter als vorher.",
      "flame-out": "Fetter, nachdem die Flamme ausging. Jene Frequenz ist als zu mager vermerkt.",
      wait: "Noch nicht zur Ruhe gekommen: bei derselben Frequenz noch einmal ablesen.",
    },
    isSet: "Ist eingestellt",
    thenWait: (span) => `Dann ${span} warten.`,
    readIn: "Ablesen in",
    readNow: "Jetzt das Messgerät ablesen",
    reading: "Das Messgerät zeigt, ppm",
    take: "Ablesung übernehmen",
    below: (floor) => `Zeigt nichts: unter ${floor}`,
    above: (ceiling) => `Über seinem Bereich: über ${ceiling}`,
    still: "Die Zahl steht seit einer halben Minute still",
    noReading: "Tippen Sie, was das Messgerät zeigt, oder drücken Sie, was es nicht zeigen kann.",
    outOfScale: (ceiling) => `Bitte von 0 bis ${ceiling} ppm.`,
    early: "Sie können früher ablesen: die Suche sagt, ob es zählt.",
    out: "Die Flamme ist ausgegangen",
    undo: "Letzten Druck zurücknehmen",
    leave: "Die Suche verlassen",
    leaveSure: "Verlassen und zeigen, was zurückzustellen ist",
    stay: "Weiter suchen",
    seconds: (n) => `${n} s`,
    minutes: (n) => `${n} min`,
  },
  chart: {
    title: "CO über der Pumpenfrequenz",
    x: "Pumpenfrequenz, Hz",
    y: "CO am Messgerät, ppm",
    label: (minimum, lower, upper) =>
      `Diagramm: das Minimum liegt bei ${minimum} Hz, mit 95 % zwischen ${lower} und ${upper} Hz.`,
    first:
      "Noch keine Ablesung: bekannt sind nur die Bänder der Startabstimmung. Die Kurve wird von der ersten Ablesung an gezeichnet.",
    estimate: (minimum, lower, upper) =>
      `Soweit bekannt, liegt das Minimum bei ${minimum} Hz (95 %: ${lower} bis ${upper} Hz).`,
    lag: (seconds) =>
      `Das Messgerät braucht etwa ${seconds} s für den größten Teil einer Änderung.`,
    next: (rate) => `als Nächstes: ${rate}`,
    keyCurve: "was angenommen wird",
    keyBand: "80 % davon",
    keyMinimum: "Minimum, 95 %",
    keyNext: "nächste Einstellung",
    readings: "Ablesungen",
    rate: "Pumpenfrequenz, Hz",
    co: "CO, ppm",
    time: "Nach dem Einstellen",
    flameOut: "Flamme aus",
    belowIs: (floor) => `unter ${floor}`,
    aboveIs: (ceiling) => `über ${ceiling}`,
    settled: "stand still",
    none: "Noch keine.",
  },
  found: {
    title: (end) => `${end}: gefunden`,
    leave: "Die Pumpe lassen auf",
    shown: (co) => `Dort kam das Messgerät bei ${co} zur Ruhe.`,
    minimum: (rate, lower, upper) =>
      `Das Minimum liegt bei ${rate} Hz (95 %: ${lower} bis ${upper} Hz).`,
    flat: (lower, upper) =>
      `Von ${lower} bis ${upper} Hz ist CO gleich, soweit das Messgerät es unterscheiden kann.`,
    seat: {
      low: "Die gewählte Frequenz liegt darin zum fetten Rand hin, wo eine kleine Flamme ruhiger brennt.",
      high: "Die gewählte Frequenz liegt darin auf der mageren Seite der Mitte, weg vom Ruß.",
    },
    belowFloor:
      "Der Grund liegt unter dem, was dieses Messgerät zeigt, und ist nur von den Seiten her bekannt. Das ist nicht 0.",
    noLean:
      "Auf der mageren Seite stieg CO nicht sichtbar: dort hat die magere Grenze die Suche beendet.",
    noRich: "Auf der fetten Seite stieg CO nicht sichtbar.",
    disagrees:
      "Die bestätigende Ablesung liegt weit über dem, was die Suche erwarten ließ. Unterwegs hat sich etwas geändert: Wind, Wärme, die Stelle des Messgeräts. Beginnen Sie dieses Ende neu.",
    practice:
      "Ein End-CO unter 30 ppm nahe am Auspuff ist üblich, 7–15 ppm gut (gängige Praxis, keine Quelle). Ein anderes Gerät oder eine andere Stelle zeigt eine andere Zahl.",
    nextHigh: "Weiter zum oberen Ende",
    nextCheck: "Weiter zu den Proben",
    again: "Dieses Ende neu beginnen",
    anyway: "Trotzdem nehmen",
  },
  unseen: {
    title: (end) => `${end}: kein Minimum zu sehen`,
    below: (floor) =>
      `Alles Versuchte liegt unter dem, was dieses Messgerät zeigt (${floor} ppm), darum kann es kein Minimum angeben. Das ist nicht 0. Lassen Sie die Pumpe bei dieser Frequenz, oder beginnen Sie neu mit dem Gerät näher am Auspuff oder einem, das weniger zeigt.`,
    above: (ceiling) =>
      `Alles Versuchte liegt über dem, was dieses Messgerät zeigt (${ceiling} ppm), darum kann es kein Minimum angeben. Stellen Sie die Pumpe auf diese Frequenz zurück, rücken Sie das Gerät weiter vom Auspuff weg und beginnen Sie neu. Bleibt es so, lassen Sie die Heizung ansehen.`,
    noted: "Es wird als unter der Schwelle vermerkt, ohne Minimum.",
    goOn: "Hier ohne Minimum weiter",
  },
  check: {
    title: { middle: "Probe in der Mitte", full: "Probe bei voller Leistung" },
    why: {
      middle:
        "Eine Steuerung läuft geradlinig zwischen den Enden, also stehen auf halbem Weg auch Pumpe und Lüfter halb, und CO liegt zwischen dem der beiden Enden.",
      full: "Noch einmal auf volle Leistung: CO muss dahin zurückkommen, wo das obere Ende zur Ruhe kam.",
    },
    setTo: {
      middle: "Leistung in die Mitte zwischen den Enden stellen",
      full: "Volle Leistung einstellen",
    },
    is: (pump, fan) => `dort läuft die Pumpe mit etwa ${pump} Hz, der Lüfter mit ${fan} U/min`,
    expect: (co, upper) => `Erwartet werden etwa ${co} ppm; über ${upper} ist schlecht.`,
    expectBelow: (upper) => `Über ${upper} ppm ist schlecht.`,
    good: (co) => `${co}: wie es sein soll.`,
    unseen: "Das Messgerät zeigt hier nichts: nichts spricht dagegen, und nichts dafür.",
    poor: (co) => `${co}: deutlich mehr als an den Enden.`,
    poorMeans: {
      middle:
        "Entweder läuft die Steuerung nicht gerade zwischen den Enden, oder ein Ende steht nicht, wo es abgestimmt wurde. Verschieben Sie kein Ende zum Ausgleich: Lesen Sie erst beide Enden noch einmal ab. Bleibt die Mitte schlecht, nutzen Sie die Leistungen nahe den Enden und lassen Sie die Heizung ansehen.",
      full: "Das obere Ende hält nicht: es war nicht zur Ruhe gekommen, oder etwas hat sich geändert. Lesen Sie noch einmal ab, oder beginnen Sie das obere Ende ein andermal neu. Bleibt es schlecht, lassen Sie die Heizung ansehen.",
    },
    readAgain: "Noch einmal ablesen",
    skip: "Diese Probe auslassen",
    next: "Weiter zur vollen Leistung",
    finish: "Fertig",
    skipped: "ausgelassen",
  },
  relight: {
    title: "Die Flamme ist aus",
    cool: "Lassen Sie die Heizung von selbst abkühlen. Nicht den Strom trennen. Der Auspuff ist heiß; unverbrannter Kraftstoff kann qualmen.",
    richer: (rate) => `Dann die Pumpe fetter stellen, auf ${rate} Hz, und noch einmal zünden.`,
    same: "Dann noch einmal zünden.",
    rule: (left) =>
      left === 1
        ? "Ein Versuch bleibt; danach gilt nur noch das Handbuch des Herstellers."
        : `Höchstens ${left} Zündversuche; danach gilt nur noch das Handbuch des Herstellers.`,
    attempt: "Sie ist abgekühlt: ich zünde jetzt",
    burns: "Sie brennt",
    noLight: "Sie zündet nicht",
  },
  stopped: {
    alarm: {
      title: "Draußen bleiben",
      lines: [
        "Niemand geht wieder hinein: nicht wegen der Ursache, nicht wegen der Heizung, nicht wegen Sachen.",
        "Kopfschmerz, Schwindel, Übelkeit, oder jemand fehlt: Sagen Sie es beim Notruf. Gehen Sie zum Arzt, auch wenn es vorübergeht.",
        "Schalten Sie die Heizung nur aus, wenn das von draußen geht. Lassen Sie sie von selbst abkühlen.",
        "Niemand zündet sie oder schläft dort, bevor die Luft rein und der Warner still ist und jemand, der solche Heizungen kennt, die Ursache gefunden hat.",
      ],
      number: "Notrufnummer zeigen",
      sweepEnded: "Der Alarm hat die Suche beendet.",
      later: "Später: Einstellungen zurückstellen",
      onlyThen: "Erst wenn die Luft rein und die Ursache gefunden ist.",
      areBack: "Sie sind zurückgestellt",
      endSweep: "Diese Suche beenden",
      notYet: "Noch nicht",
      mistaken: "Das war ein Versehen",
      mistakenSure: "Ja: kein Alarm, und drinnen wurde nichts abgelesen",
    },
    flame: {
      title: "Kein weiterer Versuch",
      lines: [
        "Die Flamme ging zu oft aus oder kam nicht wieder. Lassen Sie die Heizung von selbst abkühlen; nicht den Strom trennen.",
        "Von hier an gilt das Handbuch des Herstellers, oder lassen Sie die Heizung ansehen.",
      ],
    },
    abort: {
      title: "Die Suche ist verlassen",
      lines: [
        "Nichts wird als Abstimmung behalten. Lassen Sie die Heizung zur Ruhe kommen oder von selbst abkühlen; nicht den Strom trennen.",
      ],
    },
    putBack: "Einstellungen zurückstellen",
    fanKept:
      "Wie Sie sie vor der Suche angegeben haben. Sie hat nur die Pumpe verstellt: Der Lüfter ist, wie er war.",
    fan: "Lüfterdrehzahl, U/min",
    pump: "Pumpenfrequenz, Hz",
    resume: "Zurück zur Suche",
    anew: "Eine neue Suche beginnen",
    anewSure: "Ja: diese vergessen",
  },
  done: {
    title: "Beide Enden gefunden",
    end: "Ende",
    pump: "Pumpe, Hz",
    fan: "Lüfter, U/min",
    co: "End-CO, ppm",
    minimum: "Minimum, 95 %, Hz",
    none: "nicht gesehen",
    settled: "Ablesungen",
    before: "vorher, Hz",
    checks: "Proben",
    logged: "Im Logbuch behalten.",
    notLogged:
      "Das Logbuch konnte es nicht behalten: der Speicher ist vielleicht voll oder gesperrt.",
    retry: "Noch einmal versuchen",
    openLogbook: "Logbuch öffnen",
    recheck:
      "Es gilt für diese Heizung, diesen Ort, diese Luft. Prüfen Sie es nach 500 m oder 15 °C wieder (unsere eigenen Arbeitswerte).",
    shareTitle: "Diese Abstimmung teilen",
    shareIntro: "So wie sie oben steht, mit Messgerät, Luft und Monat. Nichts wird neu getippt.",
    sharePlace:
      "Auch den Ort senden, als Mitte einer Kartenzelle von etwa 250 km²; nichts Genaueres verlässt diesen Browser.",
    wrong: "So lässt sie sich nicht teilen:",
    inShare: "Unter Teilen ansehen",
    receiptKept: "Der Beleg ist beim Eintrag im Logbuch und unter Teilen behalten.",
    receiptNotKept: "Dieser Browser konnte den Beleg nicht behalten. Jetzt kopieren:",
    anew: "Eine neue Suche beginnen",
    keepShown: "Diese noch zeigen",
    heaterName: (kW) => `Heizung ${kW} kW`,
    span: (lower, upper) => `${lower} bis ${upper}`,
    over: "über dem Bereich des Messgeräts",
    verdicts: { good: "wie es sein soll", poor: "schlecht", unseen: "nicht zu sehen" },
  },
};
