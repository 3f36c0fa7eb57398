/** Wörter zur eigenen Heizung: die Zeile über jeder Ansicht, und was sie zur Antwort beiträgt. */
export const heaterWords = {
  line: {
    mine: "Meine Heizung",
    none: "Keine Heizung gewählt",
    fans: (low: string, high: string) => `Lüfter ${low} und ${high} U/min`,
    usual: (low: string, high: string) => `üblicher Lüfter, ${low} und ${high} U/min`,
    own: (n: number) =>
      n === 0
        ? "keine eigene Abstimmung"
        : n === 1
          ? "1 eigene Abstimmung"
          : `${n} eigene Abstimmungen`,
    choose: "Heizung",
    average: "Mittlere Heizung, üblicher Lüfter",
    intro:
      "Jede Ansicht nimmt Größe, Lüfter, Kraftstoff je Takt und Messgerät von der hier gewählten Heizung. Sie bleibt in diesem Browser.",
  },
  step: "Kleinster Schritt der Pumpenfrequenz, Hz (freiwillig)",
  fanStep: "Kleinster Schritt der Lüfterdrehzahl, U/min (freiwillig)",
  settings: {
    add: "Meine jetzigen Einstellungen eingeben",
    title: "Meine jetzigen Einstellungen",
    how: "Wie wurden sie gefunden?",
    meter: "Mit einem CO-Messgerät: abgestimmt, bis CO am niedrigsten war",
    guess: "Werkseinstellungen oder geschätzt",
    meterWhy: "Daraus wird eine eigene Abstimmung: Antworten für deine Heizung werden genauer.",
    guessWhy:
      "Du siehst, wie die Heizung damit anderswo liefe. Die Antwort ändert sich dadurch nicht.",
    keep: "Diese Einstellungen speichern",
    kept: "Gespeichert. Die Antwort zeigt, wie die Heizung damit liefe.",
  },
  meterKinds: {
    "room alarm": "CO-Melder",
    "portable meter": "Handmessgerät",
    "flue analyser": "Abgasmessgerät",
    other: "anderes",
  },
  fromMine: (name: string) => `Größe, Lüfter und Kraftstoff je Takt wie für „${name}“ gespeichert.`,
  lead: {
    right: "Unverändert liefe deine Heizung hier etwa richtig.",
    one: (shift: string) => `Unverändert liefe deine Heizung hier ${shift}`,
    both: (low: string, high: string) =>
      `Unverändert liefe deine Heizung hier bei kleinster Leistung ${low} und bei größter ${high}`,
    rich: (pct: string) => `${pct} % zu fett`,
    lean: (pct: string) => `${pct} % zu mager`,
    even: "etwa richtig",
    richMeans: "Ruß, mehr Kohlenmonoxid, mehr Verbrauch",
    leanMeans: "weniger Wärme, schlechter Start, und die Flamme kann ausgehen",
    bothMean: "Ruß, mehr Kohlenmonoxid, und die Flamme kann ausgehen",
    since: (date: string) => `Einstellungen vom ${date}.`,
  },
  best: (low: string, high: string) =>
    `Beste Einstellung, in 8 von 10 Fällen: ${low} Hz bei kleinster Leistung, ${high} Hz bei größter.`,
  basis: {
    own: (tunes: string, owners: string, own: number, mine: string, others: string) =>
      `Aus ${tunes} Abstimmungen von ${owners} Besitzern und ${own} eigenen: ±${mine} % statt ±${others} %.`,
    ownAlone: (own: number, mine: string, others: string) =>
      `Aus ${own === 1 ? "1 eigenen Abstimmung" : `${own} eigenen Abstimmungen`} und einer physikalischen Schätzung: ±${mine} % statt ±${others} %.`,
  },
  aside: {
    of: (date: string) => `Deine Abstimmung vom ${date} zählt nicht.`,
    ofEnd: (date: string, end: string) => `Deine Abstimmung vom ${date} zählt nicht bei: ${end}.`,
    richer:
      "Sie ist viel fetter als erwartet. Pumpenfrequenz, Lüfterdrehzahl, Höhe und Heizungsgröße prüfen.",
    leaner:
      "Sie ist viel magerer als erwartet. Pumpenfrequenz, Lüfterdrehzahl, Höhe und Heizungsgröße prüfen.",
    apart:
      "Sie ist bei einer Leistung viel fetter als erwartet, bei der anderen viel magerer. Pumpenfrequenzen, Lüfterdrehzahlen, Höhe und Heizungsgröße prüfen.",
    slip: (figures: string) => `Sie sieht vertippt aus: ${figures}. Im Logbuch berichtigen.`,
    figures: {
      pump_Hz: "Pumpenfrequenz",
      fan_rpm: "Lüfterdrehzahl",
      elevation_m: "Höhe",
      temperature_C: "Temperatur",
      pressure_hPa: "Luftdruck",
      dose_uL: "Kraftstoff je Takt",
    },
    contradict: (dates: string, end: string) =>
      `Deine Abstimmungen vom ${dates} widersprechen sich bei: ${end}. Abstimmungen einer Heizung liegen selten so weit auseinander. Die Zahlen prüfen; bis eine weitere zeigt, welche stimmt, ist die Spanne breit.`,
    and: "und",
  },
  near: {
    title: "Abstimmungen in ähnlicher Luft",
    columns: [
      "Hz",
      "Höhe",
      "Temperatur",
      "Gegenüber dem Mittel",
      "U/min",
      "CO in ppm",
      "Monat",
      "Zeigen",
    ],
    none: (kW: string) => `Noch hat niemand eine Abstimmung einer ${kW}-kW-Heizung geteilt.`,
    offline:
      "Der Atlas ist nicht erreichbar: Abstimmungen in ähnlicher Luft werden nicht angezeigt.",
    loading: "Abstimmungen in ähnlicher Luft werden gesucht …",
    pair: (low: string, high: string) => `${low} / ${high}`,
    unknown: "–",
    rich: (pct: string) => `${pct} % fetter`,
    lean: (pct: string) => `${pct} % magerer`,
    even: "gleich",
    map: "Karte",
    chart: "Diagramm",
    onMap: (set: string, place: string) => `${set} Hz auf ${place}: auf der Karte zeigen`,
    inChart: (set: string, place: string) => `${set} Hz auf ${place}: im Diagramm zeigen`,
    note: "Kleinste / größte Leistung, die ähnlichste Luft zuerst. CO verschiedener Messgeräte ist nicht vergleichbar.",
  },
};
