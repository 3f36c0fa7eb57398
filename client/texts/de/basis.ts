/** What an answer rests on, in German. */
export const basisWords: typeof import("../en/basis.ts").basisWords = {
  title: "Grundlage",
  tunes: (tunes: string, contributors: string, kW: string) =>
    `${tunes} Abstimmungen von ${contributors} Besitzern einer Heizung mit ${kW} kW.`,
  prior: (kW: string) =>
    `Noch keine Abstimmungen von Heizungen mit ${kW} kW: nur eine Schätzung aus Physik und gängiger Praxis, darum sind die Spannen breit.`,
  range: (from: string, to: string) => `Abgestimmt in Luft von ${from} bis ${to} kg/m³.`,
  extrapolated:
    "In solcher Luft hat noch niemand abgestimmt. Das ist hochgerechnet: den Spannen weniger trauen.",
  inside: "Die Luft hier liegt darin.",
  fit: (version: string, age: string) => `Auswertung ${version}, ${age}.`,
  priorFit: "Noch keine Auswertung veröffentlicht.",
  ages: {
    now: "eben veröffentlicht",
    minutes: (n: number) => `${n} min alt`,
    hours: (n: number) => `${n} h alt`,
    days: (n: number) => `${n} Tage alt`,
  },
  air: (density: string, ratio: string, altitude: string) =>
    `Luft ${density} kg/m³, ${ratio} der Normluft auf Meereshöhe: wie auf ${altitude} an einem Normtag.`,
  assumed: { temperature: "Temperatur", pressure: "Druck", humidity: "Luftfeuchte" },
  assumes: (what: string) => `Aus der Normatmosphäre oder üblichen Werten angenommen: ${what}.`,
  waysTitle: "Zwei Wege dorthin",
  way: "Weg",
  heatLeft: "Wärme, verglichen mit Meereshöhe",
  keepFan: "Gleicher Lüfter",
  keepHeat: "Gleiche Wärme",
  fanMakesUp:
    "Die Tabelle rundet die Pumpenfrequenz und lässt den Lüfter, wie er ist. Die Antwort oben stellt auch den Lüfter nach: Das gleicht den Schritt der Pumpe aus.",
  fanShort: (limit: string) =>
    `Der Lüfter schafft höchstens etwa ${limit} U/min: Die volle Wärme ist hier nicht möglich.`,
  figures: "Alle Zahlen",
  exact: (hz) => `genau ${hz} Hz`,
  mean: "Mittlere Abstimmung",
  meanBand: (level) => `mittlere Heizung, zu ${level} % sicher`,
  heaters: (level) => `${level} von 100 Heizungen`,
  span: (lower, upper) => `${lower} bis ${upper} Hz`,
  burn: (litres, kW) => `${litres} L/h, etwa ${kW} kW in den Raum (80 % Wirkungsgrad angenommen)`,
  meanBandMine: (level) => `beste Einstellung deiner Heizung, zu ${level} % sicher`,
  heatersMine: (level) => `deine Heizung, ${level} von 100 Mal`,
  times: (level, lower, upper) => `${level} von 10 Mal: ${lower}–${upper} Hz`,
};
