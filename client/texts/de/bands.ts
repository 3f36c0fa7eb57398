import { format } from "../../units.ts";

const signed = (points: number, decimals = 0) =>
  `${points < 0 ? "−" : points > 0 ? "+" : ""}${format(Math.abs(points), decimals)}`;

/** How well the bands hold, in German. */
export const b: typeof import("../en/bands.ts").b = {
  title: "Wie gut die Bänder halten",
  loading: "Die Untersuchung wird geholt …",
  intro:
    "Ein Band ist eine Spanne von Pumpenfrequenzen mit einem Versprechen. Das mittlere Band verspricht, wo die mittlere Abstimmung liegt; das Band für eine weitere Heizung, wo diese ihre eigene findet. Ein 95-%-Band hat 95 von 100 gehalten, wenn die Wahrheit von je hundert Malen, die es aus frischen Abstimmungen gezeichnet wird, fünfundneunzigmal darin liegt. Echte Abstimmungen können das nicht zeigen, denn niemand kennt die Wahrheit hinter ihnen. Darum werden Mengen erfunden, deren Wahrheit bekannt ist, sorgfältige, nachlässige und lügende, und es wird gezählt, wie oft die Bänder halten.",
  simulated:
    "Alles auf dieser Seite außer dem nächsten Abschnitt ist simuliert: Im Rest steckt niemandes Abstimmung.",
  published: {
    title: "Was die veröffentlichte Anpassung sagt",
    none: "Noch hat niemand abgestimmt: Es gibt nichts zu berichten.",
    means: (version: string) =>
      `Anpassung ${version}, aus den Abstimmungen dieses Atlas. ±: So weit liegen zwei von drei Heizungen in gleicher Luft höchstens vom Mittel, und zwei von drei Abstimmungen einer Heizung. Eine zweite Gruppe sind Besitzer, deren Abstimmungen zueinander passen, aber nicht zu den übrigen.`,
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
  fails: "Wo sie versagen",
  verdict: (scenarios: number, narrow: number, wide: number, corridor: string) =>
    narrow + wide === 0
      ? `In keinem der ${scenarios} Szenarien liegt ein 95-%-Band in einer der betrachteten Lüfte mehr als ${corridor} Punkte neben seiner Behauptung.`
      : `In ${scenarios - narrow - wide} von ${scenarios} Szenarien bleiben beide 95-%-Bänder in jeder betrachteten Luft innerhalb von ${corridor} Punkten ihrer Behauptung. In ${narrow} hält ein Band irgendwo zu selten, in ${wide} nur häufiger, als es behauptet.`,
  beyondChance: (n: number, of: number) =>
    `${n} dieser ${of} liegen weiter daneben, als der Zufall allein eine einzelne Zahl bei so vielen Läufen verschiebt.`,
  narrow: (n: number) => `Zu selten gehalten: ${n}`,
  narrowMeans:
    "Das Band ist dort zu schmal und führt irre. Das schlimmste zuerst, jedes Band dort, wo es am wenigsten hielt.",
  wide: (n: number) => `Häufiger gehalten als behauptet: ${n}`,
  wideMeans:
    "Das Band ist dort breiter als nötig: vorsichtig, und weniger nützlich, als es sein könnte. Das weiteste zuerst, jedes Band dort, wo es am meisten hielt.",
  scenario: "Szenario",
  held: (pct: string, air: string) => `${pct} von 100 bei ${air}`,
  show: (title: string) => `Zeigen: ${title}`,
  how: "Wie simuliert wurde",
  facts: {
    code: "Programmfassung",
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
    "Gleiches Programm, gleicher Umfang und gleiche Startzahl geben dieselben Zahlen, auf beliebig vielen Kernen.",
  bands: { new_heater: "Band für eine weitere Heizung", mean: "Mittleres Band" },
  families: {
    clean: "Keine Fehler",
    slips: "Schreibversehen",
    lazy: "Leute, die nie nachstimmen",
    flood: "Ein Schlüssel, der überschwemmt",
    fakes: "Erfundene Beitragende",
    spread: "Ungleiche Streuung",
    air: "Luft schlecht bekannt",
    pooling: "Eine Klasse neben anderen",
    trade: "Nutzer, aus Heizungen und Gewohnheiten simuliert",
  },
  chosen: "Ein Szenario",
  counts: (contributors: number, runs: string) =>
    `${contributors === 1 ? "1 beitragende Person" : `${format(contributors)} Beitragende`}; ${runs} Läufe.`,
  truth: {
    fixed: "Jeder Lauf hat dieselbe Wahrheit.",
    drawn: "Die Wahrheit jedes Laufs ist aus dem gezogen, was die Physik erwarten lässt.",
  },
  chance: (points: string) =>
    `Bei so vielen Läufen verschiebt der Zufall allein eine 95 um bis zu ± ${points} Punkte, 95-mal von 100.`,
  coverage: "Behauptete und beobachtete Abdeckung",
  coverageNote: (corridor: string) =>
    `Jede Linie ist eine Luft: um wie viele Punkte von 100 das Band häufiger oder seltener hielt, als es behauptet. Null ist die Behauptung; der getönte Streifen reicht ${corridor} Punkte weit.`,
  coverageChart: (band: string, scenario: string) =>
    `${band}: beobachtete weniger behauptete Abdeckung in fünf Lüften. ${scenario}`,
  coverageTable: "Beobachtete Abdeckung, von 100",
  widthTable: "Halbe Breite der Bänder, %: Median über die Läufe",
  band: "Band",
  air: "Luft",
  claims: (pct: string) => `Behauptet ${pct}`,
  claimedAxis: "Behauptet, von 100",
  offAxis: "Beobachtet weniger behauptet, Punkte",
  error: "Fehler der mittleren Abstimmung",
  errorNote:
    "Mittlerer quadratischer Fehler gegen die bekannte Wahrheit, in %; weniger ist besser. Die Skala ist logarithmisch: Jeder Schritt verdoppelt ungefähr. Schätzer, die nicht in jedem Lauf antworten konnten, fehlen.",
  errorChart: (scenario: string) =>
    `Fehler der mittleren Abstimmung je Schätzer in fünf Lüften. ${scenario}`,
  errorTable: "Fehler der mittleren Abstimmung, %",
  errorAxis: "Fehler, %",
  airAxis: "Luft auf dieser Höhe",
  asideTable: "Ausgenommene Zeilen, von 100",
  honestAside: "Von ehrlichen",
  wrongAside: "Von falschen",
  estimator: "Schätzer",
  breakdown: {
    title: "Welchen Anteil falscher Zeilen oder Personen jeder Schätzer aushält",
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
  offKey: "In Klammern: Punkte neben der Behauptung, wo es mehr sind, als der Streifen erlaubt.",
};
