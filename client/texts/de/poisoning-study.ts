/** Words about simulated lies, in German. */
export const poisoningStudy: typeof import("../en/poisoning-study.ts").poisoningStudy = {
  title: "Was Lügen am Durchschnitt ändern",
  intro:
    "Erfundene Atlanten, und jemand, der absichtlich falsche Abstimmungen sendet: 10 bis 35 % zu mager oder zu fett, von hoch oben oder von weit unten. Neue Besitzer warten sechs Tage, bis ihre Abstimmungen zählen, und je Woche kommen nur wenige dazu; eine Auswertung, die den Durchschnitt in einer Woche um 2 % verschiebt, wird zurückgehalten. Die Tabelle sagt, wie weit sich der veröffentlichte Durchschnitt zu irgendeiner Zeit verschob, auf fünf Höhen und bei beiden Leistungen.",
  liars: {
    "fresh keys": "Ein Absender, 29 neue Schlüssel in einer Woche",
    "one key": "Ein Absender, 29 Abstimmungen unter einem Schlüssel in einer Woche",
    "many keys": "Ein Absender, 300 neue Schlüssel in einer Woche",
    "five weeks": "Ein Absender, 145 neue Schlüssel in fünf Wochen",
    "counted at once": "Ein Absender, 29 neue Schlüssel in einer Woche, wenn niemand wartete",
    "three networks": "Ein Absender in drei Netzen, 29 neue Schlüssel in einer Woche",
    hundred: "100 Absender, je ein neuer Schlüssel in einer Woche",
  },
  who: "Wer lügt",
  honest: "Ehrliche Besitzer",
  attacks: "Angriffe",
  median: "Durchschnitt verschoben, %, Median",
  most: "Höchstens, %",
  goal: "Ziel, %",
  below: (pct) => `unter ${pct}`,
  noGoal: "keines",
  heldBack: "Zurückgehalten bei",
  newcomers: "Wie lange ehrliche Neue warten",
  newcomersIntro:
    "Bis der veröffentlichte Durchschnitt ihre Abstimmung kennt. Je Woche kommen nur wenige dazu; viele auf einmal warten also länger, und Lügner aus vielen Netzen, die vor ihnen kamen, machen die Schlange noch länger.",
  aWeek: "Neue je Woche",
  meanwhile: "Lügner in dieser Zeit",
  days: "Tage, Median",
  mostDays: "Tage, höchstens",
  inAWeek: "Innerhalb einer Woche",
  of: (n, all) => `${n} von ${all}`,
};
