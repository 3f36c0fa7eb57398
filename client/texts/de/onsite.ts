/** Words of the On site view, in German. */
export const onsite: typeof import("../en/onsite.ts").onsite = {
  title: "Vor Ort: das Minimum finden",
  intro:
    "Eine geführte Suche an jedem Ende des Leistungsbereichs, der Lüfter wie er ist: einstellen, warten, ablesen, bis CO am niedrigsten ist. Alles wird hier gerechnet; es braucht kein Netz, und jeder Druck wird behalten.",
  notKept: "Dieser Browser behält nicht, was Sie drücken: Neuladen würde die Suche verlieren.",
  prepare: {
    basis: "Ort, Luft, Heizung",
    nightWhy: "Der kommenden Nacht: Am Ende steht, wie die Abstimmung zu ihr passt.",
    air: "Luft jetzt",
    temperatureNow: "Temperatur jetzt",
    airNow:
      "Dort, wo die Heizung ihre Luft ansaugt. Sie zählt so viel wie die Höhe; bleibt sie leer, gilt die Normatmosphäre.",
    start: (low, high) =>
      `Die Suche beginnt bei diesen Pumpenfrequenzen, wo die Heizung läuft, und sucht um ${low} Hz und ${high} Hz.`,
    before: "Wie es jetzt eingestellt ist",
    beforeWhy:
      "Hier beginnt die Suche, und sie geht in kleinen Schritten weiter. Wenn Sie sie verlassen, stellen Sie darauf zurück.",
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
    lagHint: "Eine Schätzung genügt: danach richtet sich nur, wie lange Sie warten.",
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
  guards: (lean, rich) => `Grenzen: ${lean}–${rich} Hz.`,
  progress: {
    step: (step, most) => `Schritt ${step} von höchstens ${most}.`,
    lean: {
      rose: "Magerer: CO stieg ✓.",
      open: "Magerer: noch kein Anstieg.",
      "flame-out": "Magerer: die Flamme ging aus.",
      limit: "Magerer: Grenze erreicht.",
    },
    rich: {
      rose: "Fetter: CO stieg ✓.",
      open: "Fetter: noch kein Anstieg.",
      "flame-out": "Fetter: die Flamme ging aus.",
      limit: "Fetter: Grenze erreicht.",
    },
  },
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
      start: "Dort beginnen, wo die Pumpe jetzt steht.",
      leaner: "Etwas magerer.",
      richer: "Etwas fetter.",
      between: "Zwischen zwei Ablesungen, wo CO noch niedriger sein kann.",
      "on the way": "Auf dem Weg dorthin, denn die Pumpe wird nur in kleinen Schritten verstellt.",
      confirm: "Bestätigen: noch eine Ablesung dort, wo die Pumpe bleiben soll.",
      spike: "CO ist hochgeschossen: sofort zurück.",
      "flame-out":
        "Zurück dorthin, wo die Heizung lief. Die Frequenz, bei der die Flamme ausging, ist zu mager und wird nicht mehr versucht.",
      wait: "Die Zahl steht noch nicht still: bei derselben Frequenz noch einmal ablesen.",
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
    early:
      "Es zählt, wenn die Zahl stillsteht: zwei Ablesungen, die übereinstimmen, oder eine, bei der Sie zugesehen haben.",
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
    label: "Diagramm der Ablesungen: CO über der Pumpenfrequenz.",
    first: "Noch keine Ablesung.",
    lowest: (co, rate) => `Bisher am niedrigsten: ${co} ppm bei ${rate} Hz.`,
    lowestBelow: (floor, rate) => `Bisher am niedrigsten: unter ${floor} ppm bei ${rate} Hz.`,
    next: (rate) => `als Nächstes: ${rate}`,
    keyLine: "Ablesungen, verbunden",
    keyBetween: "außerhalb davon ist CO deutlich höher",
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
  ended: {
    found: {
      title: (end) => `${end}: gefunden`,
      minimum: (rate, lower, upper) =>
        `Am niedrigsten ist CO bei etwa ${rate} Hz: bei ${lower} und bei ${upper} Hz war es deutlich höher.`,
    },
    "not bracketed": {
      title: (end) => `${end}: beste abgelesene Frequenz, kein Minimum gesehen`,
      means:
        "CO stieg nicht auf beiden Seiten dieser Frequenz. Sie ist die beste der abgelesenen, kein gemessenes Minimum: weiter draußen kann CO niedriger sein.",
      lean: {
        rose: () => "Magerer: CO stieg.",
        "flame-out": () => "Magerer: die Flamme geht aus, bevor CO steigt.",
        limit: (rate) =>
          `Magerer: bei ${rate} Hz, der letzten Frequenz innerhalb der Grenzen, war CO nicht deutlich gestiegen. Sind Drehzahlen, Ort und Luft richtig eingegeben, ist diese Heizung anders als die meisten.`,
        open: (rate) =>
          `Magerer: bei ${rate} Hz waren die Schritte zu Ende, bevor CO deutlich stieg.`,
      },
      rich: {
        rose: () => "Fetter: CO stieg.",
        "flame-out": () => "Fetter: die Flamme geht aus, bevor CO steigt.",
        limit: (rate) =>
          `Fetter: bei ${rate} Hz, der letzten Frequenz innerhalb der Grenzen, war CO nicht deutlich gestiegen. Sind Drehzahlen, Ort und Luft richtig eingegeben, ist diese Heizung anders als die meisten.`,
        open: (rate) =>
          `Fetter: bei ${rate} Hz waren die Schritte zu Ende, bevor CO deutlich stieg.`,
      },
      changed:
        "Die Ablesungen bei dieser Frequenz haben sich unterwegs geändert: Wind, Aufwärmen oder ein Messgerät, dessen Anzeige wandert. Darum gilt keine davon als Minimum.",
      now: "Vorläufig können Sie damit heizen, wenn die Flamme ruhig ist.",
      further: "Um weiter zu suchen, beginnen Sie dieses Ende neu: es geht von hier aus weiter.",
    },
    "below floor": {
      title: (end) => `${end}: unter dem, was dieses Messgerät zeigt`,
      means: (floor, lower, upper) =>
        lower === upper
          ? `Bei ${lower} Hz liegt CO unter der Anzeigeschwelle Ihres Messgeräts von ${floor} ppm.`
          : `Von ${lower} bis ${upper} Hz liegt CO unter der Anzeigeschwelle Ihres Messgeräts von ${floor} ppm.`,
      middle: "Die Mitte dieses Bereichs ist eine vernünftige Wahl, kein gemessenes Minimum.",
      suggested:
        "Wie weit dieser Bereich reicht, war nicht zu sehen. Die Starteinstellung oder die Frequenz darin, die ihr am nächsten liegt, ist eine vernünftige Wahl, kein gemessenes Minimum.",
      now: (floor) =>
        `Unter ${floor} heißt nicht 0. Für ein Minimum beginnen Sie dieses Ende neu, mit dem Messgerät näher am Auspuff oder mit einem, das kleinere Werte zeigt.`,
    },
    "above scale": {
      title: (end) => `${end}: über dem Messbereich`,
      means: (ceiling) =>
        `Alle Ablesungen liegen über dem, was dieses Messgerät zeigt (${ceiling} ppm), darum kann es kein Minimum angeben. Lassen Sie die Pumpe bei dieser Frequenz, rücken Sie das Messgerät weiter vom Auspuff weg und beginnen Sie neu. Bleibt es so, lassen Sie die Heizung prüfen.`,
    },
    goOn: "Hier ohne Minimum weiter",
  },
  found: {
    leave: "Die Pumpe lassen auf",
    shown: (co) => `Dort kam die Anzeige bei ${co} zur Ruhe.`,
    flat: (lower, upper) =>
      `Von ${lower} bis ${upper} Hz ist CO gleich, soweit das Messgerät es unterscheiden kann.`,
    seat: {
      low: "Die gewählte Frequenz liegt darin zum fetten Rand hin, wo eine kleine Flamme ruhiger brennt.",
      high: "Die gewählte Frequenz liegt darin auf der mageren Seite der Mitte, weg vom Ruß.",
    },
    besideFlameOut: (rate) =>
      `Bei ${rate} Hz, nur wenig magerer, ging die Flamme aus. Bei Wind oder in einer kälteren Nacht kann sie auch hier ausgehen: dann die Pumpe einen Schritt fetter stellen.`,
    practice:
      "Ein End-CO unter 30 ppm nahe am Auspuff ist üblich, 7–15 ppm gut (gängige Praxis, keine Quelle). Ein anderes Gerät oder eine andere Stelle zeigt eine andere Zahl.",
    nextHigh: "Weiter zum oberen Ende",
    nextCheck: "Weiter zu den Proben",
    again: "Dieses Ende neu beginnen",
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
    good: (co) => `${co}: wie nach den Enden zu erwarten.`,
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
    titleSet: "Beide Enden eingestellt",
    end: "Ende",
    pump: "Pumpe, Hz",
    fan: "Lüfter, U/min",
    co: "End-CO, ppm",
    minimum: "CO am niedrigsten zwischen, Hz",
    none: "kein Minimum gesehen",
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
    night: {
      title: "In der Luft der kommenden Nacht",
      temperature: "Nachttemperatur",
      type: "Tippen Sie, wie kalt die Nacht wird: Kalte Luft ist dichter, und dieselben Einstellungen laufen in ihr magerer.",
      air: (night, size, now) =>
        `Bei ${night} ist die Luft ${size} als bei den ${now}, in denen Sie abgestimmt haben.`,
      same: (night, now) =>
        `Bei ${night} ist die Luft so dicht wie bei den ${now}, in denen Sie abgestimmt haben, auf ein halbes Prozent.`,
      denser: (pct) => `${pct} % dichter`,
      thinner: (pct) => `${pct} % dünner`,
      assumed: (now) =>
        `Beim Abstimmen haben Sie keine Temperatur angegeben: Angenommen sind ${now} der Normatmosphäre, das ist also geschätzt.`,
      asIs: "So gelassen",
      pump: "Pumpe stellen auf, Hz",
      fan: "Oder Lüfter auf, U/min",
      fanUsual: "Oder der Lüfter",
      richer: (pct) => `${pct} % fetter`,
      leaner: (pct) => `${pct} % magerer`,
      none: "keine Verschiebung",
      faster: (pct) => `${pct} % schneller`,
      slower: (pct) => `${pct} % langsamer`,
      fanEnds: "mehr, als er kann",
      unchanged: "bleibt",
      stay: (rich, lean) =>
        `Es kann so bleiben: bis ${rich} % fetter oder ${lean} % magerer als das Beste ist unser eigenes Arbeitsfenster. Damit CO auch in der Nacht am niedrigsten ist, stellen Sie eines davon ein:`,
      tight: (room, rich, lean) =>
        `Es kann so bleiben, aber knapp: ${room} % bleiben bis zum Rand unseres eigenen Arbeitsfensters (${rich} % fetter bis ${lean} % magerer als das Beste). Stellen Sie besser an jedem Ende eines davon ein:`,
      set: (rich, lean) =>
        `Zu weit: mehr als ${rich} % fetter oder ${lean} % magerer als das Beste (unser eigenes Arbeitsfenster). Stellen Sie vor der Nacht an jedem Ende eines davon ein:`,
      well: "Lassen Sie es so.",
      worked:
        "Aus der Dichte der Luft gerechnet, nicht gemessen. Lesen Sie das Messgerät wenn möglich in der kalten Luft im Freien noch einmal ab, und stellen Sie zurück, wenn es wärmer wird.",
    },
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
    verdicts: {
      good: "wie erwartet",
      high: "wie erwartet, aber hoch",
      poor: "schlecht",
      unseen: "nicht zu sehen",
    },
  },
};
