import { format } from "../../units.ts";

const signed = (points: number, decimals = 0) =>
  `${points < 0 ? "−" : points > 0 ? "+" : ""}${format(Math.abs(points), decimals)}`;

/** How well the bands hold, in German. */
export const b: typeof import("../en/bands.ts").b = {
  title: "Wie gut die Spannen stimmen",
  loading: "Die Untersuchung wird geladen …",
  intro:
    "Eine Spanne ist ein Bereich von Pumpenfrequenzen mit einem Versprechen. Die Spanne der mittleren Heizung verspricht, wo die mittlere Abstimmung liegt; die Spanne für eine weitere Heizung, zum Beispiel deine, wo diese ihre eigene findet. Eine 95-%-Spanne stimmt, wenn der wahre Wert in 95 von 100 Fällen darin liegt, sooft sie aus neuen Abstimmungen berechnet wird. Echte Abstimmungen können das nicht zeigen, denn niemand kennt die wahren Werte hinter ihnen. Darum werden Gruppen von Besitzern erfunden, deren wahre Werte bekannt sind: sorgfältige, nachlässige und solche, die lügen. Dann wird gezählt, wie oft die Spannen stimmen.",
  simulated:
    "Alles auf dieser Seite außer dem nächsten Abschnitt ist simuliert: Im Rest steckt keine echte Abstimmung.",
  published: {
    title: "Was die veröffentlichte Auswertung sagt",
    none: "Noch hat niemand abgestimmt: Es gibt nichts zu zeigen.",
    means: (version: string) =>
      `Auswertung ${version}, aus den Abstimmungen dieses Atlas. ±: So weit liegen zwei von drei Heizungen in gleicher Luft höchstens vom Mittel, und zwei von drei Abstimmungen einer Heizung von deren eigenem Mittel. Eine zweite Gruppe sind Besitzer, deren Abstimmungen zueinander passen, aber nicht zu den übrigen.`,
    group: "Heizungsgröße, Leistung",
    owners: "Besitzer",
    tunes: "Zählende Abstimmungen",
    between: "Zwischen Heizungen",
    within: "Zwischen Abstimmungen einer Heizung",
    never: "Besitzer, die nie nachstimmen",
    anything: "Besitzer, deren Werte zu nichts passen",
    feet: "Höhen in Fuß",
    slips: "Abstimmungen mit anderen Fehlern",
    crowd: "Zweite Gruppe",
    noCrowd: "keine gefunden",
    crowdIs: (probable: string, share: string, shift: string) =>
      `zu ${probable} wahrscheinlich: ${share} der Besitzer, ${shift}`,
    richer: (pct: string) => `${pct} fetter`,
    leaner: (pct: string) => `${pct} magerer`,
  },
  fails: "Wo sie nicht stimmen",
  verdict: (scenarios: number, narrow: number, wide: number, corridor: string) =>
    narrow + wide === 0
      ? `In keinem der ${scenarios} Szenarien weicht eine 95-%-Spanne bei einer der untersuchten Luftdichten mehr als ${corridor} Punkte von ihrem Versprechen ab.`
      : `In ${scenarios - narrow - wide} von ${scenarios} Szenarien bleiben beide 95-%-Spannen bei jeder untersuchten Luftdichte höchstens ${corridor} Punkte neben ihrem Versprechen. In ${narrow} stimmt eine Spanne irgendwo zu selten, in ${wide} weiteren nur öfter als versprochen.`,
  beyondChance: (n: number, of: number) =>
    `${n} dieser ${of} liegen weiter daneben, als der Zufall allein eine einzelne Zahl bei so vielen Läufen verschiebt.`,
  narrow: (n: number) => `Stimmen zu selten: ${n}`,
  narrowMeans:
    "Die Spanne ist dort zu schmal und führt in die Irre. Die schlechteste zuerst, jede dort, wo sie am seltensten stimmte.",
  wide: (n: number) => `Stimmen öfter als versprochen: ${n}`,
  wideMeans:
    "Die Spanne ist dort breiter als nötig: vorsichtig, aber weniger nützlich, als sie sein könnte. Die größte Abweichung zuerst, jede Spanne dort, wo sie am häufigsten stimmte.",
  scenario: "Szenario",
  held: (pct: string, air: string) => `${pct} von 100 bei ${air}`,
  show: (title: string) => `Zeigen: ${title}`,
  how: "Wie simuliert wurde",
  facts: {
    code: "Programmversion",
    size: "Umfang",
    seed: "Startzahl",
    runs: "Läufe",
    again: "Noch einmal laufen lassen",
  },
  sizes: { quick: "schnell: weniger Läufe jedes Szenarios", full: "voll" },
  runs: (all: string, fewest: string, most: string, scenarios: number) =>
    `${all} insgesamt: ${fewest} bis ${most} von jedem der ${scenarios} Szenarien`,
  again: { quick: "npm run study", full: "npm run study -- --full" },
  againNote:
    "Gleiches Programm, gleicher Umfang und gleiche Startzahl ergeben dieselben Zahlen, auf beliebig vielen Kernen.",
  bands: { new_heater: "Spanne für eine weitere Heizung", mean: "Spanne der mittleren Heizung" },
  families: {
    clean: "Keine Fehler",
    slips: "Tippfehler",
    lazy: "Besitzer, die nie nachstimmen",
    flood: "Ein Schlüssel, der sehr viel sendet",
    fakes: "Gefälschte Besitzer",
    spread: "Ungleiche Streuung",
    air: "Luft schlecht bekannt",
    pooling: "Eine Heizungsgröße neben anderen",
    trade: "Nutzer, aus Heizungen und Gewohnheiten simuliert",
  },
  chosen: "Ein Szenario",
  counts: (contributors: number, runs: string) =>
    `${contributors === 1 ? "1 Besitzer" : `${format(contributors)} Besitzer`}; ${runs} Läufe.`,
  truth: {
    fixed: "Jeder Lauf hat dieselben wahren Werte.",
    drawn: "Die wahren Werte jedes Laufs sind aus dem gezogen, was die Physik erwarten lässt.",
  },
  chance: (points: string) =>
    `Bei so vielen Läufen verschiebt der Zufall allein eine 95 um bis zu ± ${points} Punkte, 95-mal von 100.`,
  coverage: "Versprochene und beobachtete Trefferquote",
  coverageNote: (corridor: string) =>
    `Jede Linie gehört zu einer Luftdichte: um wie viele Punkte von 100 die Spanne öfter oder seltener stimmte als versprochen. Null ist das Versprechen; der getönte Streifen reicht ${corridor} Punkte weit.`,
  coverageChart: (band: string, scenario: string) =>
    `${band}: beobachtete minus versprochene Trefferquote bei fünf Luftdichten. ${scenario}`,
  coverageTable: "Beobachtete Trefferquote, von 100",
  widthTable: "Halbe Breite der Spannen, %: Median über die Läufe",
  band: "Spanne",
  air: "Luft",
  claims: (pct: string) => `Verspricht ${pct}`,
  claimedAxis: "Versprochen, von 100",
  offAxis: "Beobachtet minus versprochen, Punkte",
  error: "Fehler der mittleren Abstimmung",
  errorNote:
    "Wurzel des mittleren quadratischen Fehlers gegenüber dem wahren Wert, in %; weniger ist besser. Die Skala ist logarithmisch: Jeder Schritt ist ungefähr eine Verdopplung. Schätzer, die nicht in jedem Lauf antworten konnten, fehlen.",
  errorChart: (scenario: string) =>
    `Fehler der mittleren Abstimmung je Schätzer bei fünf Luftdichten. ${scenario}`,
  errorTable: "Fehler der mittleren Abstimmung, %",
  errorAxis: "Fehler, %",
  airAxis: "Luft auf dieser Höhe, m",
  asideTable: "Nicht gezählte Zeilen, von 100",
  honestAside: "Von ehrlichen",
  wrongAside: "Von falschen",
  estimator: "Schätzer",
  breakdown: {
    title: "Welchen Anteil falscher Zeilen oder Besitzer jeder Schätzer aushält",
    note: (limit: string, air: string) =>
      `Simulierte Anteile in %, bis zu denen der Fehler der mittleren Abstimmung auf ${air} unter ${limit} % bleibt. <: Der Schätzer hält nicht einmal den kleinsten aus, der simuliert wurde. ≥: Er hält noch den größten aus.`,
    mistake: "Was falsch ist",
    below: (pct: string) => `< ${pct}`,
    least: (pct: string) => `≥ ${pct}`,
  },
  errorAt: (air: string) => `Bei ${air}`,
  tableOf: (what: string) => `Tabelle: ${what}`,
  csv: (what: string) => `${what}: CSV`,
  signed: (points: number) => signed(points),
  off: (points: number) => `(${signed(points, 1)})`,
  offKey: "In Klammern: Punkte neben dem Versprechen, wo es mehr sind, als der Streifen erlaubt.",
};
