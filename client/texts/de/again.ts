/** Fitting the open data again in the browser, in German. */
export const again: typeof import("../en/again.ts").again = {
  title: "Hier nachrechnen",
  intro:
    "Den veröffentlichten Zahlen muss niemand glauben: Dieser Browser kann alle angenommenen Abstimmungen holen und nach demselben Verfahren selbst rechnen. Jede Zahl muss dann bis zur letzten Stelle dieselbe sein.",
  button: "Hier nachrechnen",
  working: "Die Abstimmungen werden geholt und angepasst …",
  same: (version: string, rows: string, groups: number) =>
    `Gleich bis zur letzten Stelle: jede Zahl ${groups === 1 ? "der einen Klasse mit ihrem Ende" : `aller ${groups} Klassen und Enden`} der Anpassung ${version}, hier aus ${rows} Zeilen nachgerechnet.`,
  differs: (version: string, differing: number, of: number) =>
    `Nicht gleich: In ${differing} von ${of} Klassen und Enden weicht eine Zahl von der Anpassung ${version} ab.`,
  moving: (version: string) =>
    `Der Atlas veröffentlicht gerade eine neuere Anpassung als ${version}: Inzwischen kamen oder gingen Abstimmungen. Gleich noch einmal versuchen.`,
  otherCode: (version: string) =>
    `Die Anpassung ${version} wurde mit anderen Einstellungen gemacht, als diese Seite hat. Die Seite neu laden und noch einmal versuchen.`,
  nothing: "Es gibt noch keine angenommenen Abstimmungen, also nichts anzupassen.",
  unreachable: "Der Atlas ist nicht erreichbar. Mit Verbindung noch einmal versuchen.",
  failed: (status: number) =>
    `Der Atlas hat seine Daten nicht gegeben (Antwort ${status}). Später noch einmal versuchen.`,
  broken:
    "Was kam, ist nicht zu lesen: Vielleicht wurde es unterwegs abgeschnitten. Noch einmal versuchen.",
  retry: "Noch einmal",
  tableLabel: "Tabelle: hier gerechnete Zahlen neben den veröffentlichten",
  group: "Klasse und Ende",
  columns: { intercept: "Achsenabschnitt", slope: "Steigung", spread: "Streuung" },
  others: "Alle übrigen",
  agrees: "gleich",
  published: (figure: string) => `veröffentlicht ${figure}`,
  differ: "weichen ab",
  none: "keine",
};
