/** The method page's formulas, in German. */
export const formulas: typeof import("../en/method-formulas.ts").formulas = {
  belief: {
    title: "Erwartung vor der ersten Abstimmung",
    note: "Sie macht eine Antwort aus dem Nichts möglich und verliert ihr Gewicht, wenn Zeilen kommen. Die Höhe a folgt der gängigen Praxis, auf 30 % genau.",
  },
  vote: {
    title: "Stimme einer Zeile",
    note: "k Beitragende sind an demselben Ort und im selben Monat zu Hause; n Zeilen einer Person teilen sich deren Stimme; v ist die eigene Varianz der Zeile. σ ist die Standardabweichung ihrer logarithmierten Dichte: keine Temperatur, eine vage Höhe. C ist das End-CO in ppm, soweit es über dem üblichen liegt.",
  },
  kinds: {
    title: "Arten von Zeilen",
    note: "h ist die Wahrscheinlichkeit, dass eine Zeile ehrlich ist, und das, wofür sie zählt. Die anderen: Höhe in Fuß als Meter angegeben, was sie um ein bekanntes δ entlang der Linie verschiebt; unverändert von Meereshöhe mitgenommen, nie nachgestimmt; alles Übrige, gleichmäßig verteilt. Die Anteile π werden mit h geschätzt. ω sagt, wievielmal so häufig Fuß statt Meter im Streifen der Zeile sind wie in allen, angenommen zu höchstens der Hälfte: U sind die Stimmen dort, U_f jene, wo die wahren Orte solcher Zeilen lägen.",
  },
  voice: {
    title: "Ein Dichtestreifen ist eine Stimme",
    note: "V sind die ehrlichen Stimmen eines Streifens von 0,05 in x, e ihr mittlerer Rest, τ die eigene Streuung der Streifen um die Linie. Wie voll er auch ist: Ein Streifen ist nicht mehr wert als 1/τ², und weniger, wenn er abseits steht: ψ ist die Bisquare-Funktion, null, wo e jenseits von vier seiner Standardabweichungen liegt.",
  },
  step: {
    title: "Schritte innerhalb einer Person",
    note: "Zwischen zwei Zeilen derselben Person hebt sich auf, was die Heizung an Eigenem hat. Die Wurzel ist die Standardabweichung dieses Rauschens: wie weit Abstimmungen einer Heizung streuen und wie weit sich die eigenen Steigungen der Heizungen unterscheiden.",
  },
  dispute: {
    title: "Wenn Zeilen den Schritten widersprechen",
    note: "I ist, was Zeilen und Schritte jeweils über die Steigung wissen. Jenseits von z² = 2 gibt die Stimme der Zeilen zur Steigung nach, und ist das nach der ersten Runde so, wird a entlang ihrer Steigung neu gesucht, unter den Stimmen nahe der Dichte, bei der die meisten abstimmen.",
  },
  covariance: {
    title: "Kovarianz der Linie",
    note: "M sagt, wie der Score streute, wäre jede Stimme eine Heizung für sich, G, wie er über F Teile der Beitragenden streut, P ist die Information der Vorerwartung. B sagt, wie sich der Score mit der Linie ändert, wenn sich die Gewichte mit ändern; g ist der Score eines Teils, für seinen Hebel berichtigt (CR2).",
  },
  flattening: {
    title: "Die Steigung, die Fehler der Dichte abgeflacht haben",
    note: "Jede Dichte ist ein wenig falsch, und keine sagt es: Das macht die Linie um f flacher. W ist das Gewicht der Zeilen und das doppelte der Schritte, I, was von der Steigung bekannt ist, e ihr Standardfehler. Sobald f neben e zu sehen ist, wird es zurückgegeben, um die Mitte der Zeilen; der Rest ist Zweifel.",
  },
  bias: {
    title: "Zweifel jenseits der Streuung",
    note: "u ist der Anteil der Stimmen, die nicht ehrlich sind, x_m die Mitte der Zeilen, Σ(x) die Varianz der Linie bei x. Aus L² wird das mittlere Band gemacht.",
  },
  scatter: {
    title: "Streuung zwischen Heizungen",
    note: "s, sein Wachstum γ abseits von x = 0 und die Freiheitsgrade ν der Ränder werden über ihre Nachverteilung auf einem Gitter gemittelt; d Freiheitsgrade sagen, wie gut s bekannt ist. N sind die Stimmen: Wenige können das Wachstum nicht zeigen.",
  },
  mean: {
    title: "Mittleres Band",
    note: "σ ist hier der Zweifel an der Luft, nach der gefragt wird, mit Freiheitsgraden nach Satterthwaite für die Summe.",
  },
  newHeater: {
    title: "Band für eine weitere Heizung",
    note: "Der Zweifel an der Linie und die Streuung zusammen.",
  },
  aside: {
    title: "Eine Zeile wird ausgenommen",
    note: "Wenn die Streuung ist, was die Anpassung sagt, ist das eine von 200 ehrlichen Zeilen.",
  },
};
